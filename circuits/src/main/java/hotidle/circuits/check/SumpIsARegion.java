package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;

/** There is the region by whose temperature a duty point is called. */
public final class SumpIsARegion implements Rule.OfCircuit {

    /** The region that every circuit has. */
    public static final String PAN = "sump";

    @Override
    public void check(Attributes file, Parts parts) {
        if (file.has("regions") && !file.words("regions").contains(PAN)) {
            file.error(
                    ProblemCode.NO_SUMP,
                    "regions",
                    "has no region '" + PAN + "'",
                    "the temperature of a duty is that of its sump, and parts lie there unless they say otherwise",
                    "add sump: the pan");
        }
    }
}

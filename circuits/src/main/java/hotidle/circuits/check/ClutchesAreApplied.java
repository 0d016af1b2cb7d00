package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.LinkedHashSet;
import java.util.Set;

/** Every clutch and band is applied in some range. */
final class ClutchesAreApplied implements Rule.OfCircuit {

    @Override
    public void check(Attributes file, Parts parts) {
        Set<String> applied = new LinkedHashSet<>();
        file.groups("ranges")
                .values()
                .forEach(range -> applied.addAll(range.groups("clutches").keySet()));
        boolean faulty = file.groups("ranges").values().stream().anyMatch(Attributes::broken);
        if (faulty || !parts.all().keySet().containsAll(applied)) {
            return;
        }
        for (Parts.DeclaredPart part : parts.all().values()) {
            if (part.kind().isClutch() && !applied.contains(part.given().name())) {
                part.given()
                        .error(
                                ProblemCode.CLUTCH_NEVER_APPLIED,
                                "",
                                "is applied in no range",
                                "a clutch or band has its torque to hold in some range",
                                "name it in the clutches of a range");
            }
        }
    }
}

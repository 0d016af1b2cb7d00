package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;
import java.util.Set;

/** The edge that defines the set pressure is an opening of the regulator. */
final class EdgeIsAnOpening implements Rule.OfCommand {

    @Override
    public void check(Attributes file, Attributes command, Parts parts) {
        Set<String> openings = parts.all()
                .get(command.word("regulator"))
                .given()
                .groups("openings")
                .keySet();
        if (!openings.contains(command.word("edge"))) {
            command.error(
                    ProblemCode.EDGE_IS_NO_OPENING,
                    "edge",
                    "has edge '" + command.word("edge") + "', which is no opening of " + command.word("regulator"),
                    "",
                    Nearest.mend(command.word("edge"), openings));
        }
    }
}

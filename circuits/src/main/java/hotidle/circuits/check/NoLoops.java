package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.ProblemCode;

/** No oil flows between a node and itself. */
final class NoLoops implements Rule.OfCircuit {

    @Override
    public void check(Attributes file, Parts parts) {
        for (Parts.DeclaredPart part : parts.all().values()) {
            loop(part.given());
            part.kind().shape().keys().stream()
                    .filter(key -> key.type() instanceof Type.NamedGroups)
                    .forEach(key -> part.given().groups(key.name()).values().forEach(NoLoops::loop));
        }
    }

    private static void loop(Attributes given) {
        if (given.has("from") && given.text("from").equals(given.text("to"))) {
            given.error(
                    ProblemCode.BOTH_ENDS_AT_ONE_NODE,
                    "to",
                    "has both ends at '" + given.text("to") + "'",
                    "no oil flows between a node and itself",
                    "name another node in from or to");
        }
    }
}

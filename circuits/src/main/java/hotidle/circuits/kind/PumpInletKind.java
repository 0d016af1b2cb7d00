package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.network.Group;
import hotidle.part.PumpInlet;
import java.util.List;

/** The words of a {@link PumpInlet}. */
final class PumpInletKind {

    private PumpInletKind() {}

    static final Kind KIND = Kind.of(
                    "pump-inlet",
                    PumpInlet.class,
                    "The pump's inlet: where its pressure falls to that at which air comes out, the chambers fill in part.",
                    Group.PUMP,
                    List.of(Key.node("node", "the node at which the chambers draw")),
                    given -> given.has("node")
                            ? List.of(Kind.FlowPath.between(given.word("node"), given.word("node")))
                            : List.of(),
                    (given, around) -> new Kind.MadePart(new PumpInlet(), List.of(given.word("node")), List.of()),
                    physics())
            .passing(Passing.LEAK)
            .example("--at node=-0.2bar")
            .role(Names.PUMP_INLET);

    private static LawText physics() {
        return LawText.of(
                "full above the pressure at which air is released, part filled at it",
                "complementarity of filling and inlet pressure (our own form)");
    }
}

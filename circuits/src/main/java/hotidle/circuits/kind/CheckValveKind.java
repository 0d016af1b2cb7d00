package hotidle.circuits.kind;

import hotidle.network.Group;
import hotidle.part.CheckValve;

/** The words of a {@link CheckValve}. */
final class CheckValveKind {

    private CheckValveKind() {}

    static final Kind KIND = Kind.through(
                    "check-valve",
                    CheckValve.class,
                    "A ball or poppet that lets oil pass one way, and back only as a leak.",
                    Group.VALVE_BODY,
                    "the side that opens it",
                    "the side that shuts it",
                    PoppetKeys.keys(),
                    (given, around) -> new CheckValve(PoppetKeys.make(given)),
                    physics())
            .example("seat=10mm spring-rate=0.3N/mm cracking-pressure=5psi lift=3mm --drop 7psi")
            .passing(Passing.WIDE)
            .oneWay()
            .needs(PoppetKeys::needs)
            .rule((given, around) -> PoppetKeys.check(given))
            .drawn(GraphicSymbol.CHECK_VALVE);

    private static LawText physics() {
        return PoppetKeys.physics();
    }
}

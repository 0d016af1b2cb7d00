package hotidle.circuits.kind;

import hotidle.network.Group;
import hotidle.part.ReliefValve;

/** The words of a {@link ReliefValve}. */
final class ReliefValveKind {

    private ReliefValveKind() {}

    static final Kind KIND = Kind.through(
                    "relief-valve",
                    ReliefValve.class,
                    "A ball or poppet on a strong spring: the ceiling of the pressure at its port.",
                    Group.VALVE_BODY,
                    "the side that it relieves",
                    "where it relieves to",
                    PoppetKeys.keys(),
                    (given, around) -> new ReliefValve(PoppetKeys.make(given)),
                    physics())
            .example("seat=10mm spring-rate=40N/mm cracking-pressure=400psi lift=2mm --drop 420psi")
            .passing(Passing.RELIEF)
            .oneWay()
            .needs(PoppetKeys::needs)
            .rule((given, around) -> PoppetKeys.check(given))
            .drawn(GraphicSymbol.RELIEF_VALVE);

    private static LawText physics() {
        return PoppetKeys.physics();
    }
}

package hotidle.circuits.words;

import hotidle.network.Group;
import hotidle.part.ReliefValve;

/** The words of a {@link ReliefValve}. */
final class ReliefValveWords {

    private ReliefValveWords() {}

    static final Kind KIND = Kind.through(
                    "relief-valve",
                    ReliefValve.class,
                    "A ball or poppet on a strong spring: the ceiling of the pressure at its port.",
                    Group.VALVE_BODY,
                    "the side that it relieves",
                    "where it relieves to",
                    PoppetWords.keys(),
                    (given, around) -> new ReliefValve(PoppetWords.make(given)),
                    physics())
            .oneWay()
            .needs(PoppetWords::needs)
            .rule((given, around) -> PoppetWords.check(given));

    private static Physics physics() {
        return PoppetWords.physics();
    }
}

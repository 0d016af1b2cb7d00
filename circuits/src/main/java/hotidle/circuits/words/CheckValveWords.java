package hotidle.circuits.words;

import hotidle.network.Group;
import hotidle.part.CheckValve;

/** The words of a {@link CheckValve}. */
final class CheckValveWords {

    private CheckValveWords() {}

    static final Kind KIND = Kind.through(
                    "check-valve",
                    CheckValve.class,
                    "A ball or poppet that lets oil pass one way, and back only as a leak.",
                    Group.VALVE_BODY,
                    "the side that opens it",
                    "the side that shuts it",
                    PoppetWords.keys(),
                    (given, around) -> new CheckValve(PoppetWords.make(given)),
                    physics())
            .oneWay()
            .needs(PoppetWords::needs)
            .rule((given, around) -> PoppetWords.check(given));

    private static Physics physics() {
        return PoppetWords.physics();
    }
}

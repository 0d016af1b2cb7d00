package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A question of a page.
 *
 * @param page   that asks, a name that it gave itself
 * @param number of the question; those of a page rise, and the newest is answered
 * @param units  in which words have their numbers
 * @param state  of the page
 * @param kept   what is kept as reference; empty where nothing is
 * @param drawn  whether the words of the drawing are asked for too
 * @param gauges what is set and read at the gauges; empty where they are as in the driving condition
 * @param lesson what is asked of a lesson
 * @param text   of a circuit file that is written on the page
 */
record LiveQuestion(
        String page,
        long number,
        String units,
        AskedState state,
        Optional<AskedState> kept,
        boolean drawn,
        Optional<AskedGauges> gauges,
        LessonQuestion lesson,
        String text) {

    private static final int LONGEST_NAME = 64;

    LiveQuestion {
        if (page == null || page.isEmpty() || page.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("a question names its page in at most " + LONGEST_NAME + " letters");
        }
        state = state == null ? AskedState.asWritten() : state;
        kept = kept == null ? Optional.empty() : kept;
        gauges = gauges == null ? Optional.empty() : gauges;
        lesson = lesson == null ? LessonQuestion.none() : lesson;
        text = text == null ? "" : text;
    }

    /** What a page asks first, before anything is turned at. */
    static LiveQuestion first(Quantity.UnitSystem units) {
        return new LiveQuestion(
                "ahead",
                0,
                units.name().toLowerCase(Locale.ROOT),
                AskedState.asWritten(),
                Optional.empty(),
                false,
                Optional.empty(),
                LessonQuestion.none(),
                "");
    }

    /** The system of units of a word; empty where it is none. */
    Optional<Quantity.UnitSystem> system() {
        return List.of(Quantity.UnitSystem.values()).stream()
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(units))
                .findFirst();
    }
}

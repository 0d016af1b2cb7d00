package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a lesson of the live page says, in which the program hides a fault.
 *
 * @param units of the user
 */
public record HiddenFaultPhrase(Quantity.UnitSystem units) {

    /** Of a circuit in which nothing can be read. */
    public static final String NO_TAPS =
            "the circuit has no gauge ports, so that no lesson can be given; add taps: to its file";

    /** Of a lesson that is asked for under no known word. */
    public static final String NO_DIFFICULTY = "a lesson is easy, medium or hard";

    /** Where no fault was found that shows as asked for. */
    public static final String NONE_FOUND = "no fault of this build shows so; choose another difficulty or build";

    /** Of a fault that a teacher sets and no gauge shows. */
    public static final String DOES_NOT_SHOW =
            "no gauge of this unit would show it, at any speed, range or temperature looked at; make it larger, or choose another";

    /** Of a code that opens nothing. */
    public static final String WRONG_CODE =
            "this code opens no lesson: it is mistyped, or its phrase is another; one made without a phrase ends with the program"
                    + " that made it";

    /** Of a code that opens a lesson of something else. */
    public static final String OTHER_CIRCUIT =
            "this code is of another circuit, or the circuit has changed since it was made";

    /** Of a lesson that was begun before the program was started again. */
    public static final String OVER =
            "this lesson has ended with the program that began it; begin it again by its number, or by its code and phrase";

    /** Of readings, too many or none. */
    public static final String READINGS = "a lesson has 1 to 40 readings";

    /** Of a gauge that is not there. */
    public static final String NO_GAUGE = "the unit has no such gauge port or range";

    /** Bounds of what is set. */
    public static final String BOUNDS =
            "a reading is taken between 400 and 4000 rpm, with the sump between -20 and 140 degC (-4 and 284 degF)";

    /** In place of a reading. */
    public static final String NOT_KNOWN =
            "no steady state was found there, so that nothing can be read; set another speed";

    /** Where working it out failed; names nothing of the fault. */
    public static final String FAILED = "this could not be worked out; set another speed or range";

    /** How a pupil's answer stands to the fault. */
    public enum Judged {
        RIGHT,
        /** Another leak of the same gallery. */
        ALIKE,
        KIND,
        PART,
        WRONG,
        NONE
    }

    /**
     * What is said of an answer.
     *
     * @param explains whether it explains the readings taken as well
     */
    public static String judged(Judged judged, boolean explains) {
        boolean other = judged == Judged.KIND || judged == Judged.PART || judged == Judged.WRONG;
        return judged(judged)
                + (other && explains
                        ? " But your readings do not tell the two apart: your answer explains them too, within what gauge"
                                + " and tolerances leave open. Below stands where each of them reads what."
                        : "");
    }

    private static String judged(Judged judged) {
        return switch (judged) {
            case RIGHT -> "You are right.";
            case ALIKE ->
                "You are right as far as any gauge can tell: both leak between the same two places. Only a measurement tells"
                        + " which.";
            case KIND -> "The kind is right, the part is another.";
            case PART -> "The part is right, what is wrong with it is something else.";
            case WRONG -> "It was something else.";
            case NONE -> "You gave no answer.";
        };
    }

    /** The fault. */
    public static String fault(String build, String name, String size) {
        return "Hidden in " + build + ": " + name + (size.isEmpty() ? "" : ", " + size) + ".";
    }

    /** The answer with the size that explains the readings best. */
    public static String answer(String name, String size, boolean fitted) {
        return "You said: " + name + "."
                + (fitted && !size.isEmpty()
                        ? " Your readings are met best by " + size + ", well or badly: the curves show it."
                        : "");
    }

    /** How to see it again. */
    public static String command(String circuit, String build, String fault) {
        return "hotidle compare " + circuit + " --build " + build + " --fault " + fault;
    }

    /** What and where it is read. */
    public String place(String tap, double speed, String range, OptionalDouble temperature) {
        return tap + " at " + Quantity.SPEED.with(units, speed) + " in " + range
                + (temperature.isPresent() ? ", " + Quantity.TEMPERATURE.with(units, temperature.getAsDouble()) : "");
    }

    /** The gentlest test that shows the fault; what is read there with it and without [Pa]. */
    public String gentlest(String place, double fault, double without) {
        return "The gentlest test that shows it: " + place + ", " + Quantity.PRESSURE.with(units, fault) + " where "
                + Quantity.PRESSURE.with(units, without) + " is read with no fault put in.";
    }

    /**
     * How much the readings taken told.
     *
     * @param readings that were looked at
     * @param all      that were taken
     */
    public static String told(int readings, int all, boolean agrees, double share, int left) {
        String taken = readings == all
                ? "Your " + CountPhrase.of(readings, "reading")
                : "Of your " + CountPhrase.of(all, "reading") + " the " + readings
                        + " that are furthest from those with no fault put in";
        if (agrees) {
            return taken + (readings == 1 ? " agrees" : " agree")
                    + " with a unit in which no fault is put within what tolerances and gauge leave open: nothing was found"
                    + " yet.";
        }
        return taken + (readings == 1 ? " leaves " : " leave ") + CountPhrase.of(left, "likely cause")
                + ", counting as one what no gauge tells apart; the fault itself holds " + percent(share) + ".";
    }

    /** The reading that would have told most from there. */
    public String next(String place, List<String> causes, List<Double> values) {
        return "Expected to tell most next: " + place + ": "
                + IntStream.range(0, causes.size())
                        .mapToObj(i -> Quantity.PRESSURE.with(units, values.get(i)) + " if " + causes.get(i))
                        .collect(Collectors.joining(", "))
                + ".";
    }

    /** Where those taken show nothing. */
    public static final String SHOWS_ELSEWHERE = "The short way begins where it shows.";

    /** Where none would have. */
    public static final String NOTHING_NEXT = "No other reading at the gauge ports would have told more.";

    /** What is left after some readings, in a few words. */
    public static String after(boolean agrees, double share, int left) {
        return agrees
                ? "as with no fault put in"
                : CountPhrase.of(left, "likely cause") + " left, the fault " + percent(share);
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Digits;
import hotidle.assess.PartDoubt;

/** What to be careful about in one part on its own, in words. */
public final class PartDoubtPhrase {

    private PartDoubtPhrase() {}

    /** In front of a warning. */
    public static String warned(String warning) {
        return "WARNING: " + warning;
    }

    /** One sentence without its stop. */
    public static String of(PartDoubt doubt) {
        return switch (doubt.why()) {
            case PIECES_BIND -> "no " + doubt.where() + " is left at this temperature: the pieces would bind";
            case GAP_NOT_LAMINAR ->
                "Reynolds number " + Digits.four(doubt.value().orElseThrow())
                        + (doubt.where().isEmpty() ? "" : " at " + doubt.where()) + " is above "
                        + Digits.four(doubt.limit().orElseThrow())
                        + ": the law of a gap holds for laminar flow, the true flow is less";
            case AT_LOWER_STOP -> doubt.where() + " is at its lower stop: it does not regulate here";
            case AT_UPPER_STOP -> doubt.where() + " is at its upper stop: it does not regulate here";
            case STARVED -> "the inlet is starved: its pressure is below that at which air is released";
            case METAL_CONTACT -> "metal contact: the film does not carry this load, its thickness is not known";
            case FILM_TOO_THIN -> "the film is thinner than permissible (film-factor times roughness)";
            case LOAD_TOO_HIGH -> "the unit load is above what the bushing's material permits";
            case FILM_NOT_LAMINAR ->
                "the film's Reynolds number " + Digits.four(doubt.value().orElseThrow()) + " is above "
                        + Digits.four(doubt.limit().orElseThrow())
                        + ": vortices, the film's law holds for laminar flow";
        };
    }
}

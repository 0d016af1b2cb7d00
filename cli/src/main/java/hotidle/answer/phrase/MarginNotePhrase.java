package hotidle.answer.phrase;

import hotidle.assess.MarginNote;
import java.util.List;
import java.util.stream.Collectors;

/** What a reader should know about a margin, in words. */
public final class MarginNotePhrase {

    private MarginNotePhrase() {}

    /** All notes of a margin in one clause without its stop; empty without any. */
    public static String of(List<MarginNote> notes) {
        return notes.stream().map(MarginNotePhrase::of).collect(Collectors.joining("; "));
    }

    private static String of(MarginNote note) {
        return switch (note.why()) {
            case SHORT_AT_FULL_FEED ->
                note.part().orElseThrow()
                        + " gets too little even with the regulator's feed wide open, so it is not counted here";
            case INLET_LIMITS_SUPPLY ->
                "that is all that comes through the pump's inlet with nothing sent back to it, enough to fill the pump to "
                        + percent(note);
            case SLIDE_PUSHED_BACK ->
                "the pump's slide then stands at " + percent(note)
                        + " of its full displacement, pushed back by what leaks into its control chamber";
            case RELIEF_LIFTS_BELOW_SET ->
                note.part().orElseThrow() + " lifts below the set pressure and lets the rest go";
            case TURBINE_SPEED_NOT_GIVEN ->
                "turbine speed not given: the oil's rotation counted from standing to engine speed, whichever is worse";
            case METAL_CONTACT -> "metal contact: the film is not known";
            case EDGE_TOUCHES -> "the hub leans so much that it touches at its edge";
            case FILM_SHORT_OF_OIL ->
                "the film is told as if it were full, and " + share(note)
                        + " of the oil that takes is fed to it: what it is then is not known";
            case SLIPPING_WOULD_HOLD ->
                "the driving condition says that it slips, and with this pressure it would hold: then it makes no heat of slip";
            case INLET_STARVED -> "the inlet is starved; the pump fills in part";
        };
    }

    private static String share(MarginNote note) {
        double share = note.share().orElseThrow();
        return share < 0.005 ? "next to nothing" : percent(note);
    }

    private static String percent(MarginNote note) {
        return Math.round(100 * note.share().orElseThrow()) + " %";
    }
}

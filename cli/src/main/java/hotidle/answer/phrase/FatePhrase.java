package hotidle.answer.phrase;

import hotidle.assess.OilBudget;

/** What becomes of oil, in a few words. */
public final class FatePhrase {

    private FatePhrase() {}

    /** The words of a fate. */
    public static String of(OilBudget.Fate fate) {
        return switch (fate) {
            case SLIP -> "pump slip";
            case LEAK -> "leaks";
            case USED -> "used";
            case RECIRCULATED -> "back to the inlet past the regulator";
            case SPILLED -> "spilled by relief and limit valves";
        };
    }
}

package hotidle.answer.phrase;

import hotidle.assess.OilBudget;

/** What becomes of oil, in a few words. */
public final class FatePhrase {

    private FatePhrase() {}

    /** The same in a narrow column, of what is not lost. */
    public static String brief(OilBudget.Fate fate) {
        return switch (fate) {
            case USED -> "used (lubrication, converter ...)";
            case RECIRCULATED -> "sent back by the regulator";
            case SPILLED -> "spilled by relief, limit valves";
            case SLIP, LEAK -> of(fate);
        };
    }

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

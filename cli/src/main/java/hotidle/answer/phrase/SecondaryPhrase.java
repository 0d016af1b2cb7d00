package hotidle.answer.phrase;

import hotidle.assess.Figures;

/** What the second chamber of a double pump does, in a word. */
public final class SecondaryPhrase {

    private SecondaryPhrase() {}

    public static String of(Figures.Secondary secondary) {
        return switch (secondary) {
            case NONE -> "none";
            case JOINED -> "both feeding";
            case UNLOADING -> "unloading";
            case UNLOADED -> "unloaded";
        };
    }
}

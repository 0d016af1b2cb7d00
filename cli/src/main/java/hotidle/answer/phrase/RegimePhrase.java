package hotidle.answer.phrase;

import hotidle.law.Channel;

/** How oil flows, in a word. */
public final class RegimePhrase {

    private RegimePhrase() {}

    /** The regime of a flow. */
    public static String of(Channel.Regime regime) {
        return switch (regime) {
            case LAMINAR -> "laminar";
            case TRANSITIONAL -> "transitional";
            case TURBULENT -> "turbulent";
        };
    }
}

package hotidle.answer.phrase;

import java.util.Locale;

/** Titles of charts that show the low speeds of another one larger. */
public final class EnlargedPhrase {

    private EnlargedPhrase() {}

    /** Of line pressures. */
    public static String pressure(double rpm) {
        return String.format(Locale.ROOT, "The same up to %.0f rpm, larger", rpm);
    }

    /** Of where the oil of a build goes. */
    public static String oil(String build, double rpm) {
        return String.format(Locale.ROOT, "%s: its oil up to %.0f rpm, larger", build, rpm);
    }
}

package hotidle.answer.phrase;

import hotidle.part.Setting;
import java.util.Locale;

/** The state of the lockup clutch in the word of a circuit file. */
public final class LockupPhrase {

    private LockupPhrase() {}

    public static String of(Setting.Lockup lockup) {
        return lockup.name().toLowerCase(Locale.ROOT);
    }
}

package hotidle.circuits.text;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A key that has swallowed its value, since no colon and blank stand behind it. */
public final class MissingColon {

    private static final Pattern SWALLOWED = Pattern.compile("\\s*([\\p{L}\\p{N}_-]+)\\s*:?\\s*([{\\[]).*");

    private MissingColon() {}

    /** What to write; empty where the key is only itself. */
    public static Optional<String> mend(String key) {
        Matcher matcher = SWALLOWED.matcher(key);
        return matcher.matches()
                ? Optional.of(
                        "put a colon and a blank behind the name: '" + matcher.group(1) + ": " + matcher.group(2) + "'")
                : Optional.empty();
    }
}

package hotidle.circuits.text;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What to write in place of what is wrong; a file and a command write it differently.
 *
 * @param pieces one after the other; none where nothing can be advised
 */
public record Remedy(List<Fragment> pieces) {

    /** A piece of a remedy. */
    public sealed interface Fragment {}

    /** Words that are the same everywhere. */
    record Prose(String words) implements Fragment {}

    /** A quantity to write in place of the faulty one; its unit is empty for a bare number. */
    record Correction(String number, String unit) implements Fragment {}

    /** A key, or a path of keys with points between, and its value; a file has the last of the path alone in a line. */
    record Assignment(String path, String value) implements Fragment {
        private String inFile() {
            return path.substring(path.lastIndexOf('.') + 1) + ": " + value;
        }

        private String inCommand() {
            return path + "=" + value.replace(" ", "");
        }
    }

    /** Nothing can be advised. */
    public static final Remedy NONE = new Remedy(List.of());

    /** Keeps its own list. */
    public Remedy {
        pieces = List.copyOf(pieces);
    }

    /** Words alone. */
    public static Remedy words(String words) {
        return NONE.then(words);
    }

    /** Words, then a key and its value, for example {@code write gap: 5 um}. */
    public static Remedy set(String before, String path, String value) {
        return words(before).set(path, value);
    }

    static Remedy write(String number, String unit, String after) {
        return NONE.with(new Correction(number, unit)).then(after);
    }

    /** The same and further words. */
    public Remedy then(String words) {
        return words.isEmpty() ? this : with(new Prose(words));
    }

    /** The same and a key with its value. */
    public Remedy set(String path, String value) {
        return with(new Assignment(path, value));
    }

    private Remedy with(Fragment piece) {
        return new Remedy(Stream.concat(pieces.stream(), Stream.of(piece)).toList());
    }

    /** As in a file: {@code write 3 mm}, {@code write gap: 5 um}. */
    public String inFile() {
        return rendered(Remedy::quantity, Assignment::inFile);
    }

    /** As in the words of a command: {@code write gap=5um}. */
    public String inCommand() {
        return rendered(Remedy::quantity, Assignment::inCommand);
    }

    /** As behind an option of a command: {@code write --clearance 3mm}. */
    public String behind(String option) {
        return rendered(right -> "write " + option + " " + right.number() + right.unit(), Assignment::inCommand);
    }

    private static String quantity(Correction right) {
        return "write " + (right.number() + " " + right.unit()).strip();
    }

    private String rendered(Function<Correction, String> correction, Function<Assignment, String> setting) {
        return pieces.stream()
                .map(piece -> {
                    if (piece instanceof Correction right) {
                        return correction.apply(right);
                    }
                    return piece instanceof Assignment key ? setting.apply(key) : ((Prose) piece).words();
                })
                .collect(Collectors.joining());
    }
}

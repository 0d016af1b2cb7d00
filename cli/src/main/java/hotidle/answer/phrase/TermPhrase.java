package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the words mean that the program uses: trade words, and the keys and values of JSON. */
public final class TermPhrase {

    /**
     * A word.
     *
     * @param word    of the trade
     * @param meaning in one line
     * @param seen    which commands show it
     * @param json    its key, or key and value; {@link #NONE} where it has none
     * @param others  names by which it is known too
     */
    public record Term(String word, String meaning, String seen, String json, List<String> others) {

        /** All names that it is found by. */
        public List<String> names() {
            String key = json.contains(": ") ? json.substring(json.indexOf(": ") + 2) : json;
            return Stream.concat(json.equals(NONE) ? Stream.of(word) : Stream.of(word, key), others.stream())
                    .distinct()
                    .toList();
        }

        /** Three lines: what it means, where it is seen, and its JSON key. */
        public String said() {
            return word + ": " + meaning + ".\nseen in: " + seen + "\nJSON: " + json + "\n";
        }
    }

    /** In place of a key of JSON, for a word of the screens alone. */
    static final String NONE = "none, a word of the screens";

    static Term term(String word, String meaning, String seen, String json, String... others) {
        return new Term(word, meaning, seen, json, List.of(others));
    }

    /** Words of one matter. */
    public record Topic(String title, List<Term> terms) {}

    /** All words by what they are about. */
    public static final List<Topic> TOPICS = List.of(
            new Topic("Pressure and regulator", LineTerms.ALL),
            new Topic("Limits and verdicts", LimitTerms.ALL),
            new Topic("Oil and repairs", OilTerms.ALL),
            new Topic("Parts and builds", PartTerms.ALL),
            new Topic(
                    "Wear, window, torque, heat",
                    Stream.concat(StudyTerms.ALL.stream(), ShiftTerms.ALL.stream())
                            .toList()));

    /** All of them, and verdicts and rows, which whoever reads one has before his eyes and need not find in a list. */
    public static final List<Term> ALL = Stream.of(
                    TOPICS.stream().flatMap(topic -> topic.terms().stream()),
                    VerdictTerms.ALL.stream(),
                    ColumnTerms.ALL.stream())
            .flatMap(terms -> terms)
            .toList();

    /** Every word, topic by topic. */
    public static String listed() {
        return "Words of screens and JSON; 'hotidle explain WORD' says what one means, or a verdict (NONE LEFT).\n"
                + TOPICS.stream()
                        .map(topic -> Wrap.lines(
                                topic.title() + ": "
                                        + topic.terms().stream().map(Term::word).collect(Collectors.joining("; ")),
                                "",
                                "  "))
                        .collect(Collectors.joining());
    }

    private TermPhrase() {}

    /**
     * The term of a name, whatever its capitals, and with hyphens, underscores or blanks; as it is copied from a screen, so with the unit
     * of its column, a count before it, or what follows in brackets or behind a comma or an "at".
     */
    public static Optional<Term> of(String name) {
        String bare = bare(name);
        return Stream.of(
                        name,
                        bare,
                        bare.replaceAll("^[-+~]?[0-9][0-9.,]*( of [0-9]+)?( ?%)?\\s+", ""),
                        bare(bare.replaceAll("\\s*\\(.*", "")),
                        bare.replaceAll(",.*", ""),
                        bare.replaceAll("^.*,\\s*", ""),
                        bare.replaceAll(" (at|in|on|of) .*", ""),
                        bare.replaceAll(" [~*]$", ""))
                .flatMap(word -> exactly(word).stream())
                .findFirst();
    }

    private static Optional<Term> exactly(String name) {
        String asked = plain(name);
        return ALL.stream()
                .filter(term -> term.names().stream().anyMatch(one -> plain(one).equals(asked)))
                .findFirst();
    }

    /** Without quotes, what stands in square brackets, the mark that ends a sentence, and a unit behind it. */
    private static String bare(String name) {
        String word = name.replaceAll("\\[.*?]", "").replaceAll("['\"]", "").strip();
        word = word.replaceAll("[.:;,!?]+$", "").strip();
        for (Quantity quantity : Quantity.values()) {
            for (Quantity.UnitSystem units : Quantity.UnitSystem.values()) {
                String unit = " " + quantity.in(units).unit();
                word = word.endsWith(unit)
                        ? word.substring(0, word.length() - unit.length()).strip()
                        : word;
            }
        }
        return word.replaceAll(",$", "");
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[-_\\s]+", " ").strip();
    }
}

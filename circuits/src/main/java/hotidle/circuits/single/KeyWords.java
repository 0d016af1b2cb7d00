package hotidle.circuits.single;

import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Words such as {@code bore=14.06mm} or {@code openings.feed.edge=1mm} as a tree with places in the line that they make up.
 * Work space of one reading.
 */
final class KeyWords {

    private final Problems problems;
    private final String line;
    private final Set<String> unread = new HashSet<>();
    private Value.Entries tree = new Value.Entries(List.of(), Place.START);

    KeyWords(String kind, List<String> words) {
        StringBuilder text = new StringBuilder(kind);
        List<String> joined = joined(words);
        List<Integer> starts = new ArrayList<>();
        for (String word : joined) {
            text.append(' ');
            starts.add(text.length() + 1);
            text.append(word);
        }
        line = text.toString().replaceAll("[\n\r\t]", " ");
        problems = Problems.ofCommand("hotidle part " + kind, line);
        for (int i = 0; i < joined.size(); i++) {
            word(joined.get(i), starts.get(i));
        }
    }

    /** A unit that stands apart from its number belongs to it: {@code bore=14.06 mm}. */
    private static List<String> joined(List<String> words) {
        List<String> joined = new ArrayList<>();
        for (String word : words) {
            int last = joined.size() - 1;
            if (last >= 0
                    && joined.get(last).matches("[^=]+=\\s*[+-]?[0-9.]+")
                    && word.matches("[A-Za-z%][A-Za-z0-9./%]*")) {
                joined.set(last, joined.get(last) + " " + word);
            } else {
                joined.add(word);
            }
        }
        return joined;
    }

    /** Keys that have no value because theirs cannot be read. */
    Set<String> unread() {
        return unread;
    }

    Problems problems() {
        return problems;
    }

    Value.Entries tree() {
        return tree;
    }

    private void word(String word, int column) {
        int equals = word.indexOf('=');
        Place place = new Place(1, column, Math.max(word.length(), 1));
        if (equals <= 0) {
            unread.add(word);
            problems.error(
                    place,
                    ProblemCode.NO_KEY_AND_VALUE,
                    "'" + word + "' is no key with its value",
                    "a key and its value stand in one word",
                    "write bore=14.06mm, for example, without blanks beside the equals sign");
            return;
        }
        String key = word.substring(0, equals).strip();
        Place keyPlace = new Place(1, column, equals);
        Optional<Value> value = value(word.substring(equals + 1), column + equals + 1);
        if (value.isPresent()) {
            put(List.of(key.split("\\.", -1)), keyPlace, value.get());
        } else {
            unread.add(key);
        }
    }

    /** The value; in brackets or braces it is read as in a file. */
    private Optional<Value> value(String written, int column) {
        String text = written.strip();
        if (text.startsWith("[") || text.startsWith("{")) {
            return Yaml.read(" ".repeat(column - 1) + written, problems);
        }
        boolean quoted = text.length() > 1
                && (text.startsWith("\"") || text.startsWith("'"))
                && text.charAt(0) == text.charAt(text.length() - 1);
        String plain = quoted ? text.substring(1, text.length() - 1) : text;
        return Optional.of(new Value.Text(plain, new Place(1, column, Math.max(written.length(), 1))));
    }

    private void put(List<String> path, Place place, Value value) {
        tree = put(tree, path, place, value);
    }

    private Value.Entries put(Value.Entries into, List<String> path, Place place, Value value) {
        String first = path.get(0);
        Optional<Value> before = into.entry(first).map(Value.Entry::value);
        boolean deeper = path.size() > 1;
        if (before.isPresent() && !(deeper && before.get() instanceof Value.Entries)) {
            problems.error(place, ProblemCode.TWICE, "key '" + first + "' stands twice", "", "leave one of them out");
            return into;
        }
        Value inner = value;
        if (deeper) {
            Value.Entries below = before.isPresent() && before.get() instanceof Value.Entries entries
                    ? entries
                    : new Value.Entries(List.of(), place);
            inner = put(below, path.subList(1, path.size()), place, value);
        }
        Place at = into.entry(first).map(Value.Entry::keyPlace).orElse(place);
        return into.with(new Value.Entry(first, at, inner));
    }
}

package hotidle.circuits.create;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Writes a draft as a circuit file: one part a line where it fits. */
final class CircuitWriter {

    /** Characters in a line (chosen); a part that is longer goes on in the next. */
    private static final int WIDTH = 170;

    /** Sections whose entries are short and stand side by side. */
    private static final Set<String> TOGETHER =
            Set.of("nodes", "regions", "taps", "materials", "bearing-materials", "heat", "gearsets", "ranges");

    private static final Pattern PLAIN = Pattern.compile("[~\\w+.(/-][\\w+./%()~; -]*");

    private final StringBuilder text = new StringBuilder();

    private CircuitWriter() {}

    /** The file, a comment above it. */
    static String write(List<String> comment, Map<String, Object> root) {
        CircuitWriter writer = new CircuitWriter();
        comment.forEach(
                line -> writer.text.append(("# " + line).stripTrailing()).append('\n'));
        root.forEach(writer::section);
        return writer.text.toString();
    }

    private void section(String name, Object value) {
        boolean lines = Draft.map(value).isPresent()
                && !TOGETHER.contains(name)
                && String.valueOf(value).length() + name.length() > WIDTH;
        if (!lines) {
            entry("", name, value);
            return;
        }
        text.append('\n').append(name).append(":\n");
        Draft.map(value).orElseThrow().forEach((key, one) -> entry("  ", key, one));
    }

    /** One entry in a line, or in several where it is longer. */
    private void entry(String indent, String key, Object value) {
        List<String> pieces = new ArrayList<>();
        pieces(value, "", "", pieces);
        StringBuilder line = new StringBuilder(indent + quoted(key) + ":");
        String room = " ";
        for (String piece : pieces) {
            if (line.length() + room.length() + piece.length() > WIDTH) {
                text.append(line.toString().stripTrailing()).append('\n');
                line = new StringBuilder(indent + "    ");
                room = "";
            }
            line.append(room).append(piece);
            room = " ";
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    /** What may not be broken over lines: a text with its key and the brackets around it. */
    private static void pieces(Object value, String before, String after, List<String> pieces) {
        List<Map.Entry<String, Object>> inner = new ArrayList<>();
        boolean map = Draft.map(value).isPresent();
        Draft.map(value).ifPresent(keys -> keys.forEach((key, one) -> inner.add(Map.entry(quoted(key) + ": ", one))));
        Draft.list(value).ifPresent(list -> list.forEach(one -> inner.add(Map.entry("", one))));
        if (!map && !(value instanceof List)) {
            pieces.add(before + quoted(String.valueOf(value)) + after);
            return;
        }
        String open = map ? "{" : "[";
        String close = map ? "}" : "]";
        if (inner.isEmpty()) {
            pieces.add(before + open + close + after);
        }
        for (int i = 0; i < inner.size(); i++) {
            boolean last = i == inner.size() - 1;
            pieces(
                    inner.get(i).getValue(),
                    (i == 0 ? before + open : "") + inner.get(i).getKey(),
                    last ? close + after : ",",
                    pieces);
        }
    }

    private static String quoted(String word) {
        return word.isEmpty() || !PLAIN.matcher(word).matches() || word.endsWith(" ")
                ? "\"" + word.replace("\\", "\\\\").replace("\"", "\\\"") + "\""
                : word;
    }
}

package hotidle.circuits;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.shape.Bounds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** REFERENCE.md is written from the declarations that files are checked against. */
class ReferenceTest {

    @Test
    void theReferenceIsWhatTheDeclarationsSay() throws IOException {
        Golden.check(Path.of("REFERENCE.md"), reference());
    }

    private static String reference() {
        StringBuilder text = new StringBuilder("""
                # The words of a circuit file

                Written from the declarations that files are checked against; do not edit, see `ReferenceTest`. \
                *Needed* keys must be written, some of them only where something else is so; every other one may be left out. Values outside *allowed* are errors, values \
                outside *usual* are warnings. How to begin: [README.md](README.md).

                ## Units

                | what | units |
                | --- | --- |
                """);
        for (Dimension dimension : Dimension.values()) {
            String units =
                    dimension == Dimension.RATIO ? "a bare number, or %" : String.join(", ", Units.of(dimension));
            text.append("| ")
                    .append(dimension.words())
                    .append(" | ")
                    .append(units)
                    .append(" |\n");
        }
        text.append("\n## The file\n\n");
        shape(text, CircuitFile.CIRCUIT, "");
        text.append("## Every part\n\n");
        table(text, Kind.COMMON);
        for (Kind kind : Kinds.ALL) {
            text.append("## ")
                    .append(kind.word())
                    .append("\n\n")
                    .append(kind.about())
                    .append(" Booked under ")
                    .append(kind.group().label())
                    .append(".\n\n");
            List<Key> own = kind.shape().keys().stream()
                    .filter(key -> !Kind.COMMON.contains(key))
                    .toList();
            table(text, own);
            own.forEach(key -> below(text, key, kind.word()));
        }
        return text.toString();
    }

    private static void shape(StringBuilder text, Shape shape, String path) {
        table(text, shape.keys());
        shape.keys().forEach(key -> below(text, key, path));
    }

    private static void below(StringBuilder text, Key key, String path) {
        String here = path.isEmpty() ? key.name() : path + "." + key.name();
        if (key.type() instanceof Type.OneGroup group) {
            text.append("### ").append(here).append("\n\n");
            shape(text, group.shape(), here);
        } else if (key.type() instanceof Type.NamedGroups groups) {
            text.append("### ")
                    .append(here)
                    .append(": each ")
                    .append(groups.shape().what())
                    .append("\n\n");
            if (!groups.shape().brief().isEmpty()) {
                text.append("A plain text stands for ")
                        .append(groups.shape().brief())
                        .append(".\n\n");
            }
            shape(text, groups.shape(), here);
        }
    }

    private static void table(StringBuilder text, List<Key> keys) {
        if (keys.isEmpty()) {
            text.append("No keys of its own.\n\n");
            return;
        }
        text.append("| key | meaning | value | left out | allowed | usual | how to measure |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- |\n");
        for (Key key : keys) {
            String out = key.fallback()
                    .map(fallback -> "`" + fallback.text() + "`: " + fallback.source())
                    .orElse(key.needed() ? "*needed*" : "");
            String where = key.where().isEmpty() ? "" : "*needed* where " + key.where();
            text.append("| `")
                    .append(key.name())
                    .append("` | ")
                    .append(key.meaning())
                    .append(" | ")
                    .append(key.type().says())
                    .append(" | ")
                    .append(out.isEmpty() || where.isEmpty() ? out + where : out + "; " + where)
                    .append(" | ")
                    .append(key.allowed().map(Bounds::words).orElse(""))
                    .append(" | ")
                    .append(key.usual().map(Bounds::words).orElse(""))
                    .append(" | ")
                    .append(key.measure())
                    .append(" |\n");
        }
        text.append('\n');
    }
}

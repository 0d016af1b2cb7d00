package hotidle.answer.part;

import hotidle.answer.phrase.KindHelpPhrase;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Bounds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Type;
import hotidle.circuits.single.PartKeys;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.util.List;

/** What 'hotidle part --help' adds: the kinds, and the keys of one. */
public final class KindHelp {

    private KindHelp() {}

    /** All kinds. */
    public static String kinds() {
        StringBuilder text = new StringBuilder("\n" + KindHelpPhrase.KINDS + "\n");
        int width = Kinds.words().stream().mapToInt(String::length).max().orElse(0);
        for (Kind kind : Kinds.ALL) {
            text.append("  ")
                    .append(kind.word())
                    .append(" ".repeat(width - kind.word().length() + 2))
                    .append(kind.about())
                    .append('\n');
        }
        return text.toString();
    }

    /**
     * The keys of one kind.
     *
     * @param full whether with the sources of its law and of what is taken for keys that are left out
     */
    public static String keys(Kind kind, boolean full) {
        StringBuilder text = new StringBuilder();
        text.append(kind.word()).append(": ").append(kind.about()).append("\n\n");
        text.append("law     ").append(kind.physics().law()).append('\n');
        if (full) {
            text.append("source  ").append(kind.physics().source()).append('\n');
        }
        text.append('\n');
        text.append(ports(kind)).append('\n');
        List<Key> keys = PartKeys.of(kind);
        text.append(KindHelpPhrase.keys(!keys.isEmpty()) + "\n");
        keys.forEach(key -> key(text, key, "", full));
        return text.append(full ? "" : "\n" + KindHelpPhrase.sources(kind.word()) + "\n")
                .toString();
    }

    private static String ports(Kind kind) {
        List<Key> ports = kind.shape().keys().stream()
                .filter(key -> key.type() instanceof Type.Name name && name.of() == Names.NODE)
                .toList();
        boolean drop = ports.size() == 2 && !kind.isPump();
        StringBuilder text = new StringBuilder(KindHelpPhrase.ports(drop) + "\n");
        if (ports.isEmpty()) {
            text.append("  " + KindHelpPhrase.OWN_PORTS + "\n");
        }
        ports.forEach(port -> text.append("  ")
                .append(port.name())
                .append(": ")
                .append(port.meaning())
                .append('\n'));
        return text.toString();
    }

    private static void key(StringBuilder text, Key key, String before, boolean full) {
        text.append("  ")
                .append(before)
                .append(key.name())
                .append("=  ")
                .append(key.meaning())
                .append('\n');
        line(text, value(key));
        key.fallback()
                .ifPresentOrElse(
                        fallback -> line(
                                text,
                                KindHelpPhrase.leftOut(
                                        fallback.text(), full || !cites(fallback.source()) ? fallback.source() : "")),
                        () -> line(text, KindHelpPhrase.needed(key.needed())));
        if (!key.where().isEmpty()) {
            line(text, KindHelpPhrase.neededWhere(key.where()));
        }
        key.allowed()
                .map(Bounds::words)
                .ifPresent(words -> line(
                        text,
                        KindHelpPhrase.allowed(
                                words, key.usual().map(Bounds::words).orElse(""))));
        if (!key.measure().isEmpty()) {
            line(text, KindHelpPhrase.measure(key.measure()));
        }
        if (key.type() instanceof Type.OneGroup group) {
            group.shape().keys().forEach(inner -> key(text, inner, before + key.name() + ".", full));
        } else if (key.type() instanceof Type.NamedGroups groups) {
            groups.shape().keys().forEach(inner -> key(text, inner, before + key.name() + ".NAME.", full));
        }
    }

    /** Whether why something is taken is a citation, which stands behind --full; every one says how it was come by. */
    private static boolean cites(String source) {
        return source.contains("(from memory)") || source.contains("(found)");
    }

    private static void line(StringBuilder text, String words) {
        text.append("      ").append(words).append('\n');
    }

    private static String value(Key key) {
        if (key.type() instanceof Type.Dimensioned quantity) {
            return in(quantity.dimension(), quantity.dimension().words());
        }
        if (key.type() instanceof Type.Wearing) {
            return in(Dimension.LENGTH, "a length");
        }
        if (key.type() instanceof Type.RisingPair pair) {
            return in(pair.dimension(), KindHelpPhrase.two(pair.dimension().words())) + ": " + key.name()
                    + "=[0mm,4mm]";
        }
        if (key.type() instanceof Type.NamedGroups) {
            return KindHelpPhrase.OWN_NAMES;
        }
        if (PORT.equals(key.type())) {
            return KindHelpPhrase.OWN_PORT;
        }
        return key.type().says();
    }

    private static final Type PORT = new Type.Name(Names.NODE);

    private static String in(Dimension dimension, String words) {
        return dimension == Dimension.RATIO
                ? KindHelpPhrase.bare(words)
                : KindHelpPhrase.in(words, Units.of(dimension));
    }
}

package hotidle.circuits.text;

import java.util.ArrayList;
import java.util.List;

/**
 * The mark of an assumed number: a {@code ~} in front of it, {@code ~11.7 mm}, says that it was neither measured nor taken from a data
 * sheet. Who measures it writes the number over it, without the mark.
 */
public final class AssumedMark {

    /** In front of the number. */
    public static final String MARK = "~";

    private AssumedMark() {}

    /** Whether a text bears the mark. */
    public static boolean on(String text) {
        return text.startsWith(MARK);
    }

    /** The text without the mark. */
    public static String without(String text) {
        return on(text) ? text.substring(MARK.length()).strip() : text;
    }

    /**
     * The paths of all numbers in use that bear the mark, in the order of the file; of a size that wears the one in use, as a build or
     * a measurement sheet has it.
     *
     * @param tree a mapping of the file
     */
    public static List<String> paths(Value.Entries tree) {
        List<String> found = new ArrayList<>();
        for (Value.Entry entry : tree.entries()) {
            find(entry.key(), entry.value(), found);
        }
        return found;
    }

    private static void find(String path, Value value, List<String> found) {
        if (value instanceof Value.Chosen chosen) {
            find(path, chosen.inUse(), found);
        } else if (value instanceof Value.Text text && on(text.text())) {
            found.add(path);
        } else if (value instanceof Value.Items items && items.items().stream().anyMatch(AssumedMark::marked)) {
            found.add(path);
        } else if (value instanceof Value.Entries entries) {
            if (entries.entry("new").isPresent()) {
                find(path, entries.entry("new").get().value(), found);
            } else {
                entries.entries().forEach(entry -> find(path + "." + entry.key(), entry.value(), found));
            }
        }
    }

    private static boolean marked(Value value) {
        return value instanceof Value.Items items
                ? items.items().stream().anyMatch(AssumedMark::marked)
                : value instanceof Value.Text text && on(text.text());
    }
}

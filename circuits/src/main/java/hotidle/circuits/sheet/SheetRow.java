package hotidle.circuits.sheet;

import hotidle.circuits.kind.Kinds;
import java.util.List;
import java.util.Optional;

/**
 * A row of the sheet: a bore with what runs in it, or a single size.
 *
 * @param part  the part
 * @param outer key of the bore, or of the single size
 * @param inner key of what runs in the bore; empty for a single size
 */
record SheetRow(String part, String outer, Optional<String> inner) {

    /** The row on which a size of a part stands; {@code keys} are the paths of all its sizes. */
    static SheetRow of(String part, String key, List<String> keys) {
        String prefix = key.substring(0, key.lastIndexOf('.') + 1);
        String last = key.substring(prefix.length());
        String bore = prefix + "bore";
        if (Kinds.RUN_IN_A_BORE.contains(last) && keys.contains(bore)) {
            return new SheetRow(part, bore, Optional.of(key));
        }
        Optional<String> inner = last.equals("bore")
                ? Kinds.RUN_IN_A_BORE.stream()
                        .map(prefix::concat)
                        .filter(keys::contains)
                        .findFirst()
                : Optional.empty();
        return new SheetRow(part, key, inner);
    }

    /** Whether it is a bore, so that what is measured goes into the column of bores. */
    boolean isBore() {
        return outer.endsWith("bore");
    }
}

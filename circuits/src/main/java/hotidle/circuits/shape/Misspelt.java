package hotidle.circuits.shape;

import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Value;
import java.util.List;

/** Reads on past a misspelt key as if it had been meant right, so that one slip is not told as two. */
public final class Misspelt {

    private Misspelt() {}

    /** The keys with the value of a misspelt one under the key that comes closest, if that is missing. */
    static Value.Entries asMeant(Value.Entries keys, Value.Entry misspelt, List<String> valid) {
        Value.Entries all = keys;
        for (String near : Nearest.to(misspelt.key(), valid)) {
            if (all.entry(near).isEmpty()) {
                return all.with(new Value.Entry(near, misspelt.keyPlace(), misspelt.value()));
            }
        }
        return all;
    }

    /** The whole file with its misspelt sections under the names that were meant. */
    public static Value.Entries asMeant(Value.Entries file, List<String> valid) {
        Value.Entries all = file;
        for (Value.Entry entry : file.entries()) {
            if (!valid.contains(entry.key())) {
                all = asMeant(all, entry, valid);
            }
        }
        return all;
    }
}

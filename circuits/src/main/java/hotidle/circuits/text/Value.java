package hotidle.circuits.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A value of the file: plain text, a list or a mapping. What its text means is settled later. */
public sealed interface Value {

    /** Where it stands. */
    Place place();

    /**
     * Text, quoted or not.
     *
     * @param text as read, empty where nothing stands behind a key
     */
    record Text(String text, Place place) implements Value {}

    /** A list. */
    record Items(List<Value> items, Place place) implements Value {
        public Items {
            items = List.copyOf(items);
        }
    }

    /**
     * A value that a build has put in the place of a written one.
     *
     * @param written as the file has it; empty text where it has none
     * @param inUse   in its place
     */
    record Chosen(Value written, Value inUse) implements Value {
        @Override
        public Place place() {
            return inUse.place();
        }
    }

    /** A key with its value. */
    record Entry(String key, Place keyPlace, Value value) {}

    /** A mapping, in the order of the file. */
    record Entries(List<Entry> entries, Place place) implements Value {
        public Entries {
            entries = List.copyOf(entries);
        }

        /** The entry of a key. */
        public Optional<Entry> entry(String key) {
            int index = index(key);
            return index < 0 ? Optional.empty() : Optional.of(entries.get(index));
        }

        private int index(String key) {
            for (int i = 0; i < entries.size(); i++) {
                if (entries.get(i).key().equals(key)) {
                    return i;
                }
            }
            return -1;
        }

        /** All keys. */
        public List<String> keys() {
            return entries.stream().map(Entry::key).toList();
        }

        /** The same mapping with one entry exchanged, or added at the end. */
        public Entries with(Entry changed) {
            List<Entry> all = new ArrayList<>(entries);
            int index = index(changed.key());
            if (index < 0) {
                all.add(changed);
            } else {
                all.set(index, changed);
            }
            return new Entries(all, place);
        }
    }
}

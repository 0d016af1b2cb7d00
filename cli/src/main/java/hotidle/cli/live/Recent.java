package hotidle.cli.live;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What was made lately of what was asked, for who asks the same again. Two who ask the same at once may both make it.
 *
 * @param <K> what it depends on, all of it
 */
final class Recent<K, V> {

    private final Map<K, V> made;

    /** Remembers so many. */
    Recent(int most) {
        made = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        };
    }

    /** What was made of it, or else is made now; nothing is remembered of what throws. */
    V of(K asked, Supplier<V> make) {
        synchronized (made) {
            V known = made.get(asked);
            if (known != null) {
                return known;
            }
        }
        V now = make.get();
        synchronized (made) {
            made.put(asked, now);
        }
        return now;
    }
}

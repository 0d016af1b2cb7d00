package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RecentTest {

    private final Recent<String, Integer> lengths = new Recent<>(2);
    private final List<String> made = new ArrayList<>();

    private int length(String word) {
        return lengths.of(word, () -> {
            made.add(word);
            return word.length();
        });
    }

    @Test
    void whatWasAskedLastIsMadeOnceAndWhatWasLongAgoAgain() {
        assertEquals(4, length("pump"));
        assertEquals(3, length("hub"));
        assertEquals(4, length("pump"));
        assertEquals(5, length("plate"));
        assertEquals(4, length("pump"));
        assertEquals(3, length("hub"));
        assertEquals(List.of("pump", "hub", "plate", "hub"), made);
    }

    @Test
    void whatThrowsIsMadeAnew() {
        assertThrows(
                IllegalStateException.class,
                () -> lengths.of("pump", () -> {
                    throw new IllegalStateException("nobody waits");
                }));
        assertEquals(4, length("pump"));
    }
}

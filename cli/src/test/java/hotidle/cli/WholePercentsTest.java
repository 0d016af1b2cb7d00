package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class WholePercentsTest {

    @Test
    void sharesAddUpToTheWhole() {
        // each rounded on its own: 57 + 36 + 8 = 101
        assertEquals(List.of(56, 36, 8), WholePercents.of(List.of(56.6, 35.7, 7.7), 100));
        assertEquals(List.of(34, 33, 33), WholePercents.of(List.of(1.0, 1.0, 1.0), 100));
        assertEquals(List.of(13, -1), WholePercents.of(List.of(13.2, -1.2), 12));
        assertEquals(List.of(0, 0), WholePercents.of(List.of(0.0, 0.0), 0));
    }
}

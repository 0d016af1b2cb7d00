package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

    @Test
    void aSwapAnOmissionAndAnAdditionAreOneStepEach() {
        assertEquals(1, Nearest.distance("gap", "gpa"));
        assertEquals(1, Nearest.distance("gap", "ga"));
        assertEquals(1, Nearest.distance("gap", "gaps"));
        assertEquals(0, Nearest.distance("Gap", "gap"));
        assertEquals(3, Nearest.distance("", "gap"));
    }

    @Test
    void theClosestNameComesFirstAndFarOnesNotAtAll() {
        assertEquals(List.of("line"), Nearest.to("lin", List.of("lube", "converter", "line")));
        assertEquals(List.of(), Nearest.to("boost", List.of("sump", "converter")));
    }

    @Test
    void aRemedyListsWhatThereIs() {
        assertEquals("valid: a, b", Nearest.mend("xyz", List.of("a", "b")));
        assertEquals("there is none yet", Nearest.mend("xyz", List.of()));
    }
}

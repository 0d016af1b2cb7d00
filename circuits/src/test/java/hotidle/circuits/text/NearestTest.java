package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
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

    /** A replacement and a swap cost one each; a swap far in counts as one near the front does. */
    @Test
    void distanceCountsTheCheapestWayOfTyping() {
        assertEquals(1, Nearest.distance("gap", "gup"));
        assertEquals(1, Nearest.distance("agp", "gap"));
        assertEquals(1, Nearest.distance("clearance", "clearnace"));
        assertEquals(2, Nearest.distance("clearance", "cleranec"));
        assertEquals(3, Nearest.distance("gap", ""));
    }

    /** The longer a name, the more slips are forgiven: one in a short one, a third of its letters and one more in a long one. */
    @Test
    void howManySlipsAreForgivenDependsOnTheLength() {
        assertEquals(List.of("b"), Nearest.to("a", List.of("b", "bcd")));
        assertEquals(List.of("abxy"), Nearest.to("abc", List.of("abxy", "axyz")));
        assertEquals(List.of("abcdxyz"), Nearest.to("abcdef", List.of("abcdxyz", "abwxyz")));
    }

    @Test
    void threeNamesAtMostAndTheClosestOfThem() {
        List<String> valid = List.of("port4", "port3", "port2", "port1");
        assertEquals(List.of("port1", "port2", "port3"), Nearest.to("port", valid));
        assertEquals(List.of("line"), Nearest.closest("lin", List.of("line", "lane")));
        assertEquals(List.of(), Nearest.closest("xyz", List.of("converter")));
    }

    @Test
    void aVeryLongNameIsNotLookedForNorAmongVeryMany() {
        String sixty = "x".repeat(60);
        assertEquals(List.of(sixty), Nearest.to(sixty, List.of(sixty)));
        assertEquals(List.of(), Nearest.to(sixty + "x", List.of(sixty)));
        List<String> many = IntStream.range(0, 500).mapToObj(i -> "n" + i).toList();
        assertEquals(3, Nearest.to("n7", many).size());
        List<String> more = IntStream.range(0, 501).mapToObj(i -> "n" + i).toList();
        assertEquals(List.of(), Nearest.to("n7", more));
    }

    @Test
    void aLongListIsCutAndItsRestCounted() {
        List<String> twelve = IntStream.range(10, 22).mapToObj(i -> "n" + i).toList();
        assertEquals("valid: " + String.join(", ", twelve), Nearest.mend("something", twelve));
        List<String> thirteen = IntStream.range(10, 23).mapToObj(i -> "n" + i).toList();
        assertEquals("valid: " + String.join(", ", twelve) + " and 1 more", Nearest.mend("something", thirteen));
        assertEquals("did you mean line? valid: line, sump", Nearest.mend("lin", List.of("line", "sump")));
    }
}

package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

    @Test
    void a_swap_an_omission_and_an_addition_are_one_step_each() {
        assertEquals(1, Nearest.distance("gap", "gpa"));
        assertEquals(1, Nearest.distance("gap", "ga"));
        assertEquals(1, Nearest.distance("gap", "gaps"));
        assertEquals(0, Nearest.distance("Gap", "gap"));
        assertEquals(3, Nearest.distance("", "gap"));
    }

    @Test
    void the_closest_name_comes_first_and_far_ones_not_at_all() {
        assertEquals(List.of("line"), Nearest.to("lin", List.of("lube", "converter", "line")));
        assertEquals(List.of(), Nearest.to("boost", List.of("sump", "converter")));
    }

    @Test
    void a_remedy_lists_what_there_is() {
        assertEquals("valid: a, b", Nearest.mend("xyz", List.of("a", "b")));
        assertEquals("there is none yet", Nearest.mend("xyz", List.of()));
    }
}

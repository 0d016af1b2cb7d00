package hotidle.circuits.words;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class PhysicsTest {

    @Test
    void every_kind_says_its_law_and_where_it_comes_from() {
        for (Kind kind : Kinds.ALL) {
            assertTrue(kind.physics().law().length() > 20, kind.word());
            assertTrue(kind.physics().source().length() > 20, kind.word());
        }
    }
}

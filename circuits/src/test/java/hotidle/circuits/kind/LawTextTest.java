package hotidle.circuits.kind;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LawTextTest {

    @Test
    void everyKindSaysItsLawAndWhereItComesFrom() {
        for (Kind kind : Kinds.ALL) {
            assertTrue(kind.physics().law().length() > 20, kind.word());
            assertTrue(kind.physics().source().length() > 20, kind.word());
        }
    }
}

package hotidle.circuits.kind;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LawTextTest {

    @Test
    void everyKindSaysItsLawAndWhereItComesFrom() {
        for (Kind kind : Kinds.ALL) {
            assertTrue(
                    kind.physics().law().length() > 20,
                    kind.word() + ": its LawText says no law; write the formula with its symbols, 20 letters and more");
            assertTrue(
                    kind.physics().source().length() > 20,
                    kind.word() + ": its LawText says no source; write author, title, year and place");
        }
    }
}

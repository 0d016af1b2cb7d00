package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Codes from which only who has the secret learns what they hold. */
class LessonSealTest {

    private static final byte[] CONTENT = "fifteen letters".getBytes(java.nio.charset.StandardCharsets.US_ASCII);

    private static byte[] opened(LessonSeal seal, String code) {
        return seal.opened(code, CONTENT.length).orElseThrow();
    }

    @Test
    void aPhraseOpensItsCodeInAnotherRun() {
        String code = LessonSeal.of("monday class").sealed(CONTENT);
        assertArrayEquals(CONTENT, opened(LessonSeal.of("monday class"), code));
        assertArrayEquals(CONTENT, opened(LessonSeal.of(" Monday CLASS "), code));
        assertEquals(Optional.empty(), LessonSeal.of("tuesday class").opened(code, CONTENT.length));
    }

    @Test
    void aCodeOfARunIsNoneOfAnother() {
        LessonSeal run = LessonSeal.ofThisRun();
        String code = run.sealed(CONTENT);
        assertArrayEquals(CONTENT, opened(run, code));
        assertEquals(Optional.empty(), LessonSeal.ofThisRun().opened(code, CONTENT.length));
    }

    @Test
    void theSameContentMakesAnotherCodeEachTimeAndEachIsAsLong() {
        LessonSeal run = LessonSeal.ofThisRun();
        String one = run.sealed(CONTENT);
        String other = run.sealed(CONTENT);
        assertNotEquals(one, other);
        for (byte fill : new byte[] {0, 1, -1}) {
            byte[] filled = new byte[CONTENT.length];
            java.util.Arrays.fill(filled, fill);
            String code = run.sealed(filled);
            assertEquals(one.length(), code.length());
            assertArrayEquals(filled, opened(run, code));
        }
        assertEquals(one.length(), other.length());
        assertTrue(one.matches("([0-9A-HJKMNP-TV-Z]{4}-)+[0-9A-HJKMNP-TV-Z]{1,4}"), one);
    }

    @Test
    void aCodeIsReadAsAHandWritesIt() {
        LessonSeal run = LessonSeal.ofThisRun();
        String code = run.sealed(CONTENT);
        String byHand = code.toLowerCase(Locale.ROOT)
                .replace("-", " ")
                .replace('0', 'o')
                .replace('1', 'l');
        assertArrayEquals(CONTENT, opened(run, " " + byHand));
    }

    @Test
    void oneWrongLetterOpensNothing() {
        LessonSeal run = LessonSeal.ofThisRun();
        String code = run.sealed(CONTENT);
        for (int i = 0; i < code.length(); i++) {
            if (code.charAt(i) != '-') {
                char wrong = code.charAt(i) == '7' ? '8' : '7';
                String changed = code.substring(0, i) + wrong + code.substring(i + 1);
                assertEquals(Optional.empty(), run.opened(changed, CONTENT.length), changed);
            }
        }
        for (String none : new String[] {"", "7", code + "7", "U".repeat(code.length()), "\u00e9".repeat(80)}) {
            assertEquals(Optional.empty(), run.opened(none, CONTENT.length), none);
        }
    }
}

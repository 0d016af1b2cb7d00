package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import org.junit.jupiter.api.Test;

/** What becomes of numbers that cannot be written. */
class KeptOutputTest {

    /** A disk that is full, or a reader who went away. */
    private static OutputStream failing(String why) {
        return new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException(why);
            }
        };
    }

    private static int checked(KeptOutput output, int code, StringWriter err) {
        return output.checked(code, new PrintWriter(err));
    }

    @Test
    void whatIsWrittenWholeKeepsTheCodeOfItsCommand() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        KeptOutput output = new KeptOutput(bytes);
        output.write('a');
        output.write("bc".getBytes(java.nio.charset.StandardCharsets.UTF_8));
        StringWriter err = new StringWriter();
        assertEquals(HotIdle.UNSOLVED, checked(output, HotIdle.UNSOLVED, err));
        assertEquals("abc", bytes.toString(java.nio.charset.StandardCharsets.UTF_8));
        assertEquals("", err.toString());
    }

    @Test
    void aFullDiskIsSaidAndIsNoSuccess() {
        KeptOutput output = new KeptOutput(failing("No space left on device"));
        assertThrows(IOException.class, () -> output.write('a'));
        StringWriter err = new StringWriter();
        assertEquals(HotIdle.WRONG_INPUT, checked(output, HotIdle.DONE, err));
        assertTrue(err.toString().contains("some of it is lost: No space left on device"), err.toString());
    }

    @Test
    void whoClosesThePipeEarlyHasSeenEnough() {
        KeptOutput output = new KeptOutput(failing("Broken pipe"));
        assertThrows(IOException.class, () -> output.write('a'));
        StringWriter err = new StringWriter();
        assertEquals(HotIdle.DONE, checked(output, HotIdle.DONE, err));
        assertEquals("", err.toString());
    }

    @Test
    void whyAFileCannotBeReadIsSaidInWords() {
        assertTrue(FileReason.of(new AccessDeniedException("a")).startsWith("you may not; look at its permissions"));
        assertEquals("it, or its folder, is not there", FileReason.of(new NoSuchFileException("a")));
        assertEquals("Is a directory", FileReason.of(new FileSystemException("a", null, "Is a directory")));
        assertTrue(FileReason.of(new CharacterCodingException()).contains("not UTF-8"));
        assertEquals("disk gone", FileReason.of(new IOException("disk gone")));
        assertTrue(FileReason.noName("Ø.yaml").contains("LC_ALL=C.UTF-8"));
    }
}

package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.Library;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The program run in-process.
 *
 * @param code exit code
 * @param out  standard output
 * @param err  standard error
 */
public record Run(int code, String out, String err) {

    /** A ready circuit with a change, as a file of its own. */
    static String changed(Path folder, String circuit, String old, String other) throws IOException {
        String text = Library.text(circuit).orElseThrow();
        assertTrue(text.contains(old), old);
        return Files.writeString(folder.resolve("own.yaml"), text.replace(old, other))
                .toString();
    }

    /** Runs a command line, its words one by one. */
    public static Run of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = HotIdle.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new Run(code, out.toString(), err.toString());
    }
}

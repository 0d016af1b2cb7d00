package hotidle.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * The program run in-process.
 *
 * @param code exit code
 * @param out  standard output
 * @param err  standard error
 */
record Run(int code, String out, String err) {

    static Run of(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = HotIdle.run(new PrintWriter(out), new PrintWriter(err), arguments);
        return new Run(code, out.toString(), err.toString());
    }
}

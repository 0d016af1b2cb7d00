package hotidle.cli;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;

/** Standard output that remembers why it could not be written: a {@link PrintWriter} would keep that to itself. */
final class KeptOutput extends FilterOutputStream {

    private IOException fault;

    KeptOutput(OutputStream to) {
        super(to);
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
        try {
            out.write(bytes, from, length);
        } catch (IOException e) {
            fault = e;
            throw e;
        }
    }

    /**
     * The exit code once all is printed: where something was lost, it is said. Who closes the pipe early has seen enough.
     *
     * @param code of the command
     */
    int checked(int code, PrintWriter err) {
        boolean seenEnough = fault != null && String.valueOf(fault.getMessage()).contains("Broken pipe");
        if (fault == null || seenEnough) {
            return code;
        }
        err.println("hotidle: the output could not be written, some of it is lost: " + FileReason.of(fault));
        err.flush();
        return HotIdle.WRONG_INPUT;
    }
}

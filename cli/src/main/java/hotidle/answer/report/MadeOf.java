package hotidle.answer.report;

import java.util.List;

/**
 * What a report was made of, so that it can be made again.
 *
 * @param version of the program
 * @param command as it was typed
 * @param inputs  every file that was read
 */
public record MadeOf(String version, String command, List<InputFile> inputs) {

    /**
     * A file that was read.
     *
     * @param file   its name
     * @param sha256 of its bytes, in hexadecimal digits
     */
    public record InputFile(String file, String sha256) {}

    public MadeOf {
        inputs = List.copyOf(inputs);
    }
}

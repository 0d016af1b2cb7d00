package hotidle.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Option of every command that takes builds. */
final class FilledSheet {

    @Option(
            names = "--sheet",
            paramLabel = "FILE.csv",
            description =
                    "a filled measurement sheet (see 'hotidle sheet'): makes a build called after the file, which is then"
                            + " the circuit's first")
    private Path file;

    /** The sheet, where one was given. */
    Optional<Path> file() {
        return Optional.ofNullable(file);
    }
}

package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Where the recorded outputs lie, and the one rule by which they are rewritten. */
final class GoldenFiles {

    /** Below the module; not a resource, so that a build does not copy it. */
    static final Path ROOT = Path.of("src/test/golden");

    static final String FLAG = "-Dhotidle.rewrite=true";

    /** The line in a recorded text below which standard output stands. */
    static final String OUTPUT = "--- standard output\n";

    private GoldenFiles() {}

    /** Whether this run records anew; a build server may not. */
    static boolean rewriting() {
        return rewriting(Boolean.getBoolean("hotidle.rewrite"), System.getenv("CI"));
    }

    static boolean rewriting(boolean flag, String buildServer) {
        if (flag && buildServer != null) {
            fail("CI is set: a build server compares outputs and never records them; run without " + FLAG);
        }
        return flag;
    }

    static String read(Path file) throws IOException {
        if (!Files.exists(file)) {
            fail(file + " is not recorded yet; record it with " + FLAG + " and read it");
        }
        return Files.readString(file);
    }

    static void write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    /** Compares byte for byte and names the first line that differs. */
    static void compare(Path file, String expected, String actual) {
        if (expected.equals(actual)) {
            return;
        }
        List<String> was = expected.lines().toList();
        List<String> is = actual.lines().toList();
        int line = 0;
        while (line < was.size() && line < is.size() && was.get(line).equals(is.get(line))) {
            line++;
        }
        fail(file + ":" + (line + 1) + " differs\n  expected: " + at(was, line) + "\n  actual:   " + at(is, line)
                + "\nif this is meant, record it with " + FLAG + " and read the diff");
    }

    private static String at(List<String> lines, int line) {
        return line < lines.size() ? lines.get(line) : "(the end, or another end of line)";
    }

    /** Names of the files in a folder, without their ends. */
    static List<String> recorded(String folder) throws IOException {
        try (Stream<Path> files = Files.list(ROOT.resolve(folder))) {
            return files.map(file -> file.getFileName().toString().replaceFirst("\\.[a-z]+$", ""))
                    .sorted()
                    .toList();
        }
    }
}

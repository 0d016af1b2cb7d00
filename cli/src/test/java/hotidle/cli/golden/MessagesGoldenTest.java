package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.cli.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is said of each wrong command line, as recorded in {@code src/test/golden/messages.txt}: a line that begins with {@code $}, then
 * exit code and standard error. To add one, add its {@code $} line and rewrite. What is said of wrong circuit files is
 * {@code BadFilesTest}'s.
 */
class MessagesGoldenTest {

    private static final Path FILE = GoldenFiles.ROOT.resolve("messages.txt");
    private static final String PROMPT = "$ hotidle";

    @TempDir(factory = AlwaysAsLong.class)
    Path out;

    /** The wrong command lines, without the program's name. */
    static List<Case> cases() throws IOException {
        return Files.readAllLines(FILE).stream()
                .filter(line -> line.startsWith(PROMPT))
                .map(line -> line.substring(PROMPT.length()).strip())
                .map(command -> new Case(command, command))
                .toList();
    }

    @Test
    void eachWrongCommandLineIsAnsweredAsRecorded() throws IOException {
        String recorded = Files.readString(FILE);
        List<String> now = new ArrayList<>();
        for (String line : recorded.lines().toList()) {
            if (line.startsWith("#")) {
                now.add((now.isEmpty() || now.get(now.size() - 1).startsWith("#") ? "" : "\n") + line);
            } else if (line.startsWith(PROMPT)) {
                String command = line.substring(PROMPT.length()).strip();
                Run run = new Case(command, command).run(out);
                assertRefused(command, run);
                now.add("\n" + line.stripTrailing() + "\nexit " + run.code() + "\n"
                        + run.err().stripTrailing());
            }
        }
        String text = String.join("\n", now) + "\n";
        if (GoldenFiles.rewriting()) {
            GoldenFiles.write(FILE, text);
        }
        GoldenFiles.compare(FILE, Files.readString(FILE), text);
    }

    private void assertRefused(String command, Run run) throws IOException {
        assertEquals(2, run.code(), command + "\n" + run.err());
        assertEquals("", run.out(), command);
        assertTrue(run.err().length() > 20, command);
        assertFalse(run.err().contains("\tat ") || run.err().contains("Exception"), command + "\n" + run.err());
        try (Stream<Path> left = Files.list(out)) {
            assertEquals(List.of(), left.toList(), command + " left a file");
        }
    }

    @Test
    void noWrongCommandLineIsAskedTwice() throws IOException {
        List<String> asked = cases().stream().map(Case::command).toList();
        assertEquals(asked.stream().distinct().toList(), asked);
    }
}

package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import hotidle.cli.HotIdle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;

/**
 * What a document shows of a command is what is recorded of it: a block that begins with {@code $ hotidle}. The flag that records
 * outputs writes the blocks too; the words around them are written by hand.
 */
class DocumentsTest {

    private static final Path COMMANDS = Path.of("README.md");
    private static final List<Path> DOCUMENTS =
            List.of(COMMANDS, Path.of("../README.md"), Path.of("../circuits/README.md"));

    private static final Set<String> NO_FIRST_SCREEN = Set.of("--full", "--help", "--format");

    private static final String ERROR = "--- standard error\n";
    private static final String FENCE = "```";
    private static final String PROMPT = "$ hotidle ";

    /** Recorded outputs by the command line as a reader would write it: what was said on the error stream, then the screen. */
    private static Map<String, String> recorded() throws IOException {
        return Case.recorded().stream()
                .filter(one -> !GoldenTest.json(one))
                .collect(Collectors.toMap(one -> plain(one.command()), DocumentsTest::shown, (one, other) -> one));
    }

    private static String plain(String text) {
        return text.replace("{out}/", "").replace("{files}/", "");
    }

    private static String shown(Case one) {
        try {
            String text = GoldenFiles.read(GoldenFiles.ROOT.resolve("text").resolve(one.name() + ".txt"));
            int error = text.indexOf(ERROR) + ERROR.length();
            int out = text.indexOf(GoldenFiles.OUTPUT);
            return plain(text.substring(error, out) + text.substring(out + GoldenFiles.OUTPUT.length()));
        } catch (IOException unread) {
            throw new java.io.UncheckedIOException(unread);
        }
    }

    /** The document with every block as recorded. */
    private static String asRecorded(Path document, Map<String, String> recorded) throws IOException {
        List<String> now = new ArrayList<>();
        List<String> lines = Files.readString(document).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            now.add(lines.get(i));
            if (lines.get(i).equals(FENCE)
                    && i + 1 < lines.size()
                    && lines.get(i + 1).startsWith(PROMPT)) {
                String command = lines.get(i + 1).substring(PROMPT.length());
                assertTrue(recorded.containsKey(command), document + " shows what no test records: " + command);
                now.add(lines.get(i + 1));
                recorded.get(command).lines().forEach(now::add);
                i++;
                while (!lines.get(i + 1).equals(FENCE)) {
                    i++;
                }
                now.add(lines.get(++i));
            }
        }
        return String.join("\n", now) + "\n";
    }

    @Test
    void everyScreenOfADocumentIsTheOneThatIsRecorded() throws IOException {
        Map<String, String> recorded = recorded();
        if (GoldenFiles.rewriting()) {
            Files.writeString(
                    COMMANDS,
                    Files.readString(COMMANDS) + String.join("", missing().values()));
        }
        for (Path document : DOCUMENTS) {
            String now = asRecorded(document, recorded);
            if (GoldenFiles.rewriting()) {
                Files.writeString(document, now);
            }
            assertEquals(now, Files.readString(document), document + ": record it anew, " + GoldenFiles.FLAG);
        }
    }

    /** Sections of the commands that have none, for the flag that records; to be put in their place, with better words, by hand. */
    private static Map<String, String> missing() throws IOException {
        List<String> lines = Files.readString(COMMANDS).lines().toList();
        Map<String, String> missing = new TreeMap<>();
        for (Class<?> command : HotIdle.class.getAnnotation(Command.class).subcommands()) {
            Command declared = command.getAnnotation(Command.class);
            Optional<Case> screen = Case.of("cases.txt").stream()
                    .filter(one -> one.words().get(0).equals(declared.name()))
                    .filter(one -> one.words().stream().noneMatch(NO_FIRST_SCREEN::contains))
                    .findFirst();
            boolean shown = lines.contains("## " + declared.name())
                    && lines.stream().anyMatch(line -> (line + " ").startsWith(PROMPT + declared.name() + " "));
            if (screen.isPresent() && !shown) {
                missing.put(
                        declared.name(),
                        "\n## " + declared.name() + "\n\n" + String.join(" ", declared.description()) + "\n\n" + FENCE
                                + "\n" + PROMPT + plain(screen.get().command()) + "\n" + FENCE + "\n");
            }
        }
        return missing;
    }

    @Test
    void everyCommandOfWhichAScreenIsRecordedShowsIt() throws IOException {
        assumeFalse(GoldenFiles.rewriting(), "the document is being written");
        assertEquals(Set.of(), missing().keySet(), "no section in cli/README.md; record it anew, " + GoldenFiles.FLAG);
    }

    /** A command that a document names without its output must at least be one that is understood. */
    @Test
    void everyOptionThatADocumentNamesIsOne() throws IOException {
        StringBuilder options = new StringBuilder();
        for (String name : GoldenFiles.recorded("text")) {
            if (name.startsWith("help")) {
                options.append(GoldenFiles.read(GoldenFiles.ROOT.resolve("text").resolve(name + ".txt")));
            }
        }
        for (Path document : DOCUMENTS) {
            java.util.regex.Matcher matcher = java.util.regex.Pattern.compile("(?<![\\w-])--[a-z][a-z-]+")
                    .matcher(Files.readString(document).replaceAll("mvn [^\n]*", ""));
            while (matcher.find()) {
                assertTrue(options.indexOf(matcher.group()) >= 0, document + ": " + matcher.group());
            }
        }
    }
}

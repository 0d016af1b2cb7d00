package hotidle.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every source that the solver names says where it stands whether it was read (found) or is quoted from memory. */
class SourcesAreMarkedTest {

    private static final int LEAST_SOURCES = 25;

    /** An author with initials, or a name with a year. */
    private static final Pattern SOURCE = Pattern.compile(
            "\\b[A-Z]\\. (?:[A-Z]\\. )*(?!The\\b)[A-Z][a-zçöü]{2,}|\\b[A-Z][a-zçöü]{2,}(?: &amp; [A-Z][-A-Za-z]+)?,? \\(?1[5-9]\\d\\d\\b");

    private static final Pattern MARK = Pattern.compile("\\(found|from memory");

    /** A mark stands for all names of its sentence, a long title and its place between them. */
    private static final int REACH = 260;

    @Test
    void everySourceInTheSolverSaysWhetherItWasReadOrIsQuotedFromMemory() throws IOException {
        List<String> unmarked = new ArrayList<>();
        int sources = 0;
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                String comments = comments(Files.readString(file));
                Matcher source = SOURCE.matcher(comments);
                while (source.find()) {
                    sources++;
                    String after =
                            comments.substring(source.start(), Math.min(comments.length(), source.start() + REACH));
                    if (!MARK.matcher(after).find()) {
                        unmarked.add(file.getFileName() + ": " + after.substring(0, Math.min(80, after.length())));
                    }
                }
            }
        }
        assertEquals(List.of(), unmarked, "write (found) or (from memory) behind each");
        assertTrue(sources >= LEAST_SOURCES, sources + " sources");
    }

    /** All Javadoc of a file on one line. */
    private static String comments(String text) {
        return text.lines()
                .map(String::strip)
                .filter(line -> line.startsWith("*") || line.startsWith("/*"))
                .map(line -> line.replaceAll("^/?\\*+/? ?|\\*/$", ""))
                .collect(Collectors.joining(" "))
                .replaceAll(" +", " ");
    }
}

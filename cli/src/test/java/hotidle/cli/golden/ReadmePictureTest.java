package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.cli.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The picture of the README is what the command below it draws. Its words and the number of its curves and bands are compared: where they
 * stand depends on the fonts of the machine.
 */
class ReadmePictureTest {

    private static final Path README = Path.of("../README.md");
    private static final Pattern PICTURE =
            Pattern.compile("!\\[[^]]+]\\(cli/(\\S+\\.svg)\\)\\R\\R {4}cli/hotidle (.*)\\R");
    private static final Pattern WORDS = Pattern.compile(">([^<>]*\\S[^<>]*)</(?:text|tspan|title|desc)>");
    private static final Pattern SHAPE = Pattern.compile("<(path|polyline|polygon)\\b");

    @TempDir
    Path folder;

    private static List<String> words(String svg) {
        return WORDS.matcher(svg).results().map(found -> found.group(1).strip()).toList();
    }

    @Test
    void thePictureIsWhatItsCommandDraws() throws IOException {
        Matcher shown = PICTURE.matcher(Files.readString(README));
        assertTrue(shown.find(), "no picture with its command below it in " + README);
        Path recorded = Path.of(shown.group(1));
        Path drawn = folder.resolve("drawn.svg");
        Run run = Run.of(Stream.of(shown.group(2).split(" +"))
                .map(word -> word.endsWith(".svg") ? drawn.toString() : word)
                .toArray(String[]::new));
        assertEquals(0, run.code(), run.err());
        String now = Files.readString(drawn);
        if (GoldenFiles.rewriting()) {
            GoldenFiles.write(recorded, now);
        }
        String was = GoldenFiles.read(recorded);
        assertEquals(words(was), words(now));
        assertEquals(
                SHAPE.matcher(was).results().count(),
                SHAPE.matcher(now).results().count());
        assertTrue(words(now).size() > 10, "read");
    }
}

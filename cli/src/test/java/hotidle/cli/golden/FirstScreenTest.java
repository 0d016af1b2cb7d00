package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Wrap;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * What a command answers at first fits on one screen. Not held to it: all of an answer ({@code --full}), help, CSV and JSON, a sheet to
 * fill in, and a file's faults, which go to standard error.
 */
class FirstScreenTest {

    private static final Set<String> NOT_CUT = Set.of("--full", "--help", "--version", "--format", "sheet");

    /** What is said of a word is all there is; what the live page shows is shown by the browser. */
    private static final List<String> NOTHING_MORE = List.of("explain", "live");

    private static List<Case> screens() throws IOException {
        return Case.recorded().stream()
                .filter(one -> one.words().stream().noneMatch(NOT_CUT::contains))
                .toList();
    }

    private static String command(Case one) {
        return one.words().get(0);
    }

    /** What does not fit: too many lines, or one that is too wide. */
    private static List<String> faults(Case one) throws IOException {
        String recorded = GoldenFiles.read(GoldenFiles.ROOT.resolve("text").resolve(one.name() + ".txt"));
        List<String> lines = recorded.substring(recorded.indexOf(GoldenFiles.OUTPUT) + GoldenFiles.OUTPUT.length())
                .lines()
                .toList();
        List<String> faults = new ArrayList<>();
        if (lines.size() > Wrap.LINES) {
            faults.add(one.name() + ": " + lines.size() + " lines");
        }
        lines.stream()
                .filter(line -> line.length() > Wrap.WIDTH)
                .forEach(line -> faults.add(one.name() + ": " + line.length() + " columns: " + line));
        return faults;
    }

    @Test
    void everyFirstScreenFits() throws IOException {
        List<String> faults = new ArrayList<>();
        for (Case one : screens()) {
            faults.addAll(faults(one));
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void allOfEachAnswerIsRecordedToo() throws IOException {
        List<Case> whole = Case.recorded().stream()
                .filter(one -> one.words().contains("--full"))
                .toList();
        for (Case one : screens()) {
            assertTrue(
                    NOTHING_MORE.contains(command(one))
                            || whole.stream().anyMatch(full -> command(full).equals(command(one))),
                    command(one) + " --full is not recorded");
        }
    }
}

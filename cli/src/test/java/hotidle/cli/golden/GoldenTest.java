package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.cli.Run;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * What each command answers is what was recorded of it: text, standard error and exit code byte for byte, the numbers of JSON within
 * {@link Tolerance}. The cases stand in {@code src/test/golden/cases.txt}; {@code -Dhotidle.rewrite=true} records them anew,
 * {@code -Dhotidle.cases=leaks.*} looks at those alone whose name fits.
 */
class GoldenTest {

    /** Nobody answers what a command asks. */
    @org.junit.jupiter.api.BeforeAll
    static void nothingIsTyped() {
        System.setIn(java.io.InputStream.nullInputStream());
    }

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir(factory = AlwaysAsLong.class)
    Path temporary;

    @TestFactory
    Stream<DynamicTest> eachCommandAnswersAsRecorded() throws IOException {
        return Case.recorded().stream()
                .filter(one -> one.name().matches(System.getProperty("hotidle.cases", ".*")))
                .map(one -> DynamicTest.dynamicTest(one.name(), () -> check(one)));
    }

    private void check(Case one) throws IOException {
        Path out = Files.createDirectory(temporary.resolve(one.name()));
        Run run = one.run(out);
        if (json(one)) {
            checkJson(one, run);
        } else {
            checkText(one, run);
        }
    }

    static boolean json(Case one) {
        return one.command().contains("--format json");
    }

    private static void checkText(Case one, Run run) throws IOException {
        Path file = GoldenFiles.ROOT.resolve("text").resolve(one.name() + ".txt");
        String now = "$ hotidle " + one.command() + "\nexit " + run.code() + "\n--- standard error\n" + run.err()
                + GoldenFiles.OUTPUT + run.out();
        if (GoldenFiles.rewriting()) {
            GoldenFiles.write(file, now);
        }
        GoldenFiles.compare(file, GoldenFiles.read(file), now);
    }

    private static void checkJson(Case one, Run run) throws IOException {
        Path file = file(one);
        ObjectNode now = JsonNodeFactory.instance.objectNode();
        now.put("command", one.command());
        now.put("exit", run.code());
        run.err().lines().forEach(now.putArray("error")::add);
        now.set("output", run.out().isEmpty() ? null : MAPPER.readTree(run.out()));
        if (GoldenFiles.rewriting()) {
            GoldenFiles.write(file, GoldenJson.text(now));
        }
        List<String> differences = JsonDifference.between(recorded(file), now);
        if (!differences.isEmpty()) {
            fail(file + " differs at " + differences.size() + " places:\n"
                    + String.join("\n", differences.subList(0, Math.min(differences.size(), 20)))
                    + "\nif this is meant, record it with " + GoldenFiles.FLAG + " and read the diff");
        }
    }

    static Path file(Case one) {
        return GoldenFiles.ROOT.resolve("json").resolve(one.name() + ".json");
    }

    static JsonNode recorded(Path file) throws IOException {
        return GoldenJson.plain(MAPPER.readTree(GoldenFiles.read(file)));
    }

    @Test
    void nothingIsRecordedThatNoCaseAsksFor() throws IOException {
        assumeFalse(GoldenFiles.rewriting(), "files are being written");
        List<Case> all = Case.recorded();
        List<String> json =
                all.stream().filter(GoldenTest::json).map(Case::name).sorted().toList();
        List<String> text =
                all.stream().filter(one -> !json(one)).map(Case::name).sorted().toList();
        assertEquals(json, GoldenFiles.recorded("json"));
        assertEquals(text, GoldenFiles.recorded("text"));
    }
}

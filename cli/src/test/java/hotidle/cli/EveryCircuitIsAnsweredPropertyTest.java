package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;

/** What check accepts, every command answers, or says why it does not. */
class EveryCircuitIsAnsweredPropertyTest {

    private static final int LEAST_ACCEPTED = 30;

    private static final List<List<String>> COMMANDS = List.of(
            List.of("check"),
            List.of("sheet"),
            List.of("compare", "--speed", "600..1800/600rpm"),
            List.of("margins", "--speed", "600..1800/600rpm"),
            List.of("sensitivity", "--speed", "600..1800/600rpm"),
            List.of("leaks", "--speed", "600..1800/600rpm", "--steps", "2"),
            List.of("sweep", "--speed", "600..1800/600rpm"),
            List.of("sweep", "--speed", "600..1800/600rpm", "--temperature", "30degC", "--range", "park"),
            List.of("window", "--try", "60..180/60psi", "--speed", "600..1800/600rpm"),
            List.of("map", "--try", "60..180/60psi", "--speed", "600..1800/600rpm", "--vary", "p0.diameter=1..2mm"),
            List.of("wear", "--speed", "600..1800/600rpm"));

    private static final List<String> FORMATS = List.of("table", "csv", "json");

    private static int accepted;

    @Property(tries = 90, seed = "1")
    void whatCheckAcceptsEveryCommandAnswersOrSaysWhyNot(@ForAll long seed) throws IOException {
        Path file = Files.createTempFile("small", ".yaml");
        try {
            String text = new SmallCircuit(seed).text();
            Files.writeString(file, text);
            if (Run.of("check", file.toString()).code() == HotIdle.DONE) {
                accepted++;
                // Each command of each circuit in one format, by turns: in three the same states would be solved three
                // times.
                for (int i = 0; i < COMMANDS.size(); i++) {
                    answered(COMMANDS.get(i), FORMATS.get((accepted + i) % FORMATS.size()), file, text);
                }
            }
        } finally {
            Files.delete(file);
        }
    }

    private static void answered(List<String> command, String format, Path file, String text) {
        List<String> words = new java.util.ArrayList<>(command);
        words.add(1, file.toString());
        if (!command.get(0).equals("sheet") && !command.get(0).equals("check")) {
            words.addAll(List.of("--format", format));
        }
        Run run = Run.of(words.toArray(String[]::new));
        String all = String.join(" ", words) + "\n" + run + "\n" + text;
        assertTrue(run.code() >= 0 && run.code() <= 2, all);
        assertFalse((run.out() + run.err()).isBlank(), all);
        assertTrue(run.code() == 2 || !run.out().isBlank(), all);
        assertTrue(run.code() == 0 || !(run.err() + run.out()).isBlank(), all);
        assertFalse(run.out().contains("NaN") || run.out().contains("Infinity"), all);
    }

    @AfterContainer
    static void enoughOfThemWereAccepted() {
        assertTrue(accepted >= LEAST_ACCEPTED, accepted + " circuits accepted");
    }
}

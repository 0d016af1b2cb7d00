package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Problem;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** A good file with a few random slips: read never throws, and says something wherever it gives no circuit. */
class FuzzTest {

    private static final int TRIES = 800;

    private static final List<String> BITS = List.of(
            "{",
            "}",
            "[",
            "]",
            ": ",
            ", ",
            "\n",
            "  ",
            "\t",
            "*",
            "&a ",
            "!x ",
            "\"",
            "'",
            "|",
            ">",
            "#",
            "-",
            "0",
            "e9",
            ".",
            "1e99",
            "mm",
            "psi",
            "%",
            "? ",
            "<<: ",
            "\u00e4",
            "\ud83d\ude00",
            "\u0000",
            "\u0085",
            "new",
            "to");

    @Test
    void random_slips_give_a_circuit_or_problems_but_never_an_exception() throws IOException {
        String good = resource("every-kind.yaml");
        Random random = new Random(20_240_611);
        int faulty = 0;
        for (int i = 0; i < TRIES; i++) {
            String text = slip(good, random, 1 + random.nextInt(4));
            ReadCircuit read = assertDoesNotThrow(() -> CircuitReader.read(text, "x.yaml"), text);
            boolean error = read.problems().stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
            Assertions.assertEquals(error, read.circuit().isEmpty(), text);
            read.problems().forEach(problem -> assertFalse(problem.text().isBlank()));
            faulty += error ? 1 : 0;
        }
        assertTrue(faulty > TRIES / 4, "the slips hardly ever hurt: " + faulty);
    }

    private static String slip(String good, Random random, int slips) {
        StringBuilder text = new StringBuilder(good);
        for (int i = 0; i < slips; i++) {
            int at = random.nextInt(text.length() - 40);
            int size = 1 + random.nextInt(30);
            switch (random.nextInt(4)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, text.substring(at, at + size));
                case 2 -> text.delete(at, at + size);
                default -> text.insert(at, BITS.get(random.nextInt(BITS.size())));
            }
        }
        return text.toString();
    }

    @Test
    void hostile_files_are_refused_quickly() {
        List<String> hostile = List.of(
                "a: " + "[".repeat(100_000),
                "a: " + "{a: ".repeat(100_000),
                "- ".repeat(100_000),
                "x".repeat(1_000_001),
                "circuit: " + "9".repeat(900_000),
                "parts: {" + "p: {kind: orifice, diameter: 1e999999999 mm}, ".repeat(2_000) + "}",
                "builds: {" + "b: {}, ".repeat(5_000) + "}",
                numbered("builds", 20_000, "{on: b1}"),
                numbered("parts", 10_000, "{kind: orifice, from: a, to: b, diameter: 2 mm}"),
                numbered("nodes", 1_900, "{}")
                        + numbered("parts", 1_900, "{kind: orifice, from: nod1, to: nod2, diameter: 2}"),
                numbered("parts", 1_900, "{kind: orifice, from: a, to: b, diameter: 2 mm}")
                        + numbered("builds", 50, "{changes: {n1.diameter: {to: 3 mm, because: x}}}"));
        for (String text : hostile) {
            ReadCircuit read =
                    Assertions.assertTimeout(Duration.ofSeconds(5), () -> CircuitReader.read(text, "x.yaml"));
            assertTrue(read.circuit().isEmpty());
        }
    }

    private static String numbered(String section, int count, String each) {
        StringBuilder text = new StringBuilder(section).append(":\n");
        for (int i = 0; i < count; i++) {
            text.append("  n").append(i).append(": ").append(each).append('\n');
        }
        return text.toString();
    }
}

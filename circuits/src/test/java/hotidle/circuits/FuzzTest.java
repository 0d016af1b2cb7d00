package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.sheet.SheetWriter;
import hotidle.circuits.text.Problem;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Files with a few random slips: read never throws, and says something wherever it gives no circuit. */
class FuzzTest {

    private static final int TRIES = 800;

    /** Looks for a hang, not for speed: each of these takes about a second of a quiet machine. */
    private static final Duration HANG = Duration.ofSeconds(90);

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
    void randomSlipsGiveACircuitOrProblemsButNeverAnException() throws IOException {
        String good = resource("every-kind.yaml");
        Random random = new Random(20_240_611);
        int faulty = 0;
        for (int i = 0; i < TRIES; i++) {
            faulty += read(slip(good, random, 1 + random.nextInt(4))) ? 0 : 1;
        }
        assertTrue(faulty > TRIES / 4, "the slips hardly ever hurt: " + faulty);
    }

    /** Whether a text gives a circuit; it gives one exactly where no error is told. */
    private static boolean read(String text) {
        ReadCircuit read = assertDoesNotThrow(() -> CircuitReader.read(text, "x.yaml"), text);
        boolean error = read.problems().stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
        Assertions.assertEquals(error, read.circuit().isEmpty(), text);
        read.problems().forEach(problem -> assertFalse(problem.text().isBlank()));
        return !error;
    }

    /**
     * Slips in every ready circuit, every bad file and filled sheets, for as long as asked: -Dhotidle.fuzz.minutes=10, once with
     * -Xmx512m. Only then is the time of each reading judged; the short run shows that it works.
     */
    @Test
    void slipsInReadyCircuitsBadFilesAndSheetsNeitherHangNorThrow() throws IOException {
        List<String> seeds = new ArrayList<>(List.of(resource("every-kind.yaml")));
        Library.names().forEach(name -> seeds.add(Library.text(name).orElseThrow()));
        for (BadFilesTest.Fault fault : BadFilesTest.faults()) {
            seeds.add(BadFilesTest.with(fault, BadFilesTest.good()));
        }
        DescribedCircuit bench = CircuitReader.read(Library.text("training-rig").orElseThrow(), "rig.yaml")
                .circuit()
                .orElseThrow();
        String sheet = bench.measurementSheet(SheetWriter.LengthUnit.MM).replace(",,,,,,,\r\n", ",,,0.06,mm,,,\r\n");
        long minutes = Long.getLong("hotidle.fuzz.minutes", 0);
        long end = System.nanoTime() + Duration.ofMinutes(minutes).toNanos();
        Random random = new Random(minutes == 0 ? 7 : System.nanoTime());
        long worst = 0;
        String slowest = "";
        long tries = 0;
        while (tries < 60 || System.nanoTime() < end) {
            String text = slip(seeds.get(random.nextInt(seeds.size())), random, 1 + random.nextInt(6));
            long before = worked();
            read(text);
            long taken = worked() - before;
            if (taken > worst) {
                worst = taken;
                slowest = text;
            }
            String slipped = slip(sheet, random, 1 + random.nextInt(6));
            assertDoesNotThrow(
                    () -> CircuitReader.read(
                            Library.text("training-rig").orElseThrow(),
                            "rig.yaml",
                            BaseFiles.LIBRARY,
                            Optional.of(new MeasurementSheet("s.csv", slipped))),
                    slipped);
            tries++;
        }
        if (minutes > 0) {
            assertTrue(worst < 1_000_000_000L, worst / 1e9 + " s for\n" + slowest);
            Files.writeString(
                    Path.of("target", "fuzz.txt"),
                    tries + " files and as many sheets, slowest " + worst / 1e9 + " s of work\n");
        }
    }

    /** Time that this thread has worked [ns]: what a busy machine keeps it waiting is no hang. */
    private static long worked() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
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
    void hostileFilesAreRefusedWithoutAHang() {
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
            ReadCircuit read = Assertions.assertTimeout(HANG, () -> CircuitReader.read(text, "x.yaml"));
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

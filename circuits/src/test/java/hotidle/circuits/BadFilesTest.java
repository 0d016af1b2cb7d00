package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Problem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * bad.txt: faults put into every-kind.yaml, and all that is then said, to the letter. A line {@code - } is what is taken out,
 * {@code + } what comes in its place; {@code |} stands for a line break.
 */
class BadFilesTest {

    record Fault(String title, List<String> out, List<String> in, List<String> said) {}

    static List<Fault> faults() throws IOException {
        List<Fault> faults = new ArrayList<>();
        for (String line : resource("bad.txt").lines().toList()) {
            if (line.startsWith("== ")) {
                faults.add(new Fault(line, new ArrayList<>(), new ArrayList<>(), new ArrayList<>()));
            } else if (line.startsWith("- ") || line.startsWith("+ ")) {
                Fault fault = faults.get(faults.size() - 1);
                (line.startsWith("-") ? fault.out : fault.in).add(line.substring(2));
            } else if (!line.isEmpty()) {
                faults.get(faults.size() - 1).said.add(line);
            }
        }
        return faults;
    }

    static String with(Fault fault, String good) {
        String bad = good;
        for (int i = 0; i < fault.out.size(); i++) {
            String out = fault.out.get(i).replace("|", "\n");
            assertEquals(bad.indexOf(out), bad.lastIndexOf(out), fault.title + ": '" + out + "' stands more than once");
            assertTrue(bad.contains(out), fault.title + ": '" + out + "' stands nowhere");
            bad = bad.replace(out, fault.in.get(i).replace("|", "\n"));
        }
        return bad;
    }

    static String good() throws IOException {
        return resource("every-kind.yaml").replace("bore-*.bore: {to: measured", "bore-1.bore: {to: measured");
    }

    @Test
    void everyFaultIsReportedAtItsPlaceWithReasonAndRemedyAndNothingElseIs() throws IOException {
        String good = good();
        assertEquals(List.of(), CircuitReader.read(good, "x.yaml").problems());
        StringBuilder now = new StringBuilder();
        int problems = 0;
        for (Fault fault : faults()) {
            ReadCircuit read = CircuitReader.read(with(fault, good), "x.yaml");
            problems += read.problems().size();
            assertTrue(!read.problems().isEmpty(), fault.title + " is not found");
            boolean error = read.problems().stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
            assertEquals(error, read.circuit().isEmpty(), fault.title);
            now.append(fault.title).append('\n');
            for (int i = 0; i < fault.out.size(); i++) {
                now.append("- ").append(fault.out.get(i)).append('\n');
                now.append("+ ").append(fault.in.get(i)).append('\n');
            }
            now.append(read.problems().stream().map(Problem::text).collect(Collectors.joining("\n")))
                    .append("\n\n");
        }
        assertTrue(problems >= 140, "only " + problems + " problems in the corpus");
        Golden.check(Path.of("src/test/resources/hotidle/circuits/bad.txt"), now.toString());
    }

    @Test
    void filesThatAreNoCircuitAreReportedToo() {
        for (String text :
                List.of("", "- a\n- b\n", "just text", "---\n...\n", "{", "a: [1, 2", "\u0000", "a: \t b\n\tc: d")) {
            ReadCircuit read = CircuitReader.read(text, "x.yaml");
            assertTrue(read.circuit().isEmpty(), text);
            assertEquals(Problem.Severity.ERROR, read.problems().get(0).severity(), text);
        }
    }

    @Test
    void bytesThatAreNotUtf8AreReported() {
        ReadCircuit read = CircuitReader.read(new byte[] {'a', ':', (byte) 0xe4, '\n'}, "x.yaml");
        assertEquals(
                "x.yaml:1:1: error: the file is not in UTF-8",
                read.problems().get(0).headline());
    }

    @Test
    void aByteOrderMarkShiftsNoColumn() throws IOException {
        assertTrue(CircuitReader.read("\uFEFF" + resource("every-kind.yaml"), "x.yaml")
                .circuit()
                .isPresent());
        assertEquals(
                CircuitReader.read("circus: a", "x.yaml").problems(),
                CircuitReader.read("\uFEFFcircus: a", "x.yaml").problems());
    }
}

package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.law.RatedPoint;
import hotidle.part.Converter;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** An older converter has no lockup: one loss and a charge pressure are all that is known of it. */
class ConverterWithoutLockupTest {

    private static String circuit() throws IOException {
        return BadFilesTest.good()
                .lines()
                .filter(line -> !line.strip().startsWith("slipping:")
                        && !line.strip().startsWith("on: {")
                        && !line.strip().startsWith("lockup-"))
                .reduce("", (all, line) -> all + line + "\n");
    }

    @Test
    void itHasOneLossWhateverItsDuty() throws IOException {
        ReadCircuit read = CircuitReader.read(circuit(), "x.yaml");
        assertEquals(List.of(), read.problems());
        Converter converter = (Converter) read.circuit()
                .orElseThrow()
                .unit("fresh")
                .network()
                .part("converter")
                .orElseThrow()
                .part();
        assertEquals(Optional.empty(), converter.lockup());
        assertEquals(new RatedPoint(1e-4, 0.3e5, 0.005, 820, 0.8), converter.open());
    }

    @Test
    void aDutyWithLockupOnIsRefusedInWords() throws IOException {
        String locked = circuit().replaceFirst("speed: 650 rpm", "lockup: on\n    speed: 650 rpm");
        List<Problem> problems = CircuitReader.read(locked, "x.yaml").problems();
        assertTrue(problems.stream().anyMatch(problem -> problem.code() == ProblemCode.NO_LOCKUP), problems.toString());
    }

    @Test
    void soIsABuildThatPutsItOn() throws IOException {
        String locked = circuit()
                .replace(
                        "    because: to hold more at idle",
                        "    duty: {hot-idle: {lockup: on}}\n    because: to hold more at idle");
        List<Problem> problems = CircuitReader.read(locked, "x.yaml").problems();
        assertTrue(problems.stream().anyMatch(problem -> problem.code() == ProblemCode.NO_LOCKUP), problems.toString());
    }
}

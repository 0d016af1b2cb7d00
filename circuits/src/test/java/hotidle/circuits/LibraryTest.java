package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class LibraryTest {

    @TestFactory
    Stream<DynamicTest> everyReadyCircuitReadsWithoutAProblem() {
        return Library.names().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    ReadCircuit read = CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml");
                    assertEquals(List.of(), read.problems());
                    assertEquals(name, read.circuit().orElseThrow().name());
                }));
    }

    @TestFactory
    Stream<DynamicTest> everyReadyCircuitSolvesAtAllItsDutyPointsInAllItsBuilds() {
        return Library.names().stream()
                .flatMap(name -> CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                        .circuit()
                        .orElseThrow()
                        .units()
                        .values()
                        .stream()
                        .map(unit -> DynamicTest.dynamicTest(name + " " + unit.build(), () -> solves(unit))));
    }

    private static void solves(Transmission unit) {
        for (DutyPoint duty : unit.duties()) {
            Outcome outcome = new SteadySolver(unit.network()).solve(unit.conditions(duty), Optional.empty());
            assertTrue(outcome.state().isPresent(), duty.name() + ": " + outcome.unsolved());
        }
    }

    @Test
    void whatIsListedOfACircuitIsWhatItIsOnceItIsMade() {
        assertEquals(Library.names().size(), ReadyCircuit.all().size());
        for (ReadyCircuit ready : ReadyCircuit.all()) {
            DescribedCircuit made = CircuitReader.read(
                            Library.text(ready.name()).orElseThrow(), ready.name())
                    .circuit()
                    .orElseThrow();
            assertEquals(made.name(), ready.name());
            assertEquals(made.about(), ready.about());
            assertEquals(
                    made.builds().stream().map(DescribedCircuit.Build::name).toList(), ready.builds());
        }
    }

    @Test
    void everyReadyCircuitHasAPageThatNamesItsBuildsAndDutyPoints() throws IOException {
        for (String name : Library.names()) {
            String page = Files.readString(Path.of("library", name + ".md"));
            Transmission unit = CircuitReader.read(Library.text(name).orElseThrow(), name)
                    .circuit()
                    .orElseThrow()
                    .unit();
            unit.duties().forEach(duty -> assertTrue(page.contains("`" + duty.name() + "`"), name + duty.name()));
            CircuitReader.read(Library.text(name).orElseThrow(), name)
                    .circuit()
                    .orElseThrow()
                    .builds()
                    .forEach(build -> assertTrue(page.contains("`" + build.name() + "`"), name + build.name()));
            assertTrue(page.contains("**invented**"), name);
        }
    }

    @Test
    void theLibraryIsFoundAlthoughTestsHaveAFolderOfItsName() {
        assertTrue(Library.names().contains("shuttle-five"), Library.names().toString());
    }

    @Test
    void aNameThatIsNotThereOrClimbsOutOfTheFolderGivesNothing() {
        assertTrue(Library.text("no-such-circuit").isEmpty());
        assertTrue(Library.text("../library/shuttle-five").isEmpty());
    }
}

package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class LibraryTest {

    @TestFactory
    Stream<DynamicTest> every_ready_circuit_reads_without_a_problem() {
        return Library.names().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> {
                    ReadCircuit read = CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml");
                    assertEquals(List.of(), read.problems());
                    assertEquals(name, read.circuit().orElseThrow().name());
                }));
    }

    @Test
    void the_library_is_found_although_tests_have_a_folder_of_its_name() {
        assertTrue(Library.names().contains("shuttle-five"), Library.names().toString());
    }

    @Test
    void a_name_that_is_not_there_or_climbs_out_of_the_folder_gives_nothing() {
        assertTrue(Library.text("no-such-circuit").isEmpty());
        assertTrue(Library.text("../library/shuttle-five").isEmpty());
    }
}

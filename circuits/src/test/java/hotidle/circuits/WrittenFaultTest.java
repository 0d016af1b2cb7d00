package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Faults of a ready circuit as a mechanic writes them. */
class WrittenFaultTest {

    private static final List<UnitFault> POSSIBLE =
            UnitFaults.of(CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                    .circuit()
                    .orElseThrow()
                    .adjustable("worn"));

    private static WrittenFault.NoFaultException refused(String text) {
        return assertThrows(WrittenFault.NoFaultException.class, () -> WrittenFault.read(POSSIBLE, text));
    }

    @Test
    void aWeakSpringIsReadWithItsPartAndItsShare() {
        UnitFault.Sized weak = WrittenFault.read(POSSIBLE, " spring-weak@regulator:20%");
        assertEquals(FaultKind.SPRING_WEAK, weak.fault().kind());
        assertEquals("regulator", weak.fault().part());
        assertEquals(0.2, weak.size(), 1e-12);
    }

    @Test
    void aStuckSpoolIsReadInMillimetresAndAMissingBallHasNoSize() {
        assertEquals(
                3e-4, WrittenFault.read(POSSIBLE, "valve-stuck@regulator:0.3mm").size(), 1e-12);
        UnitFault ball = POSSIBLE.stream()
                .filter(one -> one.kind() == FaultKind.CHECK_BALL_MISSING)
                .findFirst()
                .orElseThrow();
        assertEquals(1, WrittenFault.read(POSSIBLE, ball.name()).size());
        assertEquals("it takes no size", refused(ball.name() + ":3mm").getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"spring-weak@regulator:20%", "valve-stuck@regulator:0.3mm", "oil-aerated:15%"})
    void whatIsWrittenIsReadAgain(String text) {
        assertEquals(text, WrittenFault.of(WrittenFault.read(POSSIBLE, text)));
        UnitFault ball = POSSIBLE.stream()
                .filter(one -> one.kind() == FaultKind.CHECK_BALL_MISSING)
                .findFirst()
                .orElseThrow();
        assertEquals(ball.name(), WrittenFault.of(ball.of(1)));
    }

    @Test
    void thePartMayBeLeftOutWhereOnlyOneFits() {
        assertEquals("", WrittenFault.read(POSSIBLE, "oil-aerated:15%").fault().part());
        assertEquals("names no part", refused("spring-weak:20%").getMessage());
    }

    @ParameterizedTest
    @CsvSource({
        "spring-weak@regulator, give its size, write --fault spring-weak@regulator:50%; allowed is 0% to 95%",
        "valve-stuck@regulator, give its size, write --fault valve-stuck@regulator:1mm; allowed is 0mm to 5mm",
        "spring-weak@regulator:99%, its size lies outside what it can be, allowed is 0% to 95%",
        "@, is no fault, 'write KIND@PART:SIZE, for example spring-weak@regulator:20%'"
    })
    void whatIsWrongIsSaidWithWhatToWrite(String text, String what, String mend) {
        assertEquals(what, refused(text).getMessage());
        assertEquals(mend, refused(text).mend());
    }

    /** Whatever a message or a list suggests is taken, and makes a unit, of every fault of every ready circuit. */
    @ParameterizedTest
    @MethodSource("circuits")
    void everySizeThatIsSuggestedIsAcceptedAndShort(String name) {
        DescribedCircuit circuit = CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
        Adjustable build = circuit.adjustable(circuit.unit().build());
        for (UnitFault fault : UnitFaults.of(build)) {
            String example = WrittenFault.example(fault);
            UnitFault.Sized read = WrittenFault.read(List.of(fault), example);
            assertTrue(fault.in(build, read.size()).isPresent(), example);
            for (double way : new double[] {0, 0.25, 0.5, 0.75, 1}) {
                String written = WrittenFault.of(WrittenFault.rounded(fault, way));
                assertEquals(fault, WrittenFault.read(List.of(fault), written).fault(), written);
            }
            if (fault.kind() != FaultKind.CHECK_BALL_MISSING) {
                assertTrue(example.replaceAll(".*:", "").matches("[0-9.]{1,5}(%|mm)"), example);
                String mend = assertThrows(
                                WrittenFault.NoFaultException.class,
                                () -> WrittenFault.read(List.of(fault), fault.name()))
                        .mend();
                String bounds = mend.replaceAll(".*allowed is ", "");
                for (String bound : bounds.split(" to ", -1)) {
                    assertEquals(
                            fault,
                            WrittenFault.read(List.of(fault), fault.name() + ":" + bound)
                                    .fault(),
                            mend);
                }
            }
        }
    }

    static List<String> circuits() {
        return Library.names();
    }

    @Test
    void aMisspeltKindOrPartListsTheNearest() {
        assertTrue(refused("spring-week@regulator:20%").mend().contains("spring-weak"));
        assertTrue(refused("spring-weak@regulater:20%").mend().contains("regulator"));
        assertTrue(refused("spring-weak@regulator:20 tons").getMessage().startsWith("its size 20 tons, "));
    }
}

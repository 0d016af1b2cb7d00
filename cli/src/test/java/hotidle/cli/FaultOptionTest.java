package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Faults as they are written behind --fault. */
class FaultOptionTest {

    private static final DescribedCircuit RIG = ReadyCircuits.read("crescent-four");
    private static final Adjustable BUILD = RIG.adjustable(RIG.builds().get(0).name());

    private static FaultOption faults(String... written) {
        FaultOption option = new FaultOption();
        String[] words = new String[2 * written.length];
        for (int i = 0; i < written.length; i++) {
            words[2 * i] = "--fault";
            words[2 * i + 1] = written[i];
        }
        return Options.of(option, words);
    }

    private static String refused(String written) {
        return assertThrows(WrongInputException.class, () -> faults(written).each(BUILD))
                .getMessage();
    }

    @Test
    void withoutAFaultTheBuildsAreAsTheFileHasThem() {
        FaultOption none = faults();
        assertFalse(none.given());
        assertEquals(BUILD.unit(), none.over(BUILD).unit());
    }

    @Test
    void aFaultChangesTheUnitAndLeavesItsName() {
        List<Transmission> faulty = faults("spring-weak@regulator:20%").each(BUILD);
        assertEquals(1, faulty.size());
        assertEquals(BUILD.unit().build(), faulty.get(0).build());
        assertNotEquals(
                BUILD.unit().network().part("regulator").orElseThrow().part(),
                faulty.get(0).network().part("regulator").orElseThrow().part());
    }

    @Test
    void eachFaultIsLaidOverTheSoundBuildOfItsOwn() {
        List<Transmission> faulty =
                faults("spring-weak@regulator:20%", "spring-weak@regulator:40%").each(BUILD);
        assertEquals(2, faulty.size());
        assertEquals(
                faults("spring-weak@regulator:40%").each(BUILD).get(0).network().part("regulator"),
                faulty.get(1).network().part("regulator"));
    }

    @Test
    void aKindThatIsNoneIsRefusedWithTheNearest() {
        String wrong = refused("spring-week@regulator:20%");
        assertTrue(wrong.contains("there is no fault spring-week") && wrong.contains("spring-weak"), wrong);
    }

    @Test
    void aPartThatCannotHaveTheFaultIsRefused() {
        String wrong = refused("spring-weak@regulater:20%");
        assertTrue(wrong.startsWith("hotidle: --fault spring-weak@regulater:20%"), wrong);
        assertTrue(wrong.contains("regulator"), wrong);
    }

    @Test
    void aSizeThatIsNoneIsRefused() {
        for (String size : List.of("twenty", "20psi", "-20%", "900%")) {
            String wrong = refused("spring-weak@regulator:" + size);
            assertTrue(wrong.startsWith("hotidle: --fault spring-weak@regulator:" + size), wrong);
            assertTrue(wrong.contains("mend: "), wrong);
        }
    }

    @Test
    void aWordThatIsNoFaultAtAllIsRefusedWithAnExample() {
        assertTrue(refused(":20%").contains("write KIND@PART:SIZE"));
        assertTrue(refused("@regulator").contains("write KIND@PART:SIZE"));
    }

    @Test
    void faultsAreKeptAsTheyWereWritten() {
        assertEquals(List.of("oil-aerated:8%"), faults("oil-aerated:8%").written());
        assertTrue(faults("oil-aerated:8%").given());
    }
}

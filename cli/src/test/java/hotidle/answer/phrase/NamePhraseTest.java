package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.fault.FaultKind;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is said of names that a circuit's file gives. */
class NamePhraseTest {

    @Test
    void circuitsInWhichANameStandsForTheSameAreToldTogether() {
        Map<String, String> is = new LinkedHashMap<>();
        is.put("one", NamePhrase.part("passage", "to the cooler"));
        is.put("two", NamePhrase.PORT);
        is.put("three", NamePhrase.part("passage", "to the cooler"));
        assertEquals("""
                'cooler' is a name that a circuit's file gives:
                  one, three: a part of the kind passage: to the cooler
                  two: a place at which a gauge can be fitted
                """, NamePhrase.said("cooler", is));
    }

    @Test
    void whatAFileDoesNotSayIsLeftOut() {
        assertEquals("a build", NamePhrase.build(""));
        assertEquals("a build: as new", NamePhrase.build("as new"));
        assertEquals("a part of the kind orifice", NamePhrase.part("orifice", ""));
        assertEquals(
                "the size 'bore' of r, a part of the kind spool-valve", NamePhrase.size("bore", "r", "spool-valve"));
    }

    @Test
    void aFaultIsToldWithTheOptionThatTakesItAndAUnitWithWhatItMeasures() {
        FaultKind kind = FaultKind.SPRING_WEAK;
        assertEquals(
                kind.word() + "@pump: a fault that may be laid over a build, as --fault " + kind.word()
                        + "@PART takes it seen in: gauge, list faults",
                NamePhrase.fault(kind.word() + "@pump", kind)
                        .replaceAll("\\s+", " ")
                        .strip());
        assertEquals(
                "psi: a unit in which a pressure is given\nseen in: list units\n",
                NamePhrase.unit("psi", "a pressure"));
    }
}

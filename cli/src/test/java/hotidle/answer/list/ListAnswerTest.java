package hotidle.answer.list;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.kind.Kinds;
import hotidle.fault.UnitFaults;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ListAnswerTest {

    private static DescribedCircuit rig() {
        return CircuitReader.read(Library.text("training-rig").orElseThrow(), "training-rig.yaml")
                .circuit()
                .orElseThrow();
    }

    @Test
    void aCircuitIsListedWithItsBuildsDutyPointsAndOils() {
        DescribedCircuit rig = rig();
        List<String> said = new ListAnswer(Set.of(ListAnswer.Listing.CIRCUITS), List.of(), List.of(rig))
                .full()
                .lines()
                .toList();
        assertEquals("circuits", said.get(0));
        assertEquals("  training-rig: " + rig.about(), said.get(1));
        assertEquals(
                rig.builds().size(),
                said.stream().filter(line -> line.startsWith("    build ")).count());
        assertTrue(said.contains("    oils: " + String.join(", ", rig.oils())), said.toString());
        assertTrue(said.stream().anyMatch(line -> line.startsWith("    driving conditions: ")), said.toString());
    }

    @Test
    void everyKindOfPartIsListedOnALineOfItsOwn() {
        String said = new ListAnswer(Set.of(ListAnswer.Listing.PARTS), List.of(), List.of()).full();
        assertEquals(1 + Kinds.ALL.size(), said.lines().count());
        Kinds.ALL.forEach(kind -> assertTrue(said.contains("\n  " + kind.word() + ": " + kind.about() + "\n")));
    }

    @Test
    void aPressureMayBeWrittenInAnyUnitThatIsListed() {
        String said = new ListAnswer(Set.of(ListAnswer.Listing.UNITS), List.of(), List.of()).full();
        assertTrue(said.startsWith("units\n"), said);
        assertTrue(said.lines().anyMatch(line -> line.startsWith("  pressure: ") && line.contains("psi")), said);
    }

    @Test
    void theFaultsOfACircuitNameThePartsThatTheyCanBeAt() {
        String said = new FaultListing(
                        "training-rig",
                        UnitFaults.of(rig().adjustables().values().iterator().next()))
                .text();
        assertTrue(said.startsWith("training-rig: faults, for --fault KIND@PART[:SIZE]"), said);
        assertTrue(said.contains("\n  pump-slipping@ pump; for example pump-slipping@pump:250%\n"), said);
        assertTrue(said.contains("\n  oil-aerated, of the whole unit; for example oil-aerated:15%\n"), said);
        assertTrue(!said.contains("solenoid-stuck"), "the rig has no solenoid: " + said);
    }

    @Test
    void kindsAndUnitsStandApart() {
        String said =
                new ListAnswer(Set.of(ListAnswer.Listing.PARTS, ListAnswer.Listing.UNITS), List.of(), List.of()).full();
        assertTrue(said.contains("\n\nunits\n"), said);
    }
}

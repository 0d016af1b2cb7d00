package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.part.PartState;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.single.OnePart;
import hotidle.circuits.single.ReadPart;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** At which pressures a part on its own is solved. */
class PartPressuresTest {

    private static final LibraryMaterials STOCK = LibraryMaterials.ofLibrary();
    private static final List<String> GAP = List.of("bore=14.06mm", "valve=14mm", "length=8mm");

    private static OnePart part(String kind, List<String> keys) {
        return OnePart.read(kind, keys, STOCK).part().orElseThrow();
    }

    private static Map<String, Double> pressures(String... words) {
        return PartPressures.of(Options.of(new PartOptions(), words), part("annular-gap", GAP));
    }

    private static String refused(String... words) {
        return assertThrows(WrongInputException.class, () -> pressures(words)).getMessage();
    }

    private static PartState solved(String... words) {
        return new PartRun(Kinds.of("annular-gap").orElseThrow(), STOCK).of(GAP, Options.of(new PartOptions(), words));
    }

    @Test
    void aDropLiesBetweenTheTwoPortsTheLowerOneAtNothing() {
        assertEquals(Map.of("from", 10e5, "to", 0.0), pressures("--drop", "10bar"));
        assertEquals(Map.of("from", 0.0, "to", 10e5), pressures("--drop", "-10bar"));
    }

    @Test
    void aDropStandsOnThePressureBehindThePart() {
        assertEquals(Map.of("from", 12e5, "to", 2e5), pressures("--drop", "10bar", "--at", "to=2bar"));
    }

    @Test
    void aPortThatIsNotNamedStandsAtNothing() {
        assertEquals(Map.of("from", 5e5, "to", 0.0), pressures("--at", "from=5bar"));
    }

    @Test
    void aDropAndThePressureInFrontSayTheSameTwice() {
        assertTrue(refused("--drop", "10bar", "--at", "from=5bar").contains("leave out one of --drop and --at from"));
        assertTrue(refused("--at", "from=5bar", "--at", "from=6bar").contains("gives port from twice"));
    }

    @Test
    void noPressureLiesBelowVacuumOrBeyondThatOfAFile() {
        assertTrue(refused("--drop", "-3bar", "--at", "to=1bar").contains("below vacuum\nmend: raise --at to"));
        assertTrue(refused("--at", "from=501bar").contains("allowed: -1 bar to 500 bar"));
        assertTrue(refused("--drop", "501bar").contains("500 bar either way"));
    }

    @Test
    void aPortThatThePartDoesNotHaveIsRefused() {
        String wrong = refused("--at", "form=5bar");
        assertTrue(wrong.contains("an annular-gap has no port 'form'") && wrong.contains("from"), wrong);
        assertTrue(refused("--at", "5bar").contains("is no name with its value"));
    }

    @Test
    void withoutAPressureNothingFlowsAndThatIsSaid() {
        assertTrue(refused().contains("no pressure is given\nmend: --drop 150psi, or --at from=150psi"));
    }

    @Test
    void aPumpRaisesItsPressureAndHasNoDrop() {
        OnePart pump = part(
                "pump-chamber",
                List.of(
                        "displacement=15cm3/rev",
                        "slip-flow=4L/min",
                        "slip-pressure=100psi",
                        "slip-viscosity=7mPa.s",
                        "width=12mm",
                        "tip-diameter=40mm",
                        "speed=1000rpm"));
        PartOptions drop = Options.of(new PartOptions(), "--drop", "10bar");
        String wrong = assertThrows(WrongInputException.class, () -> PartPressures.of(drop, pump))
                .getMessage();
        assertTrue(wrong.contains("a pump raises the pressure: write --at to=10bar instead of --drop"), wrong);
    }

    @Test
    void theLeakGrowsWithTheDropAndTurnsWithIt() {
        double once = flow(solved("--drop", "5bar"));
        double twice = flow(solved("--drop", "10bar"));
        assertTrue(twice > 1.5 * once && twice < 2.1 * once, once + " and " + twice + " m3/s");
        assertEquals(-twice, flow(solved("--drop", "-10bar")), 0.02 * twice);
        assertEquals(0, flow(solved("--drop", "0bar")), 1e-15);
    }

    private static double flow(PartState state) {
        return state.flow().orElseThrow().net().orElseThrow();
    }

    @Test
    void hotOilLeaksMore() {
        assertTrue(flow(solved("--drop", "5bar", "--temperature", "120degC"))
                > 2 * flow(solved("--drop", "5bar", "--temperature", "60degC")));
    }

    @Test
    void aPartThatFindsNothingForItselfHoldsNothing() {
        assertTrue(assertThrows(WrongInputException.class, () -> solved("--drop", "5bar", "--hold", "position=1mm"))
                .getMessage()
                .contains("an annular-gap has nothing that --hold could hold"));
    }

    @Test
    void whatASpoolStandsAtIsHeldWithinItsStops() {
        List<String> keys = List.of(
                "bore=16.02mm",
                "valve=16mm",
                "openings.out.from=supply",
                "openings.out.to=outlet",
                "openings.out.edge=1mm",
                "areas.line.node=supply",
                "areas.line.area=200mm2",
                "areas.line.acts=open",
                "spring-rate=8N/mm",
                "preload=100N",
                "stops=[0 mm, 4 mm]");
        ReadPart read = OnePart.read("spool-valve", keys, STOCK);
        assertFalse(read.part().isEmpty(), read.problems().toString());
        PartOptions beyond = Options.of(new PartOptions(), "--hold", "position=9mm");
        String wrong = assertThrows(
                        WrongInputException.class,
                        () -> PartHolds.of(beyond, read.part().orElseThrow()))
                .getMessage();
        assertTrue(wrong.contains("position lies between 0 and 4 mm"), wrong);
        PartOptions within = Options.of(new PartOptions(), "--hold", "position=2mm");
        assertEquals(2e-3, PartHolds.of(within, read.part().orElseThrow()).get("position"), 1e-12);
        PartOptions slip = Options.of(new PartOptions(), "--hold", "postion=2mm");
        assertTrue(assertThrows(
                        WrongInputException.class,
                        () -> PartHolds.of(slip, read.part().orElseThrow()))
                .getMessage()
                .contains("has no postion"));
    }
}

package hotidle.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.newton.SteadySolver;
import hotidle.part.OwnState;
import hotidle.part.Solenoid;
import hotidle.result.Solution;
import hotidle.study.gauge.Tapped;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A fault of a size makes the unit that has it, and nothing else of the unit changes. */
class UnitFaultsTest {

    private static final Adjustable BUILD = Tapped.build();
    private static final List<UnitFault> ALL = UnitFaults.of(BUILD);

    private static UnitFault fault(String name) {
        return ALL.stream().filter(one -> one.name().equals(name)).findFirst().orElseThrow();
    }

    private static Solution idle(Transmission unit) {
        DutyPoint duty = unit.duties().get(0);
        return new SteadySolver(unit.network())
                .solve(unit.conditions(duty))
                .state()
                .orElseThrow();
    }

    private static Solution idle(String fault, double size) {
        return idle(fault(fault).in(BUILD, size).orElseThrow());
    }

    @Test
    void everyPartHasTheFaultsOfItsKind() {
        List<String> names = ALL.stream().map(UnitFault::name).toList();
        assertTrue(
                names.containsAll(List.of(
                        "bore-worn@bores",
                        "face-worn@hub-face",
                        "pump-slipping@primary",
                        "check-ball-missing@check",
                        "valve-stuck@regulator",
                        "spring-weak@regulator",
                        "spring-weak@relief",
                        "filter-blocked@filter",
                        "cooler-blocked@cooler",
                        "orifice-wrong@converter-out",
                        "solenoid-stuck@solenoid",
                        "oil-aerated")),
                names.toString());
    }

    @Test
    void sizesAndTheirWayAreEachOthersInverse() {
        for (UnitFault one : ALL) {
            for (double way : new double[] {0.1, 0.5, 0.9}) {
                if (one.most() > one.least()) {
                    assertEquals(way, one.wayTo(one.sizeAt(way)), 1e-9, one.name());
                }
            }
        }
    }

    @Test
    void everyFaultOfMiddlingSizeMakesAUnitWithASteadyState() {
        for (UnitFault one : ALL) {
            Optional<Transmission> unit = one.in(BUILD, one.sizeAt(0.5));
            assertTrue(unit.isPresent(), one.name());
            assertTrue(
                    new SteadySolver(unit.get().network())
                            .solve(unit.get().conditions(unit.get().duties().get(0)))
                            .state()
                            .isPresent(),
                    one.name());
        }
    }

    @Test
    void aWeakSpringLowersTheLineAndAStuckSolenoidRaisesIt() {
        double sound = idle(BUILD.unit()).pressure("line");
        assertTrue(idle("spring-weak@regulator", 0.5).pressure("line") < 0.9 * sound);
        assertTrue(idle("solenoid-stuck@solenoid", 1).pressure("pilot")
                > 1.1 * idle(BUILD.unit()).pressure("pilot"));
        assertEquals(0.3, idle("solenoid-stuck@solenoid", 0.3).own("solenoid", Solenoid.OPENING), 1e-12);
        assertEquals(1e-3, idle("valve-stuck@regulator", 1e-3).own("regulator", OwnState.POSITION), 1e-12);
    }

    @Test
    void aMissingCheckBallLetsOilBackIntoTheSecondChamber() {
        Solution state = idle("check-ball-missing@check", 1);
        assertEquals(state.pressure("line"), state.pressure("secondary-out"), 0.02 * state.pressure("line"));
    }

    @Test
    void blockedPartsPassLessAndAirTakesTheirPlace() {
        double cooler = idle(BUILD.unit()).flow("cooler");
        assertTrue(idle("cooler-blocked@cooler", 0.9).flow("cooler") < 0.7 * cooler);
        assertTrue(idle("orifice-wrong@converter-out", 1.5e-3).flow("cooler") < 0.7 * cooler);
        assertTrue(idle("filter-blocked@filter", 0.98).pressure("suction")
                < idle(BUILD.unit()).pressure("suction"));
        assertEquals(
                0.2, fault("oil-aerated").in(BUILD, 0.2).orElseThrow().oil().airFraction(), 1e-12);
        assertTrue(idle("spring-weak@relief", 0.9).flow("relief")
                > idle(BUILD.unit()).flow("relief"));
    }

    @Test
    void wearIsCountedInWearAllowancesBeyondTheBuild() {
        UnitFault bore = fault("bore-worn@bores");
        var size = bore.wears().get(0);
        assertEquals(size.limit().orElseThrow(), bore.worn(size, 1), 1e-12);
        assertTrue(idle("bore-worn@bores", 3).flow("bores")
                > 2 * idle(BUILD.unit()).flow("bores"));
    }

    @Test
    void faultsAreLaidOneOverTheOther() {
        Transmission both = UnitFault.in(
                        BUILD,
                        List.of(
                                fault("solenoid-stuck@solenoid").of(0.5),
                                fault("cooler-blocked@cooler").of(0.9),
                                fault("bore-worn@bores").of(1)))
                .orElseThrow();
        assertTrue(((Solenoid) both.network().part("solenoid").orElseThrow().part())
                .stuck()
                .isPresent());
        assertTrue(idle(both).flow("cooler") < 0.7 * idle(BUILD.unit()).flow("cooler"));
    }

    @Test
    void aSizeThatCannotBeMadeMakesNoUnit() {
        assertEquals(Optional.empty(), fault("orifice-wrong@converter-out").in(BUILD, -1e-3));
    }

    @Test
    void kindsAreFoundByTheirWord() {
        for (FaultKind kind : FaultKind.values()) {
            assertEquals(Optional.of(kind), FaultKind.of(kind.word()));
            assertTrue(!kind.about().isEmpty());
        }
        assertEquals(Optional.empty(), FaultKind.of("gremlins"));
    }
}

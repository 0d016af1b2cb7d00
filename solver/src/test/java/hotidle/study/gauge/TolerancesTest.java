package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.network.Network;
import hotidle.part.Part;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** What is not known of a part that has a fault counts as it does in that part. */
class TolerancesTest {

    private static final Adjustable BUILD = Tapped.build();
    private static final Tolerances TOLERANCES = Tolerances.of(BUILD);
    private static final List<Tolerances.Shift> SOUND = TOLERANCES.shifts();

    private static UnitFault.Sized fault(String name, double size) {
        return UnitFaults.of(BUILD).stream()
                .filter(fault -> fault.name().equals(name))
                .findFirst()
                .orElseThrow()
                .of(size);
    }

    private static Tolerances.Shift shift(List<Tolerances.Shift> shifts, String name) {
        return shifts.stream()
                .filter(shift -> shift.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Part part(Network network, String name) {
        return network.part(name).orElseThrow().part();
    }

    @Test
    void aWornBoreIsUncertainAboutItsWornSize() {
        WearSize bore = BUILD.dimension("bores.bore").orElseThrow();
        double deviation = TOLERANCES.sizes().get("bores.bore");
        Tolerances.Shift worn = shift(TOLERANCES.shifts(SOUND, List.of(fault("bore-worn@bores", 3))), "bores.bore");
        double more = 3 * bore.allowance();
        assertEquals(
                part(
                        BUILD.with(bore, bore.value() + more + deviation / 2)
                                .orElseThrow()
                                .network(),
                        "bores"),
                part(worn.up(), "bores"));
        assertEquals(
                part(
                        BUILD.with(bore, bore.value() + more - deviation / 2)
                                .orElseThrow()
                                .network(),
                        "bores"),
                part(worn.down(), "bores"));
    }

    @Test
    void allOtherPartsAreAsUncertainAsBefore() {
        List<Tolerances.Shift> worn = TOLERANCES.shifts(SOUND, List.of(fault("bore-worn@bores", 3)));
        assertEquals(SOUND.size(), worn.size());
        for (int i = 0; i < worn.size(); i++) {
            if (!SOUND.get(i).part().equals("bores")) {
                assertSame(SOUND.get(i), worn.get(i), SOUND.get(i).name());
            }
        }
        assertSame(SOUND, TOLERANCES.shifts(SOUND, List.of(fault("oil-aerated", 0.1))));
    }

    @Test
    void theSpringOfASpoolThatIsStuckMovesNothing() {
        Tolerances.Shift free = shift(SOUND, "regulator spring");
        assertNotEquals(part(free.up(), "regulator"), part(free.down(), "regulator"));
        UnitFault.Sized stuck = fault("valve-stuck@regulator", 1e-3);
        RealMatrix held = covariance(List.of(stuck));
        RealMatrix without = covariance(
                List.of(stuck),
                SOUND.stream()
                        .filter(shift -> !shift.name().equals("regulator spring"))
                        .toList());
        assertEquals(held.getEntry(0, 0), without.getEntry(0, 0), 1e-9 * held.getEntry(0, 0));
        assertTrue(covariance(List.of()).getEntry(0, 0)
                > 1.05
                        * covariance(
                                        List.of(),
                                        SOUND.stream()
                                                .filter(shift -> !shift.name().equals("regulator spring"))
                                                .toList())
                                .getEntry(0, 0));
    }

    /** A bore that is torn open: its tolerance moves the line by more than that of a sound one. */
    @Test
    void theToleranceOfATornBoreMovesTheLineAsTwoNewSolvesDo() {
        List<Tolerances.Shift> bore = List.of(shift(SOUND, "bores.bore"));
        UnitFault.Sized torn = fault("bore-worn@bores", 4);
        double with = covariance(List.of(torn), bore).getEntry(0, 0);
        double without = covariance(List.of(torn), List.of()).getEntry(0, 0);
        WearSize size = BUILD.dimension("bores.bore").orElseThrow();
        double half = TOLERANCES.sizes().get("bores.bore") / 2 / size.allowance();
        double up = line(fault("bore-worn@bores", 4 + half));
        double down = line(fault("bore-worn@bores", 4 - half));
        assertEquals(Math.abs(up - down), Math.sqrt(with - without), 0.03 * Math.abs(up - down));
    }

    private static double line(UnitFault.Sized fault) {
        return Tapped.solved(UnitFault.in(BUILD, List.of(fault)).orElseThrow(), Tapped.at(650))
                .pressure("line");
    }

    private static RealMatrix covariance(List<UnitFault.Sized> faults) {
        return covariance(faults, SOUND);
    }

    /** Of the line at idle and what else is read. */
    private static RealMatrix covariance(List<UnitFault.Sized> faults, List<Tolerances.Shift> shifts) {
        List<GaugeReading.Row> rows =
                Tapped.readings(BUILD.unit()).stream().map(GaugeReading::row).toList();
        GaugeModel model = new GaugeModel(TOLERANCES, shifts, rows);
        Optional<Expectation> expected =
                model.along(model.series(), List.of(faults)).get(0);
        return expected.orElseThrow().covariance();
    }
}

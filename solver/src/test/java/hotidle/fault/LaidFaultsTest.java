package hotidle.fault;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.part.SpoolValve;
import hotidle.study.gauge.Tapped;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Faults lie over a build, whatever is changed of it beneath them. */
class LaidFaultsTest {

    private static final Adjustable BUILD = Tapped.build();
    private static final double SET = 200 * SetPressure.PSI;

    private static LaidFaults of(String name, double size) {
        return new LaidFaults(List.of(UnitFaults.of(BUILD).stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow()
                .of(size)));
    }

    private static double preload(Transmission unit) {
        return ((SpoolValve) unit.network().part("regulator").orElseThrow().part())
                .spring()
                .preload();
    }

    /** A shop sets the spring of a sound unit; when it weakens afterwards, nobody is there to set it again. */
    @Test
    void noSpringIsSetToMakeUpForAWeakOne() {
        for (SetPressure.By by : SetPressure.By.values()) {
            Adjustable sound = BUILD.setTo(SET, by);
            Adjustable weak = of("spring-weak@regulator", 0.2).over(BUILD).setTo(SET, by);
            assertEquals(0.8 * preload(sound.unit()), preload(weak.unit()), 1e-9, by.name());
            assertEquals(0.8 * preload(sound.unit()), preload(weak.remake().with(Map.of())), 1e-6, by.name());
        }
    }

    @Test
    void aWornSizeCountsFromItsWornValueAndIsNewWhereItIsBroughtBack() {
        WearSize before = BUILD.dimension("bores.bore").orElseThrow();
        Adjustable worn = of("bore-worn@bores", 1).over(BUILD);
        WearSize after = worn.dimension("bores.bore").orElseThrow();
        assertEquals(before.value() + before.allowance(), after.value(), 1e-15);
        assertTrue(after.worn());
        assertEquals(
                BUILD.with(Map.of("bores.bore", before.fresh())).orElseThrow().network(),
                worn.with(Map.of("bores.bore", before.fresh())).orElseThrow().network());
    }

    @Test
    void whatElseCanBeChangedStaysSo() {
        Adjustable weak = of("spring-weak@regulator", 0.2).over(BUILD);
        assertEquals(BUILD.remake().others(), weak.remake().others());
        assertEquals(
                BUILD.remake().others(),
                weak.setTo(SET, SetPressure.By.SPRING).remake().others());
        assertEquals(BUILD.dimensions(), weak.dimensions());
    }

    @Test
    void noFaultsAreTheBuildItself() {
        assertEquals(BUILD.unit(), new LaidFaults(List.of()).over(BUILD).unit());
    }

    @Test
    void aFixedUnitHasNoSizeToChange() {
        Adjustable fixed = Adjustable.fixed(BUILD.unit());
        assertEquals(BUILD.unit(), fixed.remake().with(Map.of()));
        assertThrows(IllegalArgumentException.class, () -> fixed.remake().with(Map.of("bores.bore", 1e-2)));
    }
}

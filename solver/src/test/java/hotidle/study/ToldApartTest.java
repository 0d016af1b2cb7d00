package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.study.gauge.Tapped;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Units of the ten nodes told apart by their gauges. */
class ToldApartTest {

    private static final Adjustable BUILD = Tapped.build();
    private static final List<Double> SPEEDS = List.of(650 / 60.0, 1000 / 60.0, 1500 / 60.0);

    private static Transmission with(String fault, double size) {
        UnitFault found = UnitFaults.of(BUILD).stream()
                .filter(one -> one.name().equals(fault))
                .findFirst()
                .orElseThrow();
        return found.in(BUILD, size).orElseThrow();
    }

    @Test
    void aWeakSpringIsToldFromASoundUnitInTheFirstRangeAlready() {
        ToldApart apart = ToldApart.of(List.of(BUILD.unit(), with("spring-weak@regulator", 0.5)), SPEEDS, 3);
        assertEquals(List.of(), apart.alike());
        assertEquals(1, apart.sweeps().size());
    }

    @Test
    void aSpringALittleWeakerIsNotToldFromASoundOneInAnyRange() {
        ToldApart apart = ToldApart.of(
                List.of(BUILD.unit(), with("spring-weak@regulator", 1e-4), with("spring-weak@regulator", 0.5)),
                SPEEDS,
                3);
        assertEquals(List.of(new ToldApart.AlikePair(0, 1)), apart.alike());
    }

    @Test
    void whatTellsMostStandsFirstAndEachGaugeOnce() {
        ToldApart apart = ToldApart.of(List.of(with("spring-weak@regulator", 0.5)), SPEEDS, 1);
        List<TellingReading> tells =
                TellingReading.of(apart.sweeps().get(0), apart.also(BUILD.unit(), SPEEDS), List.of(0, 2));
        assertTrue(tells.get(0).value() < tells.get(0).other());
        for (int i = 1; i < tells.size(); i++) {
            assertTrue(tells.get(i - 1).off() >= tells.get(i).off());
            assertTrue(tells.get(i).off() > TellingReading.APART);
        }
        assertEquals(
                tells.size(), tells.stream().map(TellingReading::tap).distinct().count());
        assertTrue(tells.stream().noneMatch(reading -> reading.speed() == SPEEDS.get(1)));
    }

    @Test
    void readingsNearerThanThreeHundredthsOrTwoGaugesAreNotToldApart() {
        double psi = SetPressure.PSI;
        assertTrue(TellingReading.apart(100 * psi, 104 * psi));
        assertFalse(TellingReading.apart(100 * psi, 102.5 * psi), "less than 3 %");
        assertFalse(TellingReading.apart(10 * psi, 11.9 * psi), "less than two gauges are off");
        assertTrue(TellingReading.apart(10 * psi, 12.1 * psi));
    }
}

package hotidle.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.oil.Oil;
import hotidle.oil.OilAt;
import org.junit.jupiter.api.Test;

class EnthalpyTest {

    private static final Oil OIL = new Oil("thin", Oil.Walther.constant(20e-6), 860, 0.65, 0, 0, 0);
    private static final double WARM = 360;

    /** dT = dp·(1 − β·T)/(ρ·cp): about three quarters of what friction alone would give. */
    @Test
    void throttledOilWarmsByFrictionLessExpansion() {
        double drop = 20e5;
        Enthalpy enthalpy = new Enthalpy(OIL, WARM);
        double behind = enthalpy.temperature(enthalpy.at(WARM, drop), 0);
        double density = OIL.density(WARM);
        double friction =
                drop / (density * OIL.at(WARM, OilAt.STANDARD_ATMOSPHERE).specificHeat());
        assertEquals(friction * (1 - 0.65 / density * WARM), behind - WARM, 0.002);
    }

    @Test
    void temperatureAndEnthalpyAreInverse() {
        Enthalpy enthalpy = new Enthalpy(OIL, WARM);
        for (double temperature = 250; temperature < 480; temperature += 23) {
            assertEquals(temperature, enthalpy.temperature(enthalpy.at(temperature, 15e5), 15e5), 1e-9);
        }
    }

    /** Integral of 1685 + 3.4·t over √s, s falling by 0.65 kg/m³ each kelvin, in a thousand steps. */
    @Test
    void theHeatOfWarmOilIsTheSumOfItsSpecificHeat() {
        Enthalpy enthalpy = new Enthalpy(OIL, 300);
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            sum += 0.12
                    * OIL.at(300 + 0.12 * (i + 0.5), OilAt.STANDARD_ATMOSPHERE).specificHeat();
        }
        assertEquals(sum, enthalpy.at(420, 0), 1e-6 * sum);
    }
}

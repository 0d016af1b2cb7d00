package hotidle.heat;

import hotidle.oil.Oil;
import hotidle.oil.OilAt;

/**
 * Specific enthalpy of an oil, counted from one temperature at ambient pressure.
 *
 * <pre>
 * Formula   h = ∫cp dT + (p/ρ)·(1 − β·T), β = −(dρ/dT)/ρ, at moderate pressure. Throttled oil keeps h, so it warms by
 *           Δp·(1 − β·T)/(ρ·cp): friction less expansion
 * Source    F. P. Incropera et al., Fundamentals of Heat and Mass Transfer; any book of thermodynamics, dh = cp·dT + v·(1 − β·T)·dp
 *           (from memory)
 * Numerics  ∫cp dT by Gauss-Legendre with three points, exact for a polynomial of the fifth degree
 * </pre>
 *
 * @param oil       the oil, without air
 * @param reference temperature at which h is nil [K]
 */
record Enthalpy(Oil oil, double reference) {

    private static final double NODE = Math.sqrt(0.6) / 2;

    /** h [J/kg] at a temperature [K] and a gauge pressure [Pa]. */
    double at(double temperature, double pressure) {
        return warmth(temperature) + pressure * pressed(temperature);
    }

    /** Temperature [K] of oil of an enthalpy [J/kg] at a gauge pressure [Pa]. */
    double temperature(double enthalpy, double pressure) {
        double temperature = reference;
        for (int i = 0; i < 30; i++) {
            double step = (enthalpy - at(temperature, pressure)) / specificHeat(temperature);
            temperature += step;
            if (Math.abs(step) < 1e-11 * temperature) {
                break;
            }
        }
        return temperature;
    }

    /** cp [J/(kg·K)] at a temperature [K]. */
    double specificHeat(double temperature) {
        return oil.at(temperature, OilAt.STANDARD_ATMOSPHERE).specificHeat();
    }

    private double warmth(double temperature) {
        double span = temperature - reference;
        double middle = (temperature + reference) / 2;
        return span
                / 18
                * (5 * specificHeat(middle - NODE * span)
                        + 8 * specificHeat(middle)
                        + 5 * specificHeat(middle + NODE * span));
    }

    private double pressed(double temperature) {
        double density = oil.density(temperature);
        return (1 - oil.densitySlope() / density * temperature) / density;
    }
}

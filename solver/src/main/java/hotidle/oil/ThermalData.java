package hotidle.oil;

import java.util.OptionalDouble;

/**
 * What a data sheet says of an oil's specific heat and thermal conductivity; what it does not say follows from the density.
 *
 * <pre>
 * Left out  c = (1.685 + 0.0034·t)/√s kJ/(kg·K), k = 0.1172·(1 − 0.00054·t)/s W/(m·K), t in °C, s the density over 1000 kg/m³;
 *           C. S. Cragoe, Thermal Properties of Petroleum Products, NBS Misc. Pub. 97, 1929 (from memory): within 4 and 10 % of most
 *           petroleum oils from −18 to 200 °C. The source takes s at 15.6 °C, we at t: 3 % more at 100 °C
 * Given     at 40 °C, and changing with t as those do at constant s
 * </pre>
 *
 * @param specificHeat at 40 °C [J/(kg·K)]
 * @param conductivity at 40 °C [W/(m·K)]
 */
public record ThermalData(OptionalDouble specificHeat, OptionalDouble conductivity) {

    /** Nothing is known but the density. */
    public static final ThermalData BY_DENSITY = new ThermalData(OptionalDouble.empty(), OptionalDouble.empty());

    private static final double GIVEN_AT = 40;

    public ThermalData {
        within("specific heat", specificHeat, 500, 10_000);
        within("thermal conductivity", conductivity, 0.01, 10);
    }

    private static void within(String what, OptionalDouble value, double low, double high) {
        if (value.isPresent() && !(value.getAsDouble() >= low && value.getAsDouble() <= high)) {
            throw new IllegalArgumentException(
                    what + " is " + value.getAsDouble() + ", allowed is " + low + " to " + high);
        }
    }

    /**
     * Specific heat [J/(kg·K)].
     *
     * @param temperature [K]
     * @param density     there [kg/m³]
     */
    public double specificHeat(double temperature, double density) {
        double shape = heatShape(temperature - Oil.ZERO_CELSIUS);
        return specificHeat.isPresent()
                ? specificHeat.getAsDouble() * shape / heatShape(GIVEN_AT)
                : shape / Math.sqrt(density / 1000);
    }

    /**
     * Thermal conductivity [W/(m·K)].
     *
     * @param temperature [K]
     * @param density     there [kg/m³]
     */
    public double conductivity(double temperature, double density) {
        double shape = conductivityShape(temperature - Oil.ZERO_CELSIUS);
        return conductivity.isPresent()
                ? conductivity.getAsDouble() * shape / conductivityShape(GIVEN_AT)
                : shape / (density / 1000);
    }

    private static double heatShape(double celsius) {
        return 1685 + 3.4 * celsius;
    }

    private static double conductivityShape(double celsius) {
        return 0.1172 * (1 - 0.00054 * celsius);
    }
}

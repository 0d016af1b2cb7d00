package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.OptionalDouble;

/** An oil, by what a user knows it again. */
public final class OilPhrase {

    private OilPhrase() {}

    /**
     * An oil whose viscosity was measured twice.
     *
     * @param coldest temperature of the one measurement [K]
     * @param hottest of the other [K]
     * @param index   viscosity index, where it has one
     */
    public static String measured(
            String name, double coldest, double hottest, OptionalDouble index, Quantity.UnitSystem units) {
        return "oil " + name + ": viscosity measured at " + Quantity.TEMPERATURE.with(units, coldest) + " and "
                + Quantity.TEMPERATURE.with(units, hottest) + index(index);
    }

    /** An oil that keeps its viscosity. */
    public static String constant(String name, OptionalDouble index) {
        return "oil " + name + ": one viscosity at every temperature" + index(index);
    }

    private static String index(OptionalDouble index) {
        return index.isPresent() ? ", viscosity index " + Math.round(index.getAsDouble()) + " (ASTM D2270)" : "";
    }

    /** Name and temperature [K], and what of both was left to the program. */
    public static String asUsed(
            String name,
            double temperature,
            boolean oilByDefault,
            boolean temperatureByDefault,
            Quantity.UnitSystem units) {
        String said = name + " at " + Quantity.TEMPERATURE.with(units, temperature);
        if (oilByDefault && temperatureByDefault) {
            return said + " (oil and temperature by default)";
        }
        return oilByDefault
                ? said + " (oil by default)"
                : temperatureByDefault ? said + " (temperature by default)" : said;
    }
}

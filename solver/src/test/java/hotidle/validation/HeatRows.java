package hotidle.validation;

import static hotidle.validation.Trade.GALLON_A_MINUTE;
import static hotidle.validation.Trade.MINUTE;
import static hotidle.validation.Trade.PSI;

import hotidle.heat.WarmedOil;
import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.oil.ThermalData;
import java.util.List;
import java.util.OptionalDouble;

/** Heat of throttling and mixing. */
final class HeatRows {

    private static final String PART = "Heat";
    private static final double POUND_MASS = 0.45359237;
    private static final double RANKINE = 1 / 1.8;

    private HeatRows() {}

    static List<Row> rows() {
        return List.of(
                Row.of(
                        PART,
                        "oil behind a relief valve, friction alone",
                        "1000 psi, 120 °F, 0.42 Btu/(lb·°F), 7.42 lb/gal",
                        "127.9",
                        "°F",
                        fahrenheit(WarmedOil.throttled(american(0), kelvin(120), 1000 * PSI)),
                        Sources.ESPOSITO.at("ex. 11-2")),
                Row.of(
                                PART,
                                "oil behind a relief valve, less what it expands",
                                "1000 psi, 120 °F, 0.42 Btu/(lb·°F), 7.42 lb/gal; 0.65 kg/(m³·K)",
                                "127.9",
                                "°F",
                                fahrenheit(WarmedOil.throttled(american(0.65), kelvin(120), 1000 * PSI)),
                                Sources.ESPOSITO.at("ex. 11-2"))
                        .disagreeing(2, "the book counts friction alone; what the oil expands takes 23 % of it back"),
                Row.of(
                                PART,
                                "oil behind a relief valve, friction alone",
                                "70 bar, 50 °C, 1.8 kJ/(kg·K), 895 kg/m³",
                                "54.3",
                                "°C",
                                WarmedOil.throttled(metric(), 50 + Oil.ZERO_CELSIUS, 70e5) - Oil.ZERO_CELSIUS,
                                Sources.ESPOSITO.at("ex. 11-3"))
                        .within(0.06, "the specific heat is the book's at all temperatures, ours rises with it"),
                Row.of(
                        PART,
                        "enthalpy where two streams mix",
                        "2 lb at 107.99 Btu/lb, 1 lb at 18.07",
                        "78.02",
                        "Btu/lb",
                        WarmedOil.mixed(2, 107.99, 1, 18.07),
                        Source.memory(
                                "Y. A. Çengel, M. A. Boles, Thermodynamics, hot and cold water in a shower, chapter 5")));
    }

    private static Oil american(double slope) {
        double density = 7.42 * POUND_MASS / (GALLON_A_MINUTE * MINUTE);
        double heat = 0.42 * 1055.056 / (POUND_MASS * RANKINE);
        return oil(density, slope, heat, kelvin(120));
    }

    private static Oil metric() {
        return oil(895, 0, 1800, 50 + Oil.ZERO_CELSIUS);
    }

    /** An oil of a density and a specific heat at a temperature [K]. */
    private static Oil oil(double density, double slope, double heat, double there) {
        double celsius = there - Oil.ZERO_CELSIUS;
        double at40 = heat * (1685 + 3.4 * 40) / (1685 + 3.4 * celsius);
        return new Oil(
                "published",
                Oil.Walther.constant(20e-6),
                density + slope * (celsius - 15),
                slope,
                0,
                0,
                0,
                new ThermalData(OptionalDouble.of(at40), OptionalDouble.empty()),
                ShearThinning.NONE);
    }

    private static double kelvin(double fahrenheit) {
        return (fahrenheit - 32) * RANKINE + Oil.ZERO_CELSIUS;
    }

    private static double fahrenheit(double kelvin) {
        return (kelvin - Oil.ZERO_CELSIUS) / RANKINE + 32;
    }
}

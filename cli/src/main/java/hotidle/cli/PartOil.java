package hotidle.cli;

import hotidle.circuits.single.LibraryMaterials;
import hotidle.circuits.text.Dimension;
import hotidle.oil.Oil;

/**
 * The oil that fills a part on its own.
 *
 * @param oil                  the oil
 * @param byDefault            whether it was left to the program
 * @param temperature          [K]
 * @param temperatureByDefault whether that was
 */
record PartOil(Oil oil, boolean byDefault, double temperature, boolean temperatureByDefault) {

    private static final String OIL = "shuttle-atf";
    private static final double TEMPERATURE = 373.15;

    /** Limits as in a circuit file: temperature of a duty [K]. */
    private static final double COLDEST = 213.15;

    private static final double HOTTEST = 523.15;

    /**
     * Reads it.
     *
     * @param measuredAt temperature of a liquid whose viscosity is given, unless it is said [K]
     * @throws WrongInputException where it is no oil
     */
    static PartOil of(PartOptions options, double measuredAt, LibraryMaterials stock) {
        boolean fixed = options.viscosity != null || options.density != null;
        if (fixed && options.oil != null) {
            throw new WrongInputException("hotidle part: give either --oil, or --viscosity and --density");
        }
        double usual = fixed ? measuredAt : TEMPERATURE;
        double temperature = options.temperature == null
                ? usual
                : PartOptionText.within(
                        "--temperature",
                        options.temperature,
                        Dimension.TEMPERATURE,
                        COLDEST,
                        HOTTEST,
                        "-60 degC to 250 degC");
        return new PartOil(
                fixed ? fixed(options) : named(options, stock),
                options.oil == null && !fixed,
                temperature,
                options.temperature == null);
    }

    private static Oil named(PartOptions options, LibraryMaterials stock) {
        String name = options.oil == null ? OIL : options.oil;
        Oil oil = stock.oils().get(name);
        if (oil == null) {
            throw new WrongInputException("hotidle part: --oil " + name + " is no oil of the ready circuits\noils: "
                    + String.join(", ", stock.oils().keySet()));
        }
        return oil;
    }

    /** A liquid that keeps its density and viscosity. */
    private static Oil fixed(PartOptions options) {
        if (options.viscosity == null || options.density == null) {
            throw new WrongInputException("hotidle part: --viscosity and --density go together,"
                    + " for example --viscosity 7.2mPa.s --density 830kg/m3");
        }
        double viscosity = OptionValues.quantity("--viscosity", options.viscosity, Dimension.VISCOSITY);
        double density = OptionValues.quantity("--density", options.density, Dimension.DENSITY);
        try {
            Oil.Walther line = Oil.Walther.constant(viscosity / density);
            return new Oil("fixed liquid", line, density, 0, 0, 0, 0);
        } catch (IllegalArgumentException outside) {
            throw new WrongInputException("hotidle part: --viscosity " + options.viscosity + " --density "
                    + options.density + ": " + outside.getMessage());
        }
    }
}

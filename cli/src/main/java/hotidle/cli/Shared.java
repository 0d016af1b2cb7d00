package hotidle.cli;

import picocli.CommandLine.Option;

/** Options of every command that prints numbers. */
final class Shared {

    /** How results are written. */
    enum Format {
        TABLE,
        CSV,
        JSON
    }

    @Option(
            names = "--units",
            defaultValue = "shop",
            description =
                    "shop (psi, gpm, in, degF, lbf.ft, hp), metric (bar, L/min, mm, degC, N.m, kW) or si. Default: shop")
    Quantity.UnitSystem units;

    @Option(names = "--format", defaultValue = "table", description = "table, csv or json. Default: table")
    Format format;

    /** Cautions for whoever takes the numbers to a running unit; the usual ones of the trade. */
    static final String CAUTION = Wrap.lines(
                    "An estimate, not an approval. Raised pressure loads case, pump, rings, shafts and converter. Before any"
                            + " test on the vehicle: wheels blocked, brakes on, two people, nobody in front; hot oil burns when"
                            + " a plug is opened. A stall test lasts 5 s at most with a minute of cooling after it, and none at"
                            + " all if idle pressure is low. The unit maker's procedure and local codes come first.",
                    "",
                    "")
            .stripTrailing();
}

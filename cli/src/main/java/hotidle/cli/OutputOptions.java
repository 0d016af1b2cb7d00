package hotidle.cli;

import hotidle.answer.format.Quantity;
import picocli.CommandLine.Option;

/** Options of every command that prints numbers. */
final class OutputOptions {

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

    @Option(names = "--full", description = "the whole text, not only the first screen; csv and json are always whole")
    boolean full;
}

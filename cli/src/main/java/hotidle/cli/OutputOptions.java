package hotidle.cli;

import hotidle.answer.format.Quantity;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options of every command that prints numbers. */
final class OutputOptions {

    /** How results are written. */
    enum Format {
        TABLE,
        CSV,
        JSON
    }

    @Mixin
    private UnitsOption units;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "table",
            description = "table, csv or json. Default: table")
    Format format;

    @Option(names = "--full", description = "the whole text, not only the first screen; csv and json are always whole")
    boolean full;

    /** In which units numbers are shown; JSON has none but SI. */
    Quantity.UnitSystem units() {
        return format == Format.TABLE ? units.shown() : units.read();
    }

    /** Takes what the circuit's file says of units. */
    void unitsOfFile(Optional<String> word) {
        units.ofFile(word);
    }
}

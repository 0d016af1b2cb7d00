package hotidle.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.WorkRecord;
import hotidle.answer.format.Json;
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

    private Optional<WorkRecord> work = Optional.empty();

    /** Takes what is done to the builds that are asked for. */
    void workDone(WorkRecord done) {
        work = Optional.of(done);
    }

    /** The record of an answer, with what was done to its builds. */
    Object told(Object record) {
        return work.<Object>map(done -> {
                    ObjectNode told = Json.tree(record);
                    told.set("work", Json.tree(done));
                    return told;
                })
                .orElse(record);
    }

    /** In which units numbers are shown; JSON has none but SI. */
    Quantity.UnitSystem units() {
        return format == Format.TABLE ? units.shown() : units.read();
    }

    /** Takes what the circuit's file says of units. */
    void unitsOfFile(Optional<String> word) {
        units.ofFile(word);
    }
}

package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.OptionalDouble;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A set pressure asked for in place of the build's own. */
final class AskedPressure {

    @Option(
            names = "--set",
            paramLabel = "PRESSURE",
            description = "a set pressure, for example 240psi, in place of the build's own")
    private String set;

    @Mixin
    private SetBy setBy;

    /** In Pa; empty where none is asked for. */
    OptionalDouble pressure() {
        return set == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(OptionValues.quantity("--set", set, Dimension.PRESSURE));
    }

    /** What it changes. */
    SetPressure.By by() {
        return setBy.by();
    }

    /**
     * Refuses a pressure to which a unit cannot be set.
     *
     * @throws WrongInputException where it cannot
     */
    void check(Transmission unit) {
        if (pressure().isPresent()) {
            unit.command();
            setBy.at(unit, pressure().getAsDouble(), set);
        }
    }
}

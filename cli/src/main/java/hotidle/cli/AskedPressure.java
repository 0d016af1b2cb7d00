package hotidle.cli;

import hotidle.transmission.SetPressure;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A set pressure asked for in place of the build's own. */
final class AskedPressure {

    @Option(
            names = "--set",
            paramLabel = "PRESSURE",
            description =
                    "a set pressure, the highest of the forward ranges, for example 240psi, in place of the build's"
                            + " own")
    private String set;

    @Mixin
    private SetBy setBy;

    /** Whether one is asked for. */
    boolean given() {
        return set != null;
    }

    /**
     * The pressure; empty where none is asked for.
     *
     * @throws WrongInputException where it is none
     */
    Optional<NewPressure> pressure() {
        return set == null ? Optional.empty() : Optional.of(NewPressure.of(set, setBy));
    }

    /** How it is made. */
    SetBy setBy() {
        return setBy;
    }

    /** What it changes. */
    SetPressure.By by() {
        return setBy.by();
    }
}

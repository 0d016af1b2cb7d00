package hotidle.cli;

import hotidle.circuits.text.Dimension;
import java.util.OptionalDouble;
import picocli.CommandLine.Option;

/** The engine torque that a build is to hold. */
final class WantedTorque {

    @Option(
            names = "--for",
            paramLabel = "TORQUE",
            description =
                    "an engine torque, as 700lbf.ft: says of each build whether it holds it in every range, from which of the set"
                            + " pressures on, and what gives before")
    String wanted;

    /**
     * What is asked for [N·m]; empty where nothing is.
     *
     * @throws WrongInputException where it is no torque of an engine
     */
    OptionalDouble torque() {
        return wanted == null ? OptionalDouble.empty() : OptionalDouble.of(torque(wanted));
    }

    /**
     * A torque as it is written [N·m].
     *
     * @throws WrongInputException where it is no torque of an engine
     */
    static double torque(String wanted) {
        double torque = OptionValues.quantity("--for", wanted, Dimension.TORQUE);
        if (!(torque > 0)) {
            throw new WrongInputException(
                    "hotidle: --for " + wanted + " is no torque of an engine\nmend: write 700lbf.ft");
        }
        return torque;
    }
}

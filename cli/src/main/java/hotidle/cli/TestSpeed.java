package hotidle.cli;

import hotidle.circuits.text.Dimension;
import picocli.CommandLine.Option;

/** The engine speed at which torque is asked for. */
final class TestSpeed {

    private static final double FASTEST = 100;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "2000rpm",
            description = "engine speed. Default: ${DEFAULT-VALUE}")
    private String speed;

    /**
     * In rev/s.
     *
     * @throws WrongInputException where it is no speed of an engine
     */
    double turns() {
        double turns = OptionValues.quantity("--speed", speed, Dimension.SPEED);
        if (!(turns > 0 && turns <= FASTEST)) {
            throw new WrongInputException(
                    "hotidle: --speed " + speed + " is no speed of an engine\nmend: write 2000rpm");
        }
        return turns;
    }
}

package hotidle.cli;

import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import picocli.CommandLine.Option;

/** What a set pressure that is asked for changes. */
final class SetBy {

    private static final String BOTH = "command-and-spring";
    private static final String SPRING = "spring";

    @Option(
            names = "--set-by",
            paramLabel = "WHAT",
            defaultValue = BOTH,
            description =
                    "how a set pressure is made: command-and-spring scales the command and solves the regulator's spring for"
                            + " it; spring leaves pilot and throttle pressure as they are. Default: ${DEFAULT-VALUE}")
    private String what;

    /**
     * What is changed.
     *
     * @throws WrongInputException where it is neither
     */
    SetPressure.By by() {
        return switch (what) {
            case BOTH -> SetPressure.By.COMMAND_AND_SPRING;
            case SPRING -> SetPressure.By.SPRING;
            default ->
                throw new WrongInputException(
                        "hotidle: --set-by " + what + ": is neither\nmend: write " + SPRING + " or " + BOTH);
        };
    }

    /**
     * The unit set to a pressure [Pa].
     *
     * @param written as it is written, with its option
     * @throws WrongInputException where it cannot be set to that
     */
    Transmission at(Transmission unit, double pressure, String written) {
        try {
            return SetPressure.of(unit, pressure, by());
        } catch (IllegalArgumentException impossible) {
            double lowest = SetPressure.lowest(unit, by());
            throw new WrongInputException("hotidle: " + written + ": " + unit.build() + " cannot be set so\nwhy:  "
                    + impossible.getMessage()
                    + (pressure < lowest
                            ? "\nmend: write " + (long) Math.ceil(lowest / SetPressure.PSI) + "psi or more"
                            : ""));
        }
    }
}

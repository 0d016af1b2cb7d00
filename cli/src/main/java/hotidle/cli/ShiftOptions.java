package hotidle.cli;

import hotidle.circuits.text.Dimension;
import hotidle.study.ShiftHeat;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import picocli.CommandLine.Option;

/** Under what a unit shifts. */
final class ShiftOptions {

    @Option(
            names = "--inertia",
            paramLabel = "INERTIA",
            required = true,
            description =
                    "moment of inertia on the turbine's side, engine and converter with it, as 0.6kg.m2 or 14lb.ft2")
    private String inertia;

    @Option(
            names = "--speed",
            paramLabel = "SPEED",
            defaultValue = "2800rpm",
            description = "turbine speed before the shift. Default: ${DEFAULT-VALUE}")
    private String speed;

    @Option(
            names = "--torque",
            paramLabel = "TORQUE",
            description = "turbine torque, kept during the shift. Default: the highest engine torque")
    private String torque;

    @Option(
            names = "--plate",
            paramLabel = "LENGTH",
            defaultValue = "2mm",
            description = "thickness of the steel plates (assumed). Default: ${DEFAULT-VALUE}")
    private String plate;

    @Option(
            names = "--lockup-time",
            paramLabel = "TIME",
            defaultValue = "1s",
            description = "time over which the lockup is applied. Default: ${DEFAULT-VALUE}")
    private String lockupTime;

    /**
     * What is asked of a unit's shifts.
     *
     * @throws WrongInputException where something is not above zero
     */
    ShiftHeat.AskedShift of(Transmission unit) {
        return new ShiftHeat.AskedShift(
                above("--speed", speed, Dimension.SPEED),
                torque == null ? highest(unit) : above("--torque", torque, Dimension.TORQUE),
                above("--inertia", inertia, Dimension.INERTIA),
                above("--plate", plate, Dimension.LENGTH));
    }

    /**
     * Time over which the lockup is applied [s].
     *
     * @throws WrongInputException where it is not above zero
     */
    double lockupTime() {
        return above("--lockup-time", lockupTime, Dimension.TIME);
    }

    /** The highest engine torque of a unit's driving conditions [Nm]. */
    private static double highest(Transmission unit) {
        return unit.duties().stream().mapToDouble(DutyPoint::engineTorque).max().orElse(0);
    }

    private static double above(String option, String text, Dimension dimension) {
        double value = OptionValues.quantity(option, text, dimension);
        if (!(value > 0)) {
            throw new WrongInputException("hotidle: " + option + " " + text + ": must be above zero");
        }
        return value;
    }
}

package hotidle.circuits.create;

import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.transmission.Command;
import hotidle.transmission.SetPressure;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The tables by which a solenoid commands line pressure, scaled: pressures by the ratio of set pressures, torques by that of engine
 * torques, and the line pressure without torque as answered.
 *
 * @param command section of the draft
 */
record CommandTables(Map<String, Object> command) {

    /** Whether there are any. */
    boolean there() {
        return command.containsKey("line-pressure");
    }

    private List<Object> rows() {
        return Draft.list(command.get("line-pressure")).orElse(List.of());
    }

    private static List<Object> row(Object one) {
        return Draft.list(one).orElseThrow();
    }

    /**
     * Scales them.
     *
     * @throws UnitAnswers.WrongAnswerException where the spring alone holds more without torque than is asked for, or it is above the set
     *     pressure
     */
    void scale(Command.Pilot pilot, ScaleFactors by, UnitAnswers answers) {
        double low = pilot.lineByTorque().at(0) * by.pressure();
        double high = pilot.lineByTorque().highest() * by.pressure();
        double idle = answers.idlePressure().orElse(low);
        double spring = pilot.pilotByLine().points().get(0).x() * by.pressure();
        if (idle < spring || idle > high * 1.0001) {
            throw new UnitAnswers.WrongAnswerException(
                    "idle-pressure",
                    String.format(
                            Locale.ROOT,
                            "it must lie between what the spring holds alone, %.0f psi, and the set pressure, %.0f psi; for less,"
                                    + " lower the regulator's preload and the command's tables in the file that is made",
                            Math.ceil(spring / SetPressure.PSI),
                            high / SetPressure.PSI));
        }
        for (int i = 0; i < rows().size(); i++) {
            List<Object> row = row(rows().get(i));
            double was = Units.parse((String) row.get(1), Dimension.PRESSURE) * by.pressure();
            double is = high > low ? idle + (was - low) * (high - idle) / (high - low) : i == 0 ? idle : high;
            row.set(0, Amounts.times((String) row.get(0), by.torque()));
            row.set(1, Amounts.of(is / SetPressure.PSI, "psi"));
        }
        Draft.list(command.get("pilot-pressure"))
                .orElseThrow()
                .forEach(one -> row(one).set(0, Amounts.times((String) row(one).get(0), by.pressure())));
    }

    /** Takes the mark of what is assumed off the pressures. */
    void known() {
        rows().forEach(one -> row(one).set(1, AssumedMark.without((String) row(one).get(1))));
    }
}

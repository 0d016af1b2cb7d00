package hotidle.circuits.create;

import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.transmission.SetPressure;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * The tables by which a solenoid commands line pressure, scaled: pressures by the ratio of set pressures, torques by that of engine
 * torques.
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

    /** Scales them. */
    void scale(ScaleFactors by) {
        rows().forEach(one -> {
            row(one).set(0, Amounts.times((String) row(one).get(0), by.torque()));
            row(one).set(1, Amounts.times((String) row(one).get(1), by.pressure()));
        });
        pilots().forEach(one -> row(one).set(0, Amounts.times((String) row(one).get(0), by.pressure())));
    }

    private List<Object> pilots() {
        return Draft.list(command.get("pilot-pressure")).orElseThrow();
    }

    /** Line pressures of the rows [Pa]. */
    List<Double> pressures() {
        return rows().stream().map(one -> pressure(one, 1)).toList();
    }

    /** Line pressure that the spring holds alone, without pilot pressure [Pa]. */
    double springAlone() {
        return pressure(pilots().get(0), 0);
    }

    /** Enters that another spring holds so much alone [Pa]. */
    void springAlone(double pressure) {
        row(pilots().get(0)).set(0, Amounts.of(pressure / SetPressure.PSI, "psi"));
    }

    /** The highest pilot pressure [Pa]. */
    double mostPilot() {
        return pressure(pilots().get(pilots().size() - 1), 1);
    }

    private static double pressure(Object one, int at) {
        return Units.parse((String) row(one).get(at), Dimension.PRESSURE);
    }

    /**
     * Makes the line pressure without engine torque another one, the highest staying as it is and those between moving in proportion.
     *
     * @param wanted [Pa]
     * @param before the {@link #pressures} that are moved
     */
    void noTorque(double wanted, List<Double> before) {
        double low = before.get(0);
        double high = Collections.max(before);
        for (int i = 0; i < rows().size(); i++) {
            double was = before.get(i);
            double level = i == 0 ? wanted : high;
            double is = high > low ? wanted + (was - low) * (high - wanted) / (high - low) : level;
            row(rows().get(i)).set(1, Amounts.of(is / SetPressure.PSI, "psi"));
        }
    }

    /** Takes the mark of what is assumed off the pressures. */
    void known() {
        rows().forEach(one -> row(one).set(1, AssumedMark.without((String) row(one).get(1))));
    }
}

package hotidle.study;

import hotidle.assess.Roles;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.result.Outcome;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Line pressure over rising engine speed as plain numbers, and the whole state at the duty's own speed: what {@link SpeedSweep} finds,
 * for who asks anew many times a second.
 *
 * @param points rising
 * @param own    at the duty's own speed, come to from the speed below it
 */
public record LineCurve(List<LineAtSpeed> points, Outcome own) {

    /**
     * The line at a speed.
     *
     * @param speed [rev/s]
     * @param line  [Pa]; empty where no state was found
     * @param set   pressure commanded there [Pa]; empty where none is
     */
    public record LineAtSpeed(double speed, OptionalDouble line, OptionalDouble set) {}

    public LineCurve {
        points = List.copyOf(points);
    }

    /**
     * Solves it.
     *
     * @param speeds [rev/s]; the duty's own is put among them
     * @param step   called after each state; what it throws ends the work
     */
    public static LineCurve of(Transmission unit, DutyPoint duty, List<Double> speeds, Runnable step) {
        TreeSet<Double> rising = new TreeSet<>(speeds);
        rising.add(duty.speed());
        Series series = new Series(unit.network());
        String line = Roles.of(unit).line();
        Conditions conditions = unit.conditions(duty);
        List<LineAtSpeed> points = new ArrayList<>();
        Outcome own = null;
        for (double speed : rising) {
            Conditions here = conditions.atSpeed(speed);
            boolean found = series.solve(here);
            OptionalDouble pressure = found ? OptionalDouble.of(pressure(series, line)) : OptionalDouble.empty();
            points.add(new LineAtSpeed(speed, pressure, unit.setPressure(here)));
            if (speed == duty.speed()) {
                own = series.outcome();
            }
            step.run();
        }
        return new LineCurve(points, own);
    }

    /** Of a node that is solved, or held. */
    private static double pressure(Series series, String node) {
        return series.knows(node)
                ? series.value(series.number(node))
                : series.state().pressure(node);
    }
}

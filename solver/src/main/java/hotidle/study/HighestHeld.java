package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.network.Conditions;
import hotidle.newton.Series;
import hotidle.study.search.SignChange;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The highest line pressure that a unit keeps up at a driving condition: command and spring are set higher and lower until the line that
 * is asked for there is only just held.
 *
 * <pre>
 * Held      as {@link hotidle.assess.Figures#regulated} has it: the line is at what is commanded, the regulator off its seat
 * Numerics  narrowed by what the line is over or short of what is asked until within {@link #NEAR}; what is told is the end that holds
 * </pre>
 *
 * @param pressure commanded at the driving condition [Pa]; empty where not even the lowest tried is held
 * @param all      whether the highest that was tried is held, so that higher ones may be too
 */
public record HighestHeld(OptionalDouble pressure, boolean all) {

    /** Set pressures tried: 20 psi, or the lowest that it can be set to, to 400 psi (chosen) [Pa]. */
    private static final double LOWEST = 20 * SetPressure.PSI;

    private static final double HIGHEST = 400 * SetPressure.PSI;

    /** A quarter of what a gauge shows (ours) [Pa]. */
    private static final double NEAR = 0.25 * SetPressure.PSI;

    /**
     * A set pressure that was tried.
     *
     * @param asked line pressure that it asks for at the driving condition [Pa]
     * @param over  by what the line is over that where it is held, and short of it where it is not [Pa]; minus infinity where it is
     *              not known
     */
    private record TriedPressure(double asked, double over) {
        boolean held() {
            return over >= 0;
        }
    }

    /**
     * Looks for it.
     *
     * @param build as it is
     * @param duty  of its unit, its speed and temperatures as they are to be
     * @param step  run before each state; what it throws ends the work
     * @return empty where nothing commands the line
     */
    public static Optional<HighestHeld> of(Adjustable build, DutyPoint duty, Runnable step) {
        if (build.unit().commanded().isEmpty()) {
            return Optional.empty();
        }
        Series series = new Series(build.unit().network());
        TriedPressure top = tried(build, duty, series, HIGHEST, step);
        if (top.held()) {
            return Optional.of(new HighestHeld(OptionalDouble.of(top.asked()), true));
        }
        double lowest = Math.max(LOWEST, SetPressure.lowest(build.unit(), SetPressure.By.COMMAND_AND_SPRING));
        TriedPressure best = tried(build, duty, series, lowest, step);
        if (!best.held()) {
            return Optional.of(new HighestHeld(OptionalDouble.empty(), false));
        }
        SignChange search = new SignChange(lowest, best.over(), HIGHEST, top.over(), NEAR);
        while (search.open()) {
            double set = search.next();
            TriedPressure now = tried(build, duty, series, set, step);
            search.tell(set, now.over());
            best = now.held() ? now : best;
        }
        return Optional.of(new HighestHeld(OptionalDouble.of(best.asked()), false));
    }

    private static TriedPressure tried(Adjustable build, DutyPoint duty, Series series, double set, Runnable step) {
        step.run();
        Transmission unit;
        try {
            unit = build.setTo(set, SetPressure.By.COMMAND_AND_SPRING).unit();
        } catch (IllegalArgumentException impossible) {
            return new TriedPressure(set, Double.NEGATIVE_INFINITY); // no spring is so weak or so strong
        }
        Conditions conditions = unit.conditions(duty);
        series.use(unit.network());
        double asked = unit.setPressure(conditions).orElseThrow();
        if (!series.solve(conditions)) {
            return new TriedPressure(asked, Double.NEGATIVE_INFINITY);
        }
        Figures figures = Assessment.of(unit, duty, series.state()).figures();
        double over = figures.line() - asked;
        return new TriedPressure(
                asked, figures.regulated() ? Math.max(over, 0) : over < 0 ? over : Double.NEGATIVE_INFINITY);
    }
}

package hotidle.heat;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.Warming;
import java.util.List;
import java.util.Optional;

/**
 * Temperatures that follow from heat.
 *
 * <p>Where several steady temperatures exist the coldest is taken, to which a unit comes from cold; the others are told. Where there is
 * none, the time until a limit is reached is followed from where the duty point starts.
 */
public final class HeatBalance {

    /** Longest time followed [s]: what has not reached a limit by then is told as not solved (assumed). */
    private static final double LONGEST = 24 * 3600.0;

    private HeatBalance() {}

    /**
     * What heat makes of a duty point.
     *
     * @param unit whose heat inputs are given
     * @param duty whose turbine speed is known; where it says nothing of heat, at balance
     */
    public static Warmed of(Transmission unit, DutyPoint duty) {
        return duty.warming().orElse(new Warming.Balance()) instanceof Warming.After after
                ? after(unit, duty, after)
                : balance(unit, duty);
    }

    private static Warmed balance(Transmission unit, DutyPoint duty) {
        WarmUnit warm = new WarmUnit(unit, duty);
        SteadyTemperature.Found found = new SteadyTemperature(warm).find();
        if (!found.stable().isEmpty()) {
            List<WarmState> others = found.stable().subList(1, found.stable().size());
            return new Warmed(
                    duty,
                    Optional.of(found.stable().get(0)),
                    others,
                    others.isEmpty() ? Warmed.Verdict.SETTLED : Warmed.Verdict.SEVERAL,
                    Optional.empty(),
                    Optional.empty());
        }
        double air = warm.inputs().ambient();
        WarmUp.Course course = WarmUp.follow(warm, new Temperatures(air, air), LONGEST);
        return new Warmed(
                duty,
                Optional.empty(),
                List.of(),
                verdict(course.reached()),
                course.reached() == WarmUp.Reached.NO_STATE
                        ? Optional.empty()
                        : course.last().map(WarmUp.Moment::seconds),
                Optional.empty());
    }

    private static Warmed after(Transmission unit, DutyPoint duty, Warming.After after) {
        Warmed start = of(unit, unit.duty(after.duty()).orElseThrow());
        Optional<String> from = Optional.of(after.duty());
        if (start.settled().isEmpty()) {
            return new Warmed(
                    duty, Optional.empty(), List.of(), Warmed.Verdict.START_NOT_KNOWN, Optional.empty(), from);
        }
        WarmUp.Course course =
                WarmUp.follow(new WarmUnit(unit, duty), start.settled().get().at(), after.seconds());
        boolean lasted = course.reached() == WarmUp.Reached.TIME;
        return new Warmed(
                duty,
                lasted ? course.last().map(WarmUp.Moment::state) : Optional.empty(),
                List.of(),
                lasted ? Warmed.Verdict.SETTLED : verdict(course.reached()),
                course.last().map(WarmUp.Moment::seconds),
                from);
    }

    private static Warmed.Verdict verdict(WarmUp.Reached reached) {
        return switch (reached) {
            case OIL_LIMIT -> Warmed.Verdict.SUMP_RUNS_AWAY;
            case CONVERTER_LIMIT -> Warmed.Verdict.CONVERTER_RUNS_AWAY;
            case TIME, NO_STATE -> Warmed.Verdict.NOT_SOLVED;
        };
    }
}

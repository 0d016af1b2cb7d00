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
        return duty.warming().orElse(new Warming.ToBalance()) instanceof Warming.After after
                ? after(unit, duty, after)
                : balance(unit, duty);
    }

    private static Warmed balance(Transmission unit, DutyPoint duty) {
        WarmUnit warm = new WarmUnit(unit, duty);
        SteadyTemperature steady = new SteadyTemperature(warm);
        List<WarmState> stable = steady.find();
        if (!stable.isEmpty()) {
            return settled(duty, stable);
        }
        double air = warm.inputs().ambient();
        WarmUp.Course course = WarmUp.follow(warm, new Temperatures(air, air), LONGEST);
        if (course.reached() == WarmUp.Reached.REST) {
            // a steady state just below a limit lies between two of the temperatures tried
            return course.last()
                    .flatMap(moment -> steady.polish(moment.state().at()))
                    .map(state -> settled(duty, List.of(state)))
                    .orElseGet(() -> notSolved(duty));
        }
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

    private static Warmed settled(DutyPoint duty, List<WarmState> stable) {
        return new Warmed(
                duty,
                Optional.of(stable.get(0)),
                stable.subList(1, stable.size()),
                stable.size() == 1 ? Warmed.WarmingEnd.SETTLED : Warmed.WarmingEnd.SEVERAL,
                Optional.empty(),
                Optional.empty());
    }

    private static Warmed notSolved(DutyPoint duty) {
        return new Warmed(
                duty, Optional.empty(), List.of(), Warmed.WarmingEnd.NOT_SOLVED, Optional.empty(), Optional.empty());
    }

    private static Warmed after(Transmission unit, DutyPoint duty, Warming.After after) {
        Warmed start = of(unit, unit.duty(after.duty()).orElseThrow());
        Optional<String> from = Optional.of(after.duty());
        if (start.settled().isEmpty()) {
            return new Warmed(
                    duty, Optional.empty(), List.of(), Warmed.WarmingEnd.START_NOT_KNOWN, Optional.empty(), from);
        }
        WarmUp.Course course =
                WarmUp.follow(new WarmUnit(unit, duty), start.settled().get().at(), after.seconds());
        boolean lasted = course.reached() == WarmUp.Reached.TIME || course.reached() == WarmUp.Reached.REST;
        return new Warmed(
                duty,
                lasted ? course.last().map(WarmUp.Moment::state) : Optional.empty(),
                List.of(),
                lasted ? Warmed.WarmingEnd.SETTLED : verdict(course.reached()),
                lasted ? Optional.of(after.seconds()) : course.last().map(WarmUp.Moment::seconds),
                from);
    }

    private static Warmed.WarmingEnd verdict(WarmUp.Reached reached) {
        return switch (reached) {
            case OIL_LIMIT -> Warmed.WarmingEnd.SUMP_RUNS_AWAY;
            case CONVERTER_LIMIT -> Warmed.WarmingEnd.CONVERTER_RUNS_AWAY;
            case TIME, REST, NO_STATE -> Warmed.WarmingEnd.NOT_SOLVED;
        };
    }
}

package hotidle.plots;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Line pressure of one build against speed.
 *
 * @param build   its name
 * @param points  by rising speed
 * @param set     set pressure commanded [display unit]
 * @param onset   speed from which the regulator holds the line [rpm]; empty if it never does
 * @param unloads speed from which the secondary is unloaded [rpm]; empty if it is not
 */
public record PressureCurve(
        String build, List<SweepPoint> points, double set, OptionalDouble onset, OptionalDouble unloads) {

    /**
     * One state of the sweep.
     *
     * @param speed    [rpm]
     * @param pressure [display unit], NaN where the state is unsolved
     */
    public record SweepPoint(double speed, double pressure) {
        /** Whether there is a pressure to show. */
        public boolean solved() {
            return Double.isFinite(pressure);
        }
    }

    /** Checks the speeds and the set pressure. */
    public PressureCurve {
        points = List.copyOf(points);
        Require.speeds(
                "curve '" + build + "'", points.stream().map(SweepPoint::speed).toList());
        Require.that(Double.isFinite(set), "curve '" + build + "' has set pressure " + set + "; it must be finite");
    }

    /** Least speed [rpm]. */
    public double low() {
        return points.get(0).speed();
    }

    /** Greatest speed [rpm]. */
    public double high() {
        return points.get(points.size() - 1).speed();
    }

    /** The same at low speeds only. */
    PressureCurve upTo(double speed) {
        return new PressureCurve(
                build,
                points.stream().filter(point -> point.speed() <= speed).toList(),
                set,
                upTo(speed, onset),
                upTo(speed, unloads));
    }

    private static OptionalDouble upTo(double speed, OptionalDouble event) {
        return event.stream().filter(at -> at <= speed).findFirst();
    }

    /** How many states are unsolved. */
    public long unsolved() {
        return points.stream().filter(point -> !point.solved()).count();
    }

    /** Pressure between the neighbouring points [display unit]; NaN in a gap and beyond the ends. */
    public double at(double speed) {
        return at(points, speed);
    }

    /** The same of any points. */
    static double at(List<SweepPoint> points, double speed) {
        for (int i = 1; i < points.size(); i++) {
            SweepPoint a = points.get(i - 1);
            SweepPoint b = points.get(i);
            if (speed == a.speed()) {
                return a.pressure();
            }
            if (speed > a.speed() && speed < b.speed()) {
                double share = (speed - a.speed()) / (b.speed() - a.speed());
                return a.pressure() + share * (b.pressure() - a.pressure());
            }
        }
        SweepPoint last = points.get(points.size() - 1);
        return speed == last.speed() ? last.pressure() : Double.NaN;
    }

    /** The short label at the onset of regulation, which some curves share, such as {@code worn: holds from 1430 rpm}. */
    static String onsetLabel(List<PressureCurve> curves) {
        PressureCurve first = curves.get(0);
        double from = first.onset.orElseThrow();
        return curves.stream().map(PressureCurve::build).collect(Collectors.joining(", "))
                + (curves.size() > 1 ? ": hold from " : ": holds from ")
                + Style.rpm(from)
                + (from <= first.low() ? " or below" : "");
    }

    /** What the legend says of this curve. */
    String legend() {
        StringBuilder text = new StringBuilder(build);
        if (unsolved() == points.size()) {
            return text.append(": no speed solved").toString();
        }
        if (onset.isEmpty()) {
            text.append(unsolved() == 0 ? ": never regulates between " : ": regulates at no speed solved between ")
                    .append(Style.number(low()))
                    .append(" and ")
                    .append(Style.rpm(high()));
        }
        unloads.ifPresent(speed -> text.append(onset.isEmpty() ? "; " : ": ")
                .append("secondary unloaded from ")
                .append(Style.rpm(speed)));
        return text.append(Style.unsolved(unsolved(), "×")).toString();
    }
}

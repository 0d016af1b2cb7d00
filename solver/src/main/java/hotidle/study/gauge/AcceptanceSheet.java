package hotidle.study.gauge;

import hotidle.newton.Series;
import hotidle.part.Setting;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What to read on a unit after it is built, and what a sound one reads: the line in every range, a clutch's tap in the ranges that
 * apply it, everything else in the first range; at idle and at {@link #SPEED}, hot.
 *
 * @param lines    in the order of ranges and speeds
 * @param unsolved test points at which no steady state was found
 */
public record AcceptanceSheet(List<Line> lines, List<TestPoint> unsolved) {

    /** Engine speed at which line pressure is judged beside idle: 1500 rpm (common practice) [rev/s]. */
    public static final double SPEED = 1500 / 60.0;

    /** A tap with less than this share of the line is not fed (ours) [-]. */
    private static final double FED = 0.1;

    /** Deviations to both sides within which a sound unit lies (chosen). */
    private static final double BAND = 2;

    /**
     * A reading to take.
     *
     * @param mean what a sound unit reads [Pa] or [m³/s]
     * @param low  lower end of what sound units read, without the gauge's own error
     * @param high upper end of it
     */
    public record Line(Meter meter, TestPoint at, double mean, double low, double high) {}

    public AcceptanceSheet {
        lines = List.copyOf(lines);
        unsolved = List.copyOf(unsolved);
    }

    /** The sheet of a build. */
    public static AcceptanceSheet of(Adjustable build) {
        Transmission unit = build.unit();
        DutyPoint idle = idle(unit);
        List<Double> speeds = idle.speed() < SPEED ? List.of(idle.speed(), SPEED) : List.of(idle.speed());
        double hot = idle.temperatures().getOrDefault(TestPoint.SUMP, Double.NaN);
        Tolerances tolerances = Tolerances.of(build);
        List<Tolerances.Shift> shifts = tolerances.shifts();
        Optional<String> line = unit.commanded().map(Command::line);
        // one torque for all: a range whose own driving condition pulls hard would be expected to read what it reads
        // there
        OptionalDouble torque = unit.commanded()
                .flatMap(Command::pilot)
                .map(pilot -> OptionalDouble.of(idle.engineTorque()))
                .orElse(OptionalDouble.empty());
        List<Line> lines = new ArrayList<>();
        List<TestPoint> unsolved = new ArrayList<>();
        for (Range range : unit.ranges()) {
            for (double speed : speeds) {
                TestPoint point = new TestPoint(speed, hot, range.name(), OptionalDouble.empty(), torque);
                List<GaugeReading.Row> rows = Meter.of(unit).stream()
                        .map(meter -> new GaugeReading.Row(meter, point))
                        .toList();
                GaugeModel model = new GaugeModel(tolerances, shifts, rows);
                if (model.unsolved().isEmpty()) {
                    boolean first = range.equals(unit.ranges().get(0));
                    lines.addAll(chosen(model, line, first));
                } else {
                    unsolved.add(point);
                }
            }
        }
        return new AcceptanceSheet(lines, unsolved);
    }

    /** The slowest duty point at which the lockup is off. */
    static DutyPoint idle(Transmission unit) {
        return unit.duties().stream()
                .min(Comparator.comparing((DutyPoint duty) -> duty.lockup() != Setting.Lockup.OFF)
                        .thenComparingDouble(DutyPoint::speed))
                .orElseThrow();
    }

    /** What is read at a test point: the line and what only its range feeds; in the first range everything that is fed. */
    private static List<Line> chosen(GaugeModel model, Optional<String> line, boolean first) {
        Series series = model.series();
        Expectation expected = model.sound(series);
        List<GaugeReading.Row> rows = model.rows();
        double most = 0;
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).meter().reads() == Meter.Reads.PRESSURE) {
                most = Math.max(most, expected.mean().getEntry(i));
            }
        }
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Meter meter = rows.get(i).meter();
            double mean = expected.mean().getEntry(i);
            double band = BAND * Math.sqrt(expected.covariance().getEntry(i, i));
            boolean pressure = meter.reads() == Meter.Reads.PRESSURE;
            boolean own = line.map(meter.node()::equals).orElse(true) || model.applies(meter);
            boolean flow = first && meter.reads() == Meter.Reads.FLOW && model.cools(meter);
            if (pressure ? mean > FED * most && (own || first) : flow) {
                lines.add(new Line(meter, rows.get(i).at(), mean, mean - band, mean + band));
            }
        }
        return lines;
    }
}

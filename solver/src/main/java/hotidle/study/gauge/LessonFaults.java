package hotidle.study.gauge;

import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.newton.Series;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.DoubleStream;

/**
 * Faults of a unit that a learner can find by pressure gauges.
 *
 * <pre>
 * Looked at   every tap in every range, at the slowest driving condition's speed and {@link #SPEEDS}, as warm as it is there and at
 *             {@link #COOL}; points at which the sound unit has no state are left out
 * Shows       a fault's reading less that of the sound build, over the deviation of such a reading on sound units, gauge included
 * Difficulty  by the reading at which the fault shows most
 * Drawn       a kind, a part of it and a way of its size, {@link UnitFault#sizeAt}, each evenly, again until it shows as asked for; by
 *             {@link Random}, whose numbers are the same on every machine, from a seed mixed by the last step of SplitMix64
 *             (G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014, from memory)
 * </pre>
 */
public final class LessonFaults {

    /** A pressure gauge is read to 1 psi, half of what it may be off by (assumed) [Pa]. */
    public static final double GAUGE = SetPressure.PSI;

    /** Engine speeds looked at besides idle: 1500 and 3000 rpm (chosen) [rev/s]. */
    private static final double[] SPEEDS = {1500 / 60.0, 3000 / 60.0};

    /** Sump temperature looked at besides a hot one: 40 °C (chosen) [K]. */
    private static final double COOL = 313.15;

    /** Draws before none is found (ours). */
    private static final int TRIES = 2000;

    /** How far a fault stands out at the reading that shows it most, in deviations of a reading (chosen). */
    public enum Difficulty {
        /** One glance at the right gauge tells that something is wrong. */
        EASY(25, Double.POSITIVE_INFINITY),
        MEDIUM(10, 25),
        /** It is seen at the right gauge, set to what shows it. */
        HARD(4, 10);

        private final double least;
        private final double most;

        Difficulty(double least, double most) {
            this.least = least;
            this.most = most;
        }

        boolean holds(double shows) {
            return shows >= least && shows < most;
        }
    }

    /**
     * How a fault shows at a meter.
     *
     * @param row   what is read
     * @param value on the unit with the fault [Pa]
     * @param sound on the sound build [Pa]
     * @param off   deviations between them [-]
     */
    public record Shown(GaugeReading.Row row, double value, double sound, double off) {}

    /**
     * What sound units read at a point.
     *
     * @param mean      of them [Pa]
     * @param deviation of a reading about it, gauge included [Pa]
     */
    public record SoundBand(double mean, double deviation) {}

    private final Adjustable build;
    private final List<UnitFault> faults;
    private final Tolerances tolerances;
    private final List<Tolerances.Shift> shifts;
    private SoundRows solved;

    private LessonFaults(Adjustable build) {
        this.build = build;
        faults = UnitFaults.of(build);
        tolerances = Tolerances.of(build);
        shifts = tolerances.shifts();
    }

    /** What is looked at, and what sound units read there. */
    private record SoundRows(GaugeModel model, Expectation sound) {}

    /** Solved once, when it is asked for first, since it takes a second or two. */
    private synchronized SoundRows solved() {
        if (solved == null) {
            List<GaugeReading.Row> rows = rows(build.unit());
            GaugeModel all = new GaugeModel(tolerances, shifts, rows);
            GaugeModel model = all.unsolved().isEmpty()
                    ? all
                    : new GaugeModel(
                            tolerances,
                            shifts,
                            rows.stream()
                                    .filter(row -> !all.unsolved().contains(row.at()))
                                    .toList());
            solved = new SoundRows(model, model.sound(model.series()));
        }
        return solved;
    }

    /** Those of a build. */
    public static LessonFaults of(Adjustable build) {
        return new LessonFaults(build);
    }

    public Adjustable build() {
        return build;
    }

    /** All faults that the build can have. */
    public List<UnitFault> faults() {
        return faults;
    }

    /** The slowest driving condition at which the lockup is off: how hot hot oil is, and how slow idle. */
    public DutyPoint idle() {
        return AcceptanceSheet.idle(build.unit());
    }

    private static List<GaugeReading.Row> rows(Transmission unit) {
        DutyPoint idle = AcceptanceSheet.idle(unit);
        double hot = idle.temperatures().getOrDefault(TestPoint.SUMP, Double.NaN);
        List<Double> temperatures = hot > COOL ? List.of(hot, COOL) : List.of(hot);
        List<GaugeReading.Row> rows = new ArrayList<>();
        for (Range range : unit.ranges()) {
            for (double temperature : temperatures) {
                for (double speed : DoubleStream.concat(DoubleStream.of(idle.speed()), DoubleStream.of(SPEEDS))
                        .distinct()
                        .toArray()) {
                    TestPoint at = new TestPoint(
                            speed, temperature, range.name(), OptionalDouble.empty(), OptionalDouble.empty());
                    Meter.of(unit).stream()
                            .filter(meter -> meter.reads() == Meter.Reads.PRESSURE)
                            .forEach(meter -> rows.add(new GaugeReading.Row(meter, at)));
                }
            }
        }
        return rows;
    }

    /** What sound units read at any point; empty where the sound build has no state there. */
    public Optional<SoundBand> band(GaugeReading.Row row) {
        GaugeModel one = new GaugeModel(tolerances, shifts, List.of(row));
        if (!one.unsolved().isEmpty()) {
            return Optional.empty();
        }
        Expectation expected = one.sound(one.series());
        return Optional.of(new SoundBand(expected.mean().getEntry(0), deviation(expected, 0)));
    }

    private static double deviation(Expectation expected, int row) {
        return Math.sqrt(expected.covariance().getEntry(row, row) + GAUGE * GAUGE);
    }

    /** How a fault shows, where it shows most first; empty where it cannot be, or has no state somewhere. */
    public List<Shown> shown(UnitFault.Sized fault) {
        return shown(solved().model().series(), fault);
    }

    private List<Shown> shown(Series series, UnitFault.Sized fault) {
        GaugeModel model = solved().model();
        Expectation sound = solved().sound();
        Optional<double[]> read = fault.fault().in(build, fault.size()).flatMap(unit -> model.read(series, unit));
        List<Shown> shown = new ArrayList<>();
        for (int i = 0; read.isPresent() && i < model.rows().size(); i++) {
            double mean = sound.mean().getEntry(i);
            double value = read.get()[i];
            shown.add(new Shown(model.rows().get(i), value, mean, (value - mean) / deviation(sound, i)));
        }
        shown.sort(Comparator.comparingDouble((Shown one) -> -Math.abs(one.off())));
        return shown;
    }

    /**
     * The gentlest reading at which a fault shows at all: that with the slowest engine, of those one in a range that drives nothing, and of
     * those the lowest pressure. Where it shows most may be a hard test.
     */
    public Optional<Shown> gentlest(UnitFault.Sized fault) {
        return shown(fault).stream()
                .filter(one -> Math.abs(one.off()) >= Difficulty.HARD.least)
                .min(Comparator.comparingDouble((Shown one) -> one.row().at().speed())
                        .thenComparing(this::inGear)
                        .thenComparingDouble(one -> Math.max(one.value(), one.sound())));
    }

    private boolean inGear(Shown one) {
        return build.unit()
                .range(one.row().at().range())
                .filter(range -> !range.applied().isEmpty())
                .isPresent();
    }

    /** Whether a fault shows at any gauge looked at, and has a state everywhere there. */
    public boolean shows(UnitFault.Sized fault) {
        return most(solved().model().series(), fault) >= Difficulty.HARD.least;
    }

    private double most(Series series, UnitFault.Sized fault) {
        return shown(series, fault).stream()
                .mapToDouble(one -> Math.abs(one.off()))
                .findFirst()
                .orElse(Double.NaN);
    }

    /**
     * A fault that shows as asked for.
     *
     * @param seed the same, the same fault of the same build
     * @param step called before each try; what it throws ends the work
     * @return empty where none is found
     */
    public Optional<UnitFault.Sized> drawn(Difficulty difficulty, long seed, Runnable step) {
        Random random = new Random(mixed(31 * seed + (long) difficulty.least));
        List<FaultKind> kinds = faults.stream().map(UnitFault::kind).distinct().toList();
        Series series = solved().model().series();
        for (int i = 0; i < TRIES; i++) {
            step.run();
            FaultKind kind = kinds.get(random.nextInt(kinds.size()));
            List<UnitFault> ofKind =
                    faults.stream().filter(fault -> fault.kind() == kind).toList();
            UnitFault fault = ofKind.get(random.nextInt(ofKind.size()));
            UnitFault.Sized drawn = fault.of(fault.sizeAt(random.nextDouble()));
            if (difficulty.holds(most(series, drawn))) {
                return Optional.of(drawn);
            }
        }
        return Optional.empty();
    }

    /** Neighbouring seeds far apart. */
    private static long mixed(long seed) {
        long z = seed * 0x9E3779B97F4A7C15L;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}

package hotidle.study.gauge;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.newton.SteadySolver;
import hotidle.transmission.Adjustable;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/**
 * Made-up units of shuttle-five with one known fault or none, drawn and read by {@link TwinDraw}, whose eight usual readings are
 * diagnosed. The diagnosis sees the build and the readings alone.
 */
final class Twins {

    private static final double GAUGE = 0.02;
    private static final double HOT = 273.15 + 110;

    final Adjustable build;
    final TwinDraw draw;
    final List<GaugeReading> places;
    final GaugeTable table;
    final List<UnitFault> faults;
    final Misfit misfit;

    Twins(String buildName) {
        this(buildName, false);
    }

    /**
     * Units of a build.
     *
     * @param offLaws whether their parts pass more or less than their laws say
     */
    Twins(String buildName, boolean offLaws) {
        build = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow()
                .adjustable(buildName);
        draw = new TwinDraw(build, Tolerances.of(build), offLaws);
        places = places();
        table = GaugeTable.of(build, places, () -> {});
        faults = UnitFaults.of(build);
        misfit = new Misfit(places);
    }

    private static TestPoint at(double rpm, String range) {
        return new TestPoint(rpm / 60, HOT, range, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The eight usual readings, as a sound unit has them. */
    private List<GaugeReading> places() {
        List<Map.Entry<String, TestPoint>> usual = List.of(
                Map.entry("line", at(650, "first")),
                Map.entry("low", at(650, "first")),
                Map.entry("line", at(650, "reverse")),
                Map.entry("reverse", at(650, "reverse")),
                Map.entry("direct", at(650, "third")),
                Map.entry("overdrive", at(650, "fourth")),
                Map.entry("line", at(1500, "third")),
                Map.entry("converter", at(1500, "park")));
        List<GaugeReading> places = new ArrayList<>();
        SteadySolver solver = new SteadySolver(build.unit().network());
        for (Map.Entry<String, TestPoint> one : usual) {
            Meter meter = Meter.of(build.unit(), one.getKey()).orElseThrow();
            double sound = solver.solve(one.getValue().conditions(build.unit()))
                    .state()
                    .orElseThrow()
                    .pressure(meter.node());
            places.add(new GaugeReading(meter, one.getValue(), GaugeReading.Sense.EXACT, sound, GAUGE * sound));
        }
        return places;
    }

    /** What the gauges show on another unit with faults, with all errors; empty where a state of it is not found. */
    Optional<List<GaugeReading>> read(List<UnitFault.Sized> faulty, Random random) {
        return draw.onStand(faulty, random).flatMap(stand -> stand.read(places));
    }

    /** Twins without a fault: how many are called sound. */
    int healthy(int count, long seed) {
        Random random = new Random(seed);
        int sound = 0;
        for (int i = 0; i < count; i++) {
            Optional<List<GaugeReading>> read = read(List.of(), random);
            sound += read.isPresent()
                            && GaugeStudy.alone(table, read.get()).agreement().agrees()
                    ? 1
                    : 0;
        }
        return sound;
    }

    /** Twins with one fault each. */
    TwinTally sick(int count, long seed) {
        Random random = new Random(seed);
        TwinTally tally = new TwinTally();
        for (int i = 0; i < count; i++) {
            int which = random.nextInt(faults.size());
            double even = random.nextDouble();
            tally(tally, which, CauseBelief.drawn(faults.get(which).kind().graded(), even), random);
        }
        return tally;
    }

    /** Twins with one fault each that shows. */
    TwinTally visible(int count, long seed) {
        Random random = new Random(seed);
        TwinTally tally = new TwinTally();
        while (tally.visible.all < count) {
            UnitFault.Sized shown = shown(random);
            tally(tally, faults.indexOf(shown.fault()), shown.fault().wayTo(shown.size()), random);
        }
        return tally;
    }

    private void tally(TwinTally tally, int which, double way, Random random) {
        UnitFault fault = faults.get(which);
        tally.all++;
        Optional<List<GaugeReading>> read = read(List.of(fault.of(fault.sizeAt(way))), random);
        CauseCurve curve = table.curves().get(which);
        if (read.isEmpty() || !curve.known()) {
            tally.unsolved++;
            return;
        }
        GaugeFindings found = GaugeStudy.alone(table, read.get());
        double moved = misfit.distance(table.sound(), curve.at(way));
        TwinTally.Verdict verdict = verdict(fault, fault.sizeAt(way), found);
        if (moved > GaugeFindings.VISIBLE) {
            tally.visible.add(verdict);
            tally.byKind
                    .computeIfAbsent(fault.kind().word(), word -> new TwinTally.Found())
                    .add(verdict);
        } else {
            tally.invisible++;
            tally.invisibleAgree += verdict.agrees() ? 1 : 0;
        }
        tally.split += split(found) ? 1 : 0;
        log(fault, way, moved, found, verdict);
    }

    /** Whether causes of one gallery are told apart, or some of them left out. */
    private boolean split(GaugeFindings found) {
        Set<String> before = new HashSet<>();
        for (GaugeFindings.Group group : found.groups()) {
            Set<String> own = new HashSet<>();
            group.causes().forEach(cause -> own.add(gallery(cause.fault())));
            long all = found.causes().stream()
                    .filter(cause -> own.contains(gallery(cause.fault())))
                    .count();
            if (own.stream().anyMatch(before::contains) || all != group.causes().size()) {
                return true;
            }
            before.addAll(own);
        }
        return false;
    }

    /** What is found of a unit with faults that differs from its build in nothing else, read without error. */
    GaugeFindings exact(List<UnitFault.Sized> faulty) {
        double[] mean = table.model()
                .read(table.model().series(), UnitFault.in(build, faulty).orElseThrow())
                .orElseThrow();
        List<GaugeReading> read = new ArrayList<>();
        for (int i = 0; i < mean.length; i++) {
            GaugeReading place = places.get(i);
            read.add(new GaugeReading(place.meter(), place.at(), place.sense(), mean[i], place.deviation()));
        }
        return GaugeStudy.alone(table, read);
    }

    UnitFault fault(String name) {
        return faults.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void log(UnitFault fault, double way, double moved, GaugeFindings found, TwinTally.Verdict verdict) {
        if (LOG) {
            Cause truth = truth(fault, found);
            System.out.printf(
                    Locale.ROOT,
                    "%-40s way %.3f moved %8.2f chi %8.1f left %6.1f share %.3f none %.3f pairs %.3f in %.3f..%.3f %s%n",
                    fault.name(),
                    way,
                    moved,
                    found.agreement().chiSquare(),
                    truth.chiSquare(),
                    truth.share(),
                    found.none(),
                    found.pairs().stream()
                            .mapToDouble(GaugeFindings.Pair::share)
                            .sum(),
                    fault.wayTo(truth.low()),
                    fault.wayTo(truth.high()),
                    verdict);
        }
    }

    static final boolean LOG = Boolean.getBoolean("twins.log");

    static Cause truth(UnitFault fault, GaugeFindings found) {
        return found.causes().stream()
                .filter(cause -> cause.fault().name().equals(fault.name()))
                .findFirst()
                .orElseThrow();
    }

    private TwinTally.Verdict verdict(UnitFault fault, double size, GaugeFindings found) {
        Set<String> galleries = galleries(found);
        Cause truth = truth(fault, found);
        TwinTally.Interval interval = fault.least() == fault.most()
                ? TwinTally.Interval.NONE
                : size < truth.low()
                        ? TwinTally.Interval.TOO_HIGH
                        : size > truth.high() ? TwinTally.Interval.TOO_LOW : TwinTally.Interval.COVERS;
        return new TwinTally.Verdict(
                found.agreement().agrees(),
                galleries.contains(Galleries.of(build.unit().network(), fault)),
                interval,
                galleries.size());
    }

    String gallery(UnitFault fault) {
        return Galleries.of(build.unit().network(), fault);
    }

    /** A fault, whether it shows or not. */
    UnitFault.Sized any(Random random) {
        UnitFault fault = faults.get(random.nextInt(faults.size()));
        return fault.of(fault.sizeAt(CauseBelief.drawn(fault.kind().graded(), random.nextDouble())));
    }

    /** A fault drawn until it shows alone. */
    UnitFault.Sized shown(Random random) {
        while (true) {
            int which = random.nextInt(faults.size());
            UnitFault fault = faults.get(which);
            double way = CauseBelief.drawn(fault.kind().graded(), random.nextDouble());
            CauseCurve curve = table.curves().get(which);
            if (curve.known() && misfit.distance(table.sound(), curve.at(way)) > GaugeFindings.VISIBLE) {
                return fault.of(fault.sizeAt(way));
            }
        }
    }

    /** The causes that are told, those of one gallery as one. */
    Set<String> galleries(GaugeFindings found) {
        Set<String> galleries = new HashSet<>();
        found.groups()
                .forEach(group -> group.causes()
                        .forEach(
                                cause -> galleries.add(Galleries.of(build.unit().network(), cause.fault()))));
        return galleries;
    }
}

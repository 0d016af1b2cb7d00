package hotidle.study.gauge;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.network.Conditions;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * Made-up units of shuttle-five that differ from their build as real ones do, with one known fault or none, whose eight usual readings
 * are taken with errors of speed, temperature and gauge, and then diagnosed. The truth is solved anew, at the drawn sizes; the diagnosis
 * sees the build and the readings alone. Past 300 lines, since what is drawn of the truth and what the diagnosis may know of it stand side
 * by side.
 */
final class Twins {

    private static final double GAUGE = 0.02;
    private static final double HOT = 273.15 + 110;

    private final Adjustable build;
    private final Tolerances tolerances;
    private final List<GaugeReading> places;
    private final GaugeTable table;
    private final List<UnitFault> faults;
    private final Misfit misfit;

    Twins(String buildName) {
        build = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                .circuit()
                .orElseThrow()
                .adjustable(buildName);
        tolerances = Tolerances.of(build);
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

    /** What was found of twins with a fault that shows. */
    static final class Found {
        int all;
        int sick;
        int contained;
        int graded;
        int covered;
        int above;
        final List<Integer> groups = new ArrayList<>();

        void add(Verdict verdict) {
            all++;
            sick += verdict.agrees() ? 0 : 1;
            contained += verdict.contained() ? 1 : 0;
            groups.add(verdict.causes());
            if (verdict.interval() != Interval.NONE) {
                graded++;
                covered += verdict.interval() == Interval.COVERS ? 1 : 0;
                above += verdict.interval() == Interval.TOO_LOW ? 1 : 0;
            }
        }

        double containedShare() {
            return (double) contained / all;
        }

        double coverage() {
            return (double) covered / graded;
        }

        double meanGroup() {
            return groups.stream().mapToInt(Integer::intValue).average().orElse(0);
        }

        int medianGroup() {
            return groups.stream().sorted().skip(groups.size() / 2).findFirst().orElse(0);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%4d visible, %.3f called sick, true cause told %.3f, %.3f of %d intervals cover (%d lie too low, %d too high),"
                            + " causes told: mean %.2f, median %d",
                    all,
                    (double) sick / all,
                    containedShare(),
                    coverage(),
                    graded,
                    above,
                    graded - covered - above,
                    meanGroup(),
                    medianGroup());
        }
    }

    /** What was found of all twins. */
    static final class Tally {
        int all;
        int unsolved;
        int invisible;
        int invisibleAgree;
        int split;
        final Found visible = new Found();
        final Map<String, Found> byKind = new TreeMap<>();

        @Override
        public String toString() {
            StringBuilder text = new StringBuilder(String.format(
                    Locale.ROOT,
                    "%d twins, %d not solved; %d invisible, %.3f of them called sound%n%-20s%s%n",
                    all,
                    unsolved,
                    invisible,
                    (double) invisibleAgree / Math.max(invisible, 1),
                    "all",
                    visible));
            byKind.forEach((kind, found) -> text.append(String.format(Locale.ROOT, "%-20s%s%n", kind, found)));
            return text.toString();
        }
    }

    /** Where an interval lies. */
    enum Interval {
        COVERS,
        TOO_LOW,
        TOO_HIGH,
        /** The fault has no size. */
        NONE
    }

    /**
     * What was said of a twin.
     *
     * @param causes that are told, those of one gallery as one
     */
    record Verdict(boolean agrees, boolean contained, Interval interval, int causes) {}

    /** Twins without a fault: how many are called sound. */
    int healthy(int count, long seed) {
        Random random = new Random(seed);
        int sound = 0;
        for (int i = 0; i < count; i++) {
            Optional<List<GaugeReading>> read = readings(drawn(random), List.of(), random);
            sound += read.isPresent()
                            && GaugeStudy.of(table, read.get()).agreement().agrees()
                    ? 1
                    : 0;
        }
        return sound;
    }

    /** Twins with one fault each. */
    Tally sick(int count, long seed) {
        Random random = new Random(seed);
        Tally tally = new Tally();
        for (int i = 0; i < count; i++) {
            int which = random.nextInt(faults.size());
            double even = random.nextDouble();
            tally(tally, which, CauseBelief.drawn(faults.get(which).kind().graded(), even), random);
        }
        return tally;
    }

    /** Twins with one fault each that shows. */
    Tally visible(int count, long seed) {
        Random random = new Random(seed);
        Tally tally = new Tally();
        while (tally.visible.all < count) {
            UnitFault.Sized shown = shown(random);
            tally(tally, faults.indexOf(shown.fault()), shown.fault().wayTo(shown.size()), random);
        }
        return tally;
    }

    private void tally(Tally tally, int which, double way, Random random) {
        UnitFault fault = faults.get(which);
        tally.all++;
        Optional<List<GaugeReading>> read = readings(drawn(random), List.of(fault.of(fault.sizeAt(way))), random);
        CauseCurve curve = table.curves().get(which);
        if (read.isEmpty() || !curve.known()) {
            tally.unsolved++;
            return;
        }
        GaugeFindings found = GaugeStudy.of(table, read.get());
        double moved = misfit.distance(table.sound(), curve.at(way));
        Verdict verdict = verdict(fault, fault.sizeAt(way), found);
        if (moved > GaugeFindings.VISIBLE) {
            tally.visible.add(verdict);
            tally.byKind
                    .computeIfAbsent(fault.kind().word(), word -> new Found())
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
        return GaugeStudy.of(table, read);
    }

    UnitFault fault(String name) {
        return faults.stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static void log(UnitFault fault, double way, double moved, GaugeFindings found, Verdict verdict) {
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

    private static final boolean LOG = Boolean.getBoolean("twins.log");

    private static Cause truth(UnitFault fault, GaugeFindings found) {
        return found.causes().stream()
                .filter(cause -> cause.fault().name().equals(fault.name()))
                .findFirst()
                .orElseThrow();
    }

    private Verdict verdict(UnitFault fault, double size, GaugeFindings found) {
        Set<String> galleries = galleries(found);
        Cause truth = truth(fault, found);
        Interval interval = fault.least() == fault.most()
                ? Interval.NONE
                : size < truth.low() ? Interval.TOO_HIGH : size > truth.high() ? Interval.TOO_LOW : Interval.COVERS;
        return new Verdict(
                found.agreement().agrees(),
                galleries.contains(Galleries.of(build.unit().network(), fault)),
                interval,
                galleries.size());
    }

    /** Another unit of the same build; each size that cannot be as drawn is as the build has it. */
    private Tolerances.Twin drawn(Random random) {
        Map<String, Double> sizes = new HashMap<>();
        for (WearSize size : build.dimensions()) {
            double value = size.value() + tolerances.sizes().getOrDefault(size.name(), 0.0) * random.nextGaussian();
            if (build.with(size, value).isPresent()) {
                sizes.put(size.name(), value);
            }
        }
        Map<String, Double> springs = new HashMap<>();
        for (Placed placed : build.unit().network().parts()) {
            if (placed.part() instanceof SpoolValve) {
                springs.put(placed.name(), 1 + Tolerances.SPRING * random.nextGaussian());
            }
        }
        return new Tolerances.Twin(build, sizes, springs, 1 + Tolerances.SOLENOID * random.nextGaussian());
    }

    /** What the gauges show on a twin, with all errors; empty where a state of it is not found. */
    Optional<List<GaugeReading>> readings(Tolerances.Twin twin, List<UnitFault.Sized> faults, Random random) {
        return onStand(twin, faults, random).flatMap(stand -> stand.read(places));
    }

    private Optional<OnStand> onStand(Tolerances.Twin twin, List<UnitFault.Sized> faults, Random random) {
        Adjustable own = twin.adjustable();
        List<UnitFault> all = UnitFaults.of(own);
        return UnitFault.in(
                        own,
                        faults.stream()
                                .map(sized -> all.stream()
                                        .filter(one ->
                                                one.name().equals(sized.fault().name()))
                                        .findFirst()
                                        .orElseThrow()
                                        .of(sized.size()))
                                .toList())
                .map(unit -> new OnStand(unit, twin.pilot(), random));
    }

    /** A twin with its thermometer: what is read twice at one test point is read of one state. */
    private final class OnStand {
        private final Transmission unit;
        private final double pilot;
        private final Random random;
        private final double common;
        private final SteadySolver solver;
        private final Map<TestPoint, Solution> states = new HashMap<>();

        OnStand(Transmission unit, double pilot, Random random) {
            this.unit = unit;
            this.pilot = pilot;
            this.random = random;
            common = Tolerances.COMMON_TEMPERATURE * random.nextGaussian();
            solver = new SteadySolver(unit.network());
        }

        /** What gauges show at places, whose deviations are those of the gauges; empty where a state is not found. */
        Optional<List<GaugeReading>> read(List<GaugeReading> at) {
            List<GaugeReading> readings = new ArrayList<>();
            for (GaugeReading place : at) {
                if (!states.containsKey(place.at())) {
                    TestPoint real = place.at()
                            .atSpeed(place.at().speed() * (1 + Tolerances.SPEED * random.nextGaussian()))
                            .atTemperature(
                                    place.at().temperature() + common + Tolerances.TEMPERATURE * random.nextGaussian());
                    Optional<Solution> found =
                            solver.solve(piloted(real.conditions(unit), pilot)).state();
                    if (found.isEmpty()) {
                        return Optional.empty();
                    }
                    states.put(place.at(), found.get());
                }
                Solution state = states.get(place.at());
                double shown = place.meter().reads() == Meter.Reads.FLOW
                        ? state.flow(place.meter().name())
                        : state.pressure(place.meter().node());
                double value = shown + place.deviation() * random.nextGaussian();
                readings.add(new GaugeReading(place.meter(), place.at(), place.sense(), value, place.deviation()));
            }
            return Optional.of(readings);
        }
    }

    private Conditions piloted(Conditions own, double times) {
        Map<String, Double> commands = new HashMap<>(own.commands());
        String solenoid = build.unit().command().pilot().orElseThrow().solenoid();
        commands.computeIfPresent(solenoid, (name, asked) -> asked * times);
        return own.commanding(commands);
    }

    /**
     * Twins with one fault each, of which the readings leave three causes or more, those of one gallery as one: over these, how many of
     * the causes are left after the reading that is proposed, and after one at random.
     */
    String next(int count, long seed) {
        Random random = new Random(seed);
        List<Double> proposed = new ArrayList<>();
        List<Double> chance = new ArrayList<>();
        int kept = 0;
        while (proposed.size() < count) {
            UnitFault fault = faults.get(random.nextInt(faults.size()));
            double way = CauseBelief.drawn(fault.kind().graded(), random.nextDouble());
            Optional<OnStand> stand = onStand(drawn(random), List.of(fault.of(fault.sizeAt(way))), random);
            Optional<List<GaugeReading>> read = stand.flatMap(one -> one.read(places));
            if (read.isEmpty()) {
                continue;
            }
            GaugeFindings found = GaugeStudy.of(table, read.get());
            int before = galleries(found).size();
            List<NextReading> next = before < 3 ? List.of() : NextReadings.of(build, found, 1);
            if (next.isEmpty()) {
                kept += before < 3 ? 0 : 1;
                continue;
            }
            List<GaugeReading.Row> all = NextReadings.candidates(build.unit(), read.get());
            OptionalInt best = after(stand.get(), read.get(), found, next.get(0).row());
            OptionalInt other = after(stand.get(), read.get(), found, all.get(random.nextInt(all.size())));
            if (best.isPresent() && other.isPresent()) {
                proposed.add((double) best.getAsInt() / before);
                chance.add((double) other.getAsInt() / before);
                System.out.printf(
                        Locale.ROOT,
                        "%-36s %d causes; %d after %s %s at %.0f rpm, %d after one at random%n",
                        fault.name(),
                        before,
                        best.getAsInt(),
                        next.get(0).row().meter().name(),
                        next.get(0).row().at().range(),
                        next.get(0).row().at().speed() * 60,
                        other.getAsInt());
            }
        }
        double best =
                proposed.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        double other =
                chance.stream().mapToDouble(Double::doubleValue).average().orElse(0);
        return String.format(
                Locale.ROOT,
                "%d groups of three or more: left after the proposed reading %.2f of the causes, after one at random %.2f, ratio %.2f;"
                        + " for %d groups none was worth proposing",
                proposed.size(),
                best,
                other,
                best / other,
                kept);
    }

    /** Causes left after one reading more; of those that nothing speaks for before, none comes back. */
    private OptionalInt after(OnStand stand, List<GaugeReading> taken, GaugeFindings found, GaugeReading.Row row) {
        double usual =
                taken.stream().mapToDouble(GaugeReading::deviation).average().orElseThrow();
        GaugeReading place = new GaugeReading(
                row.meter(),
                row.at(),
                GaugeReading.Sense.EXACT,
                0,
                row.meter().reads() == Meter.Reads.FLOW ? NextReadings.LEAST_FLOW : usual);
        List<UnitFault> likely = found.causes().stream()
                .filter(cause -> cause.share() > 1e-4)
                .map(Cause::fault)
                .toList();
        return stand.read(List.of(place))
                .map(one -> {
                    List<GaugeReading> all = new ArrayList<>(taken);
                    all.addAll(one);
                    GaugeTable more = GaugeTable.of(build, likely, all, () -> {});
                    GaugeFindings now = GaugeStudy.of(more, all);
                    return now.agreement().agrees()
                            ? OptionalInt.empty()
                            : OptionalInt.of(galleries(now).size());
                })
                .orElse(OptionalInt.empty());
    }

    /** Of each fault that can show and has a degree: the size told as hidden, over the one from which new solves say that it shows. */
    Map<String, Double> hidden() {
        Map<String, Double> ratios = new TreeMap<>();
        GaugeFindings found = GaugeStudy.of(table, places);
        for (CauseCurve curve : table.curves()) {
            UnitFault fault = curve.fault();
            double told = truth(fault, found).hidden();
            if (truth(fault, found).visible() && told > 0) {
                double low = 0;
                double high = 0;
                while (high < 1 && !shows(fault, high)) {
                    low = high;
                    high = Math.min(high + 0.02, 1);
                }
                for (int i = 0; i < 6; i++) {
                    double middle = (low + high) / 2;
                    if (shows(fault, middle)) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                ratios.put(fault.name(), told / fault.sizeAt((low + high) / 2));
            }
        }
        return ratios;
    }

    private boolean shows(UnitFault fault, double way) {
        return table.model()
                .along(table.model().series(), List.of(List.of(fault.of(fault.sizeAt(way)))))
                .get(0)
                .filter(expected -> misfit.distance(table.sound(), expected) > GaugeFindings.VISIBLE)
                .isPresent();
    }

    /**
     * Twins with two faults, not of one gallery, of which each would show alone: how often both are told, as one pair and each in any of
     * the leading pairs.
     */
    String two(int count, long seed) {
        Random random = new Random(seed);
        int all = 0;
        int pair = 0;
        int each = 0;
        int alone = 0;
        while (all < count) {
            List<UnitFault.Sized> two = List.of(shown(random), shown(random));
            if (two.get(0).fault().part().equals(two.get(1).fault().part())
                    || gallery(two.get(0).fault()).equals(gallery(two.get(1).fault()))) {
                continue;
            }
            Optional<List<GaugeReading>> read = readings(drawn(random), two, random);
            if (read.isEmpty()) {
                continue;
            }
            all++;
            GaugeFindings found = GaugeStudy.of(table, read.get());
            Set<String> truth =
                    Set.of(gallery(two.get(0).fault()), gallery(two.get(1).fault()));
            Set<Set<String>> told = new HashSet<>();
            Set<String> any = new HashSet<>();
            double whole = found.pairs().stream()
                    .mapToDouble(GaugeFindings.Pair::share)
                    .sum();
            double sum = 0;
            for (GaugeFindings.Pair one : found.pairs()) {
                if (sum < GaugeFindings.LEADING * whole) {
                    sum += one.share();
                    told.add(new HashSet<>(List.of(
                            gallery(one.one().fault()), gallery(one.other().fault()))));
                }
            }
            told.forEach(any::addAll);
            pair += told.contains(truth) ? 1 : 0;
            each += any.containsAll(truth) ? 1 : 0;
            alone += whole < 0.5 ? 1 : 0;
            if (LOG) {
                System.out.printf(
                        Locale.ROOT,
                        "%s %.3g + %s %.3g: pairs %.3f none %.3f, %d told%s%s%n",
                        two.get(0).fault().name(),
                        two.get(0).size(),
                        two.get(1).fault().name(),
                        two.get(1).size(),
                        whole,
                        found.none(),
                        told.size(),
                        told.contains(truth) ? " PAIR" : "",
                        any.containsAll(truth) ? " EACH" : "");
            }
        }
        return String.format(
                Locale.ROOT,
                "%d with two faults: the pair among the leading ones %.3f, both among those of the leading pairs %.3f; one alone or"
                        + " none believed rather %.3f",
                all,
                (double) pair / all,
                (double) each / all,
                (double) alone / all);
    }

    private String gallery(UnitFault fault) {
        return Galleries.of(build.unit().network(), fault);
    }

    /** A fault drawn until it shows alone. */
    private UnitFault.Sized shown(Random random) {
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
    private Set<String> galleries(GaugeFindings found) {
        Set<String> galleries = new HashSet<>();
        found.groups()
                .forEach(group -> group.causes()
                        .forEach(
                                cause -> galleries.add(Galleries.of(build.unit().network(), cause.fault()))));
        return galleries;
    }

    /** By hand: {@code Twins BUILD COUNT SEED [one|healthy|next|two|hidden]...}. */
    public static void main(String[] arguments) {
        long start = System.nanoTime();
        Twins twins = new Twins(arguments[0]);
        int count = Integer.parseInt(arguments[1]);
        long seed = Long.parseLong(arguments[2]);
        System.out.printf(
                Locale.ROOT,
                "table in %.1f s, %d sizes solved%n",
                (System.nanoTime() - start) / 1e9,
                twins.table.curves().stream()
                        .mapToInt(curve -> curve.nodes().size())
                        .sum());
        for (String what : List.of(arguments).subList(3, arguments.length)) {
            start = System.nanoTime();
            System.out.println(
                    switch (what) {
                        case "one" -> twins.sick(count, seed).toString();
                        case "healthy" -> "healthy called sound: " + twins.healthy(count, seed + 1) + " of " + count;
                        case "next" -> twins.next(count, seed + 2);
                        case "two" -> twins.two(count, seed + 3);
                        case "hidden" -> "told as hidden over what is: " + twins.hidden();
                        default -> "what is " + what;
                    });
            System.out.printf(Locale.ROOT, "%s: %.1f s%n", what, (System.nanoTime() - start) / 1e9);
        }
    }
}

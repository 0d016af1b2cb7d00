package hotidle.study.gauge;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;

/**
 * Made-up units of shuttle-five that differ from their build as real ones do, with one known fault or none, whose eight usual readings
 * are taken with errors of speed, temperature and gauge, and then diagnosed. The truth is solved anew, at the drawn sizes; the diagnosis
 * sees the build and the readings alone.
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

    GaugeTable table() {
        return table;
    }

    List<GaugeReading> usual() {
        return places;
    }

    private static TestPoint at(double rpm, String range) {
        return new TestPoint(rpm / 60, HOT, range, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** The eight usual readings, as a sound unit has them. */
    private List<GaugeReading> places() {
        Map<String, TestPoint> points = new java.util.LinkedHashMap<>();
        points.put("line 1", at(650, "first"));
        points.put("low", at(650, "first"));
        points.put("line 2", at(650, "reverse"));
        points.put("reverse", at(650, "reverse"));
        points.put("direct", at(650, "third"));
        points.put("overdrive", at(650, "fourth"));
        points.put("line 3", at(1500, "third"));
        points.put("converter", at(1500, "park"));
        List<GaugeReading> places = new ArrayList<>();
        SteadySolver solver = new SteadySolver(build.unit().network());
        points.forEach((name, point) -> {
            Meter meter =
                    Meter.of(build.unit(), name.substring(0, name.indexOf(' '))).orElseThrow();
            double sound = solver.solve(point.conditions(build.unit()))
                    .state()
                    .orElseThrow()
                    .pressure(meter.node());
            places.add(new GaugeReading(meter, point, GaugeReading.Sense.EXACT, sound, GAUGE * sound));
        });
        return places;
    }

    /** What was found of some twins. */
    static final class Tally {
        int all;
        int visible;
        int contained;
        int covered;
        int unsolved;
        int disagree;
        int invisibleAgree;
        final List<Integer> groups = new ArrayList<>();
        final Map<String, int[]> byKind = new TreeMap<>();

        double containedShare() {
            return (double) contained / visible;
        }

        double coverage() {
            return (double) covered / visible;
        }

        double meanGroup() {
            return groups.stream().mapToInt(Integer::intValue).average().orElse(0);
        }

        int medianGroup() {
            return groups.stream().sorted().skip(groups.size() / 2).findFirst().orElse(0);
        }

        @Override
        public String toString() {
            StringBuilder text = new StringBuilder(String.format(
                    java.util.Locale.ROOT,
                    "%d twins, %d visible, %d not solved; true cause in the 95 %% group %.3f, in the 90 %% interval %.3f, group mean %.2f median %d; visible called sick %.3f; invisible called sound %.3f%n",
                    all,
                    visible,
                    unsolved,
                    containedShare(),
                    coverage(),
                    meanGroup(),
                    medianGroup(),
                    (double) disagree / visible,
                    (double) invisibleAgree / Math.max(all - visible - unsolved, 1)));
            byKind.forEach((kind, count) -> text.append(String.format(
                    java.util.Locale.ROOT,
                    "  %-20s visible %d, contained %d, covered %d%n",
                    kind,
                    count[0],
                    count[1],
                    count[2])));
            return text.toString();
        }
    }

    /** Twins without a fault: how many are called sound. */
    int healthy(int count, long seed) {
        Random random = new Random(seed);
        int sound = 0;
        for (int i = 0; i < count; i++) {
            Optional<List<GaugeReading>> read = readings(tolerances.twin(random), Optional.empty(), random);
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
            UnitFault fault = faults.get(which);
            boolean graded = fault.kind().graded();
            double way = CauseBelief.drawn(graded, random.nextDouble());
            tally.all++;
            Optional<List<GaugeReading>> read = readings(
                    tolerances.twin(random), Optional.of(new UnitFault.Sized(fault, fault.sizeAt(way))), random);
            CauseCurve curve = table.curves().get(which);
            if (read.isEmpty() || !curve.known()) {
                tally.unsolved++;
                continue;
            }
            GaugeFindings found = GaugeStudy.of(table, read.get());
            if (misfit.distance(table.sound(), curve.at(way)) > GaugeFindings.VISIBLE) {
                visible(tally, fault, fault.sizeAt(way), found);
            } else {
                tally.invisibleAgree += found.agreement().agrees() ? 1 : 0;
            }
        }
        return tally;
    }

    private void visible(Tally tally, UnitFault fault, double size, GaugeFindings found) {
        Network network = build.unit().network();
        String own = Galleries.of(network, fault);
        tally.visible++;
        tally.disagree += found.agreement().agrees() ? 0 : 1;
        Set<String> galleries = new HashSet<>();
        double sum = 0;
        double whole = 1 - found.none();
        boolean in = false;
        for (Cause cause : found.causes()) {
            if (sum >= GaugeFindings.LEADING * whole) {
                break;
            }
            sum += cause.share();
            galleries.add(Galleries.of(network, cause.fault()));
            in |= Galleries.of(network, cause.fault()).equals(own);
        }
        Cause truth = found.causes().stream()
                .filter(cause -> cause.fault().name().equals(fault.name()))
                .findFirst()
                .orElseThrow();
        boolean covered = (truth.low() <= size && size <= truth.high()) || fault.least() == fault.most();
        tally.contained += in ? 1 : 0;
        tally.covered += covered ? 1 : 0;
        tally.groups.add(galleries.size());
        int[] kind = tally.byKind.computeIfAbsent(fault.kind().word(), word -> new int[3]);
        kind[0]++;
        kind[1] += in ? 1 : 0;
        kind[2] += covered ? 1 : 0;
    }

    /** What the gauges show on a twin, with all errors; empty where a state of it is not found. */
    Optional<List<GaugeReading>> readings(Tolerances.Twin twin, Optional<UnitFault.Sized> fault, Random random) {
        Adjustable own = twin.adjustable();
        Optional<Transmission> unit = fault.isEmpty()
                ? Optional.of(own.unit())
                : UnitFaults.of(own).stream()
                        .filter(one -> one.name().equals(fault.get().fault().name()))
                        .findFirst()
                        .flatMap(one -> one.in(own, fault.get().size()));
        if (unit.isEmpty()) {
            return Optional.empty();
        }
        double common = Tolerances.COMMON_TEMPERATURE * random.nextGaussian();
        Map<TestPoint, Solution> states = new HashMap<>();
        SteadySolver solver = new SteadySolver(unit.get().network());
        List<GaugeReading> readings = new ArrayList<>();
        for (GaugeReading place : places) {
            Solution state = states.get(place.at());
            if (state == null) {
                TestPoint real = place.at()
                        .atSpeed(place.at().speed() * (1 + Tolerances.SPEED * random.nextGaussian()))
                        .atTemperature(
                                place.at().temperature() + common + Tolerances.TEMPERATURE * random.nextGaussian());
                Optional<Solution> found = solver.solve(piloted(real.conditions(unit.get()), twin.pilot()))
                        .state();
                if (found.isEmpty()) {
                    return Optional.empty();
                }
                state = found.get();
                states.put(place.at(), state);
            }
            double value = state.pressure(place.meter().node()) + place.deviation() * random.nextGaussian();
            readings.add(new GaugeReading(place.meter(), place.at(), place.sense(), value, place.deviation()));
        }
        return Optional.of(readings);
    }

    private Conditions piloted(Conditions own, double times) {
        Map<String, Double> commands = new HashMap<>(own.commands());
        commands.computeIfPresent("pressure-solenoid", (name, asked) -> asked * times);
        return own.commanding(commands);
    }

    /** By hand: {@code Twins BUILD COUNT SEED}. */
    public static void main(String[] arguments) {
        long start = System.nanoTime();
        Twins twins = new Twins(arguments[0]);
        int count = Integer.parseInt(arguments[1]);
        long seed = Long.parseLong(arguments[2]);
        System.out.printf(java.util.Locale.ROOT, "table in %.1f s%n", (System.nanoTime() - start) / 1e9);
        System.out.println(twins.sick(count, seed));
        System.out.println("healthy called sound: " + twins.healthy(count, seed + 1) + " of " + count);
        System.out.printf(java.util.Locale.ROOT, "%.1f s in all%n", (System.nanoTime() - start) / 1e9);
    }
}

package hotidle.study.gauge;

import hotidle.network.Network;
import hotidle.newton.Series;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * Which reading to take next.
 *
 * <pre>
 * Candidates  every tap in every range, and the flow of the cooler, at idle, 1000 and 1500 rpm, at the temperatures of the readings taken
 *             and hot, with the command as it was and at its highest; nothing that was read already, nothing at stall
 * Causes      those of the leading groups, one for each gallery, whose leaks no gauge tells apart
 * Value       expected information on the cause, Σ g·KL(p_g, Σ g·p_g), g its share and p_g a normal density about what it expects, its
 *             deviation that of the candidate on a unit with that fault, gauge included, and what its size leaves open;
 *             D. V. Lindley, Ann. Math. Stat. 27 (1956) 986 (from memory); the integral by the midpoint rule
 * Not counted that tolerances move the readings taken and the new one together
 * </pre>
 */
public final class NextReadings {

    private static final double[] RPM = {1000, 1500};
    private static final int MOST_CAUSES = 6;
    private static final int STEPS = 240;
    private static final double REACH = 5;

    private NextReadings() {}

    /** A cause with all that no gauge tells apart from it. */
    private record Hypothesis(Cause cause, double share) {}

    /** What a cause expects at each candidate, and how sure it is. */
    private record Predicted(RealVector mean, RealVector deviation) {}

    /**
     * The readings that tell most, the best first, each of another tap or at another point; empty where there is nothing to tell apart.
     *
     * @param most how many at most
     */
    public static List<NextReading> of(Adjustable build, GaugeFindings findings, int most) {
        List<Hypothesis> causes = hypotheses(build.unit().network(), findings);
        if (causes.size() < 2) {
            return List.of();
        }
        List<GaugeReading.Row> rows = candidates(build.unit(), findings.readings());
        Tolerances tolerances = Tolerances.of(build);
        GaugeModel all = new GaugeModel(tolerances, tolerances.shifts(), rows);
        List<GaugeReading.Row> solved =
                rows.stream().filter(row -> !all.unsolved().contains(row.at())).toList();
        GaugeModel model = solved.size() == rows.size() ? all : new GaugeModel(tolerances, tolerances.shifts(), solved);
        Expectation sound = model.sound(model.series());
        double[] gauge = gauges(findings.readings(), model, sound);
        List<Optional<Predicted>> predicted = causes.parallelStream()
                .map(one -> predicted(build, model, one.cause(), gauge))
                .toList();
        if (predicted.stream().anyMatch(Optional::isEmpty)) {
            return List.of();
        }
        List<Predicted> known = predicted.stream().map(Optional::orElseThrow).toList();
        double[] share = shares(causes);
        double whole = -DoubleStream.of(share).map(g -> g * Math.log(g)).sum();
        List<NextReading> found = new ArrayList<>();
        for (int i = 0; i < solved.size(); i++) {
            int row = i;
            found.add(new NextReading(
                    solved.get(i),
                    information(known, share, i) / whole,
                    IntStream.range(0, causes.size())
                            .mapToObj(k -> new NextReading.Prediction(
                                    causes.get(k).cause(), known.get(k).mean.getEntry(row)))
                            .toList(),
                    sound.mean().getEntry(i),
                    Math.hypot(gauge[i], Math.sqrt(sound.covariance().getEntry(i, i)))));
        }
        return different(found, most);
    }

    /** A reading that tells less of what is missing is not worth taking (chosen) [-]. */
    private static final double WORTH = 0.05;

    /** The best of them, no two of the same tap and range. */
    private static List<NextReading> different(List<NextReading> found, int most) {
        List<NextReading> chosen = new ArrayList<>();
        found.stream()
                .sorted(Comparator.comparingDouble((NextReading next) -> -next.information()))
                .forEach(next -> {
                    boolean other = chosen.stream()
                            .noneMatch(
                                    one -> one.row().meter().equals(next.row().meter())
                                            && one.row()
                                                    .at()
                                                    .range()
                                                    .equals(next.row().at().range()));
                    if (other && chosen.size() < most && next.information() > WORTH) {
                        chosen.add(next);
                    }
                });
        return chosen;
    }

    private static List<Hypothesis> hypotheses(Network network, GaugeFindings findings) {
        Map<String, Hypothesis> found = new LinkedHashMap<>();
        for (GaugeFindings.Group group : findings.groups()) {
            for (Cause cause : group.causes()) {
                found.merge(
                        Galleries.of(network, cause.fault()),
                        new Hypothesis(cause, cause.share()),
                        (before, now) -> new Hypothesis(before.cause(), before.share() + now.share()));
            }
        }
        return found.values().stream()
                .sorted(Comparator.comparingDouble((Hypothesis one) -> -one.share()))
                .limit(MOST_CAUSES)
                .toList();
    }

    private static double[] shares(List<Hypothesis> causes) {
        double sum = causes.stream().mapToDouble(Hypothesis::share).sum();
        return causes.stream().mapToDouble(one -> one.share() / sum).toArray();
    }

    /** What a cause expects at each candidate: its best size, and half the difference between the ends of its interval as deviation. */
    private static Optional<Predicted> predicted(Adjustable build, GaugeModel model, Cause cause, double[] gauge) {
        Series series = model.series();
        var best = model.along(series, List.of(List.of(cause.fault().of(cause.size()))))
                .get(0);
        if (best.isEmpty()) {
            return Optional.empty();
        }
        var low = cause.fault().in(build, cause.low()).flatMap(unit -> model.read(series, unit));
        var high = cause.fault().in(build, cause.high()).flatMap(unit -> model.read(series, unit));
        double[] deviation = new double[gauge.length];
        for (int i = 0; i < gauge.length; i++) {
            double size = low.isPresent() && high.isPresent() ? (high.get()[i] - low.get()[i]) / INTERVAL : 0;
            double own = best.get().covariance().getEntry(i, i);
            deviation[i] = Math.sqrt(own + size * size + gauge[i] * gauge[i]);
        }
        return Optional.of(new Predicted(best.get().mean(), new ArrayRealVector(deviation)));
    }

    /** Standard deviations between the ends of an interval of 90 %. */
    private static final double INTERVAL = 2 * 1.645;

    private static double information(List<Predicted> predicted, double[] share, int row) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double narrow = Double.POSITIVE_INFINITY;
        for (Predicted one : predicted) {
            low = Math.min(low, one.mean.getEntry(row) - REACH * one.deviation.getEntry(row));
            high = Math.max(high, one.mean.getEntry(row) + REACH * one.deviation.getEntry(row));
            narrow = Math.min(narrow, one.deviation.getEntry(row));
        }
        int steps = (int) Math.max(STEPS, Math.min(4 * (high - low) / narrow, 20 * STEPS));
        double width = (high - low) / steps;
        double sum = 0;
        for (int k = 0; k < steps; k++) {
            double y = low + (k + 0.5) * width;
            double mixed = 0;
            double own = 0;
            for (int g = 0; g < share.length; g++) {
                double z = (y - predicted.get(g).mean.getEntry(row))
                        / predicted.get(g).deviation.getEntry(row);
                double density =
                        Math.exp(-z * z / 2) / predicted.get(g).deviation.getEntry(row);
                mixed += share[g] * density;
                own += density > 0 ? share[g] * density * Math.log(density) : 0;
            }
            sum += mixed > 0 ? (own - mixed * Math.log(mixed)) * width : 0;
        }
        return Math.max(sum / Math.sqrt(2 * Math.PI), 0);
    }

    /** Of a gauge, as a share of its reading (common practice) [-]. */
    private static final double USUAL = 0.02;

    /** A measured flow is no better than this: 0.1 L/min (assumed) [m³/s]. */
    static final double LEAST_FLOW = 1e-4 / 60;

    /** The deviation of the gauge at each candidate: as the pressure gauges had that were used, but {@link #USUAL} of it at least. */
    private static double[] gauges(List<GaugeReading> readings, GaugeModel model, Expectation sound) {
        double pressure = readings.stream()
                .filter(reading -> reading.meter().reads() == Meter.Reads.PRESSURE)
                .mapToDouble(GaugeReading::deviation)
                .average()
                .orElse(UNKNOWN_GAUGE);
        double[] gauges = new double[sound.mean().getDimension()];
        for (int i = 0; i < gauges.length; i++) {
            boolean flow = model.rows().get(i).meter().reads() == Meter.Reads.FLOW;
            gauges[i] = Math.max(USUAL * Math.abs(sound.mean().getEntry(i)), flow ? LEAST_FLOW : pressure);
        }
        return gauges;
    }

    /** Of a pressure gauge where none was used: 2 psi (assumed) [Pa]. */
    private static final double UNKNOWN_GAUGE = 13_790;

    /** Every reading that could be taken. */
    static List<GaugeReading.Row> candidates(Transmission unit, List<GaugeReading> taken) {
        double idle = AcceptanceSheet.idle(unit).speed();
        double hot = AcceptanceSheet.idle(unit).temperatures().getOrDefault(TestPoint.SUMP, Double.NaN);
        double read = taken.stream()
                .mapToDouble(reading -> reading.at().temperature())
                .max()
                .orElse(hot);
        List<Double> temperatures = Stream.of(Math.rint(read), Math.rint(Math.max(hot, read)))
                .distinct()
                .toList();
        List<OptionalDouble> commands =
                new ArrayList<>(List.of(taken.get(0).at().commanded()));
        unit.commanded()
                .flatMap(command -> command.pilot())
                .map(pilot -> pilot.lineByTorque().highest())
                .filter(highest -> highest > taken.get(0).at().commanded().orElse(highest))
                .ifPresent(highest -> commands.add(OptionalDouble.of(highest)));
        List<GaugeReading.Row> rows = new ArrayList<>();
        for (Range range : unit.ranges()) {
            for (double speed : DoubleStream.concat(
                            DoubleStream.of(idle), DoubleStream.of(RPM).map(rpm -> rpm / 60))
                    .toArray()) {
                for (double temperature : temperatures) {
                    for (OptionalDouble command : commands) {
                        TestPoint at = new TestPoint(
                                speed,
                                temperature,
                                range.name(),
                                command,
                                command.isPresent()
                                        ? OptionalDouble.empty()
                                        : taken.get(0).at().torque());
                        for (Meter meter : Meter.of(unit)) {
                            GaugeReading.Row row = new GaugeReading.Row(meter, at);
                            if (allowed(unit, meter)
                                    && taken.stream().noneMatch(one -> one.row().equals(row))) {
                                rows.add(row);
                            }
                        }
                    }
                }
            }
        }
        return rows;
    }

    private static boolean allowed(Transmission unit, Meter meter) {
        return meter.reads() == Meter.Reads.PRESSURE
                || unit.network().part(meter.name()).orElseThrow().part() instanceof hotidle.part.Cooler;
    }
}

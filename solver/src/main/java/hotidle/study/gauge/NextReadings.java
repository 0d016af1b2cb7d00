package hotidle.study.gauge;

import hotidle.network.Network;
import hotidle.transmission.Adjustable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.RealVector;

/**
 * Which reading to take next.
 *
 * <pre>
 * Candidates  {@link CandidateReadings}, where the sound unit has a state
 * Causes      those of the leading groups, one for each gallery, whose leaks no gauge tells apart; one of which no state is found is left
 *             out
 * Value       expected information on the cause, Σ g·KL(p_g, Σ g·p_g), g its share and p_g the density of what is read if it is the
 *             one, {@link OutcomeMixture}; D. V. Lindley, Ann. Math. Stat. 27 (1956) 986 (from memory); the integral by the midpoint
 *             rule
 * Ahead       one reading: pairs chosen together do no better on average over twins (DEVELOPERS.md, Decisions)
 * </pre>
 */
public final class NextReadings {

    private static final int MOST_CAUSES = 8;
    /** Steps of the integral (ours). */
    private static final int FEWEST = 60;

    private static final int MOST = 1000;

    private NextReadings() {}

    /** A cause with all that no gauge tells apart from it. */
    private record Hypothesis(List<Cause> alike, double share) {

        /** The most likely of them. */
        Cause cause() {
            return alike.get(0);
        }
    }

    /**
     * The readings that tell most, the best first, each of another tap or at another point; empty where there is nothing to tell apart.
     *
     * @param most how many at most
     */
    public static List<NextReading> of(Adjustable build, GaugeFindings findings, int most) {
        return of(build, findings, most, () -> {});
    }

    /**
     * The same for who may stop waiting.
     *
     * @param step called after each cause, from any thread
     */
    static List<NextReading> of(Adjustable build, GaugeFindings findings, int most, Runnable step) {
        List<Hypothesis> leading = hypotheses(build.unit().network(), findings);
        if (leading.size() < 2) {
            return List.of();
        }
        List<GaugeReading.Row> rows = CandidateReadings.of(build.unit(), findings.readings());
        Tolerances tolerances = Tolerances.of(build);
        List<Tolerances.Shift> shifts = tolerances.shifts();
        GaugeModel all = new GaugeModel(tolerances, shifts, joined(findings.readings(), rows));
        List<GaugeReading.Row> solved =
                rows.stream().filter(row -> !all.unsolved().contains(row.at())).toList();
        GaugeModel model = solved.size() == rows.size()
                ? all
                : new GaugeModel(tolerances, shifts, joined(findings.readings(), solved));
        int taken = findings.readings().size();
        Expectation.Slopes sound = model.soundSlopes(model.series());
        double[] gauge = gauges(findings.readings(), solved, sound.mean().getSubVector(taken, solved.size()));
        List<Optional<OutcomeMixture>> predicted = OneByOne.of(leading, one -> {
            Optional<OutcomeMixture> mixture = OutcomeMixture.of(one.cause(), model, findings.readings(), gauge);
            step.run();
            return mixture;
        });
        List<Hypothesis> causes = IntStream.range(0, leading.size())
                .filter(k -> predicted.get(k).isPresent())
                .mapToObj(leading::get)
                .toList();
        if (causes.size() < 2) {
            return List.of();
        }
        List<OutcomeMixture> known =
                predicted.stream().flatMap(Optional::stream).toList();
        double[] share = shares(causes);
        double whole = -DoubleStream.of(share).map(g -> g * Math.log(g)).sum();
        List<NextReading> found = IntStream.range(0, solved.size())
                .parallel()
                .mapToObj(i -> new NextReading(
                        solved.get(i),
                        information(known, share, i) / whole,
                        IntStream.range(0, causes.size())
                                .mapToObj(k -> new NextReading.Prediction(
                                        causes.get(k).cause(),
                                        causes.get(k).alike(),
                                        known.get(k).best().getEntry(i)))
                                .toList(),
                        sound.mean().getEntry(taken + i),
                        Math.hypot(gauge[i], Math.sqrt(model.variance(sound, taken + i)))))
                .toList();
        return different(found, most);
    }

    private static List<GaugeReading.Row> joined(List<GaugeReading> taken, List<GaugeReading.Row> further) {
        return Stream.concat(taken.stream().map(GaugeReading::row), further.stream())
                .toList();
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
                        new Hypothesis(List.of(cause), cause.share()),
                        (before, now) -> new Hypothesis(
                                Stream.concat(before.alike().stream(), now.alike().stream())
                                        .toList(),
                                before.share() + now.share()));
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

    private static double information(List<OutcomeMixture> predicted, double[] share, int row) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        double narrow = Double.POSITIVE_INFINITY;
        for (OutcomeMixture one : predicted) {
            low = Math.min(low, one.low(row));
            high = Math.max(high, one.high(row));
            narrow = Math.min(narrow, one.narrow(row));
        }
        int steps = (int) Math.max(FEWEST, Math.min(2 * (high - low) / narrow, MOST));
        double width = (high - low) / steps;
        double sum = 0;
        for (int k = 0; k < steps; k++) {
            double y = low + (k + 0.5) * width;
            double mixed = 0;
            double own = 0;
            for (int g = 0; g < share.length; g++) {
                double density = predicted.get(g).density(row, y);
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
    private static double[] gauges(List<GaugeReading> readings, List<GaugeReading.Row> rows, RealVector sound) {
        double pressure = readings.stream()
                .filter(reading -> reading.meter().reads() == Meter.Reads.PRESSURE)
                .mapToDouble(GaugeReading::deviation)
                .average()
                .orElse(UNKNOWN_GAUGE);
        double[] gauges = new double[rows.size()];
        for (int i = 0; i < gauges.length; i++) {
            boolean flow = rows.get(i).meter().reads() == Meter.Reads.FLOW;
            gauges[i] = Math.max(USUAL * Math.abs(sound.getEntry(i)), flow ? LEAST_FLOW : pressure);
        }
        return gauges;
    }

    /** Of a pressure gauge where none was used: 2 psi (assumed) [Pa]. */
    private static final double UNKNOWN_GAUGE = 13_790;
}

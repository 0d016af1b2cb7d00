package hotidle.study.gauge;

import hotidle.assess.Figures;
import hotidle.fault.UnitFault;
import hotidle.network.Network;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Finds what gauge readings say of a unit.
 *
 * <pre>
 * Agreement  χ² of the readings about the sound unit, against its distribution; readings below or above a value disagree where each of
 *            them alone has less than that probability
 * Causes     share of each fault: its {@link CauseBelief} over the sum of all and of none of these. Before the readings all kinds at all
 *            parts count the same (assumed)
 * None       the unit differs by something else: each reading by {@link #ELSEWHERE} of its mean, independent of the others (assumed)
 * Groups     leaks of one gallery count as one cause, {@link Galleries}; the most likely of these that hold
 *            {@link GaugeFindings#LEADING} together are told. One joins the first group whose leader it can imitate: some size of it
 *            stands within {@link #ALIKE} deviations of what the leader makes the readings
 * </pre>
 */
public final class GaugeStudy {

    /** What else may be wrong moves a reading by this share of it (assumed) [-]. */
    private static final double ELSEWHERE = 0.3;

    /** Nearer to each other than this two causes cannot be told apart by the readings (chosen) [-]. */
    private static final double ALIKE = 1;

    private final GaugeTable table;
    private final List<GaugeReading> readings;
    private final Misfit misfit;

    private GaugeStudy(GaugeTable table, List<GaugeReading> readings) {
        this.table = table;
        this.readings = readings;
        misfit = new Misfit(readings);
    }

    /**
     * What readings say of a build.
     *
     * @param step called after each fault that was solved, from any thread
     * @throws UnsolvedPointException where the unit as built has no state at a test point
     */
    public static GaugeFindings of(Adjustable build, List<GaugeReading> readings, Runnable step) {
        return of(GaugeTable.of(build, readings, step), readings);
    }

    /** Whether readings agree with a build; without faults, of which none is solved. */
    static GaugeFindings agreement(Adjustable build, List<GaugeReading> readings) {
        return alone(GaugeTable.of(build, List.of(), readings, () -> {}), readings);
    }

    /** What readings say, of whose places a table was made. */
    static GaugeFindings of(GaugeTable table, List<GaugeReading> readings) {
        return new GaugeStudy(table, readings).findings(true);
    }

    /** The same of single faults alone. */
    static GaugeFindings alone(GaugeTable table, List<GaugeReading> readings) {
        return new GaugeStudy(table, readings).findings(false);
    }

    private GaugeFindings findings(boolean paired) {
        GaugeFindings.Agreement agreement = agreement();
        Map<CauseCurve, CauseBelief> beliefs = new LinkedHashMap<>();
        List<String> notSolved = new ArrayList<>();
        for (CauseCurve curve : table.curves()) {
            if (curve.known()) {
                beliefs.put(curve, CauseBelief.of(curve, misfit));
            } else {
                notSolved.add(curve.fault().name());
            }
        }
        double none = misfit.of(elsewhere()).logLikelihood();
        List<PairStudy.SolvedPair> pairs = paired ? pairs(agreement) : List.of();
        double top = DoubleStream.concat(
                        beliefs.values().stream().mapToDouble(CauseBelief::logEvidence),
                        pairs.stream().mapToDouble(PairStudy.SolvedPair::logEvidence))
                .reduce(none, Math::max);
        double sum = Math.exp(none - top)
                + beliefs.values().stream()
                        .mapToDouble(belief -> Math.exp(belief.logEvidence() - top))
                        .sum()
                + pairs.stream()
                        .mapToDouble(pair -> Math.exp(pair.logEvidence() - top))
                        .sum();
        Map<Cause, CauseCurve> curves = new LinkedHashMap<>();
        beliefs.forEach((curve, belief) ->
                curves.put(cause(curve, belief, Math.exp(belief.logEvidence() - top) / sum), curve));
        List<Cause> causes = sorted(List.copyOf(curves.keySet()));
        return new GaugeFindings(
                readings,
                expected(),
                agreement,
                regulated(),
                agreement.agrees() ? List.of() : groups(causes, curves),
                Math.exp(none - top) / sum,
                pairs.stream()
                        .map(pair -> new GaugeFindings.Pair(
                                pair.one().of(pair.oneSize()),
                                pair.other().of(pair.otherSize()),
                                Math.exp(pair.logEvidence() - top) / sum,
                                pair.chiSquare()))
                        .sorted(Comparator.comparingDouble((GaugeFindings.Pair pair) -> -pair.share()))
                        .toList(),
                causes,
                notSolved);
    }

    /** Pairs are asked for where the readings do not agree: a fault that explains them alone may be one of two that hide each other. */
    private List<PairStudy.SolvedPair> pairs(GaugeFindings.Agreement agreement) {
        return agreement.agrees() ? List.of() : new PairStudy(table, misfit).of();
    }

    /** Readings taken where the regulator of the sound unit is off its seat. */
    private int regulated() {
        Transmission unit = table.build().unit();
        Map<TestPoint, Boolean> off = new HashMap<>();
        table.model()
                .states()
                .forEach((point, state) -> off.put(
                        point,
                        unit.commanded().isPresent() && Figures.of(unit, state).offSeat()));
        return (int) readings.stream().filter(reading -> off.get(reading.at())).count();
    }

    private List<GaugeFindings.ExpectedReading> expected() {
        List<GaugeFindings.ExpectedReading> expected = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            expected.add(new GaugeFindings.ExpectedReading(
                    table.sound().mean().getEntry(i),
                    misfit.deviation(i, table.sound()),
                    misfit.off(i, table.sound())));
        }
        return expected;
    }

    private GaugeFindings.Agreement agreement() {
        Misfit.ChiSquareFit fit = misfit.of(table.sound());
        double probability = misfit.chance(fit.chiSquare());
        List<GaugeFindings.ExpectedReading> expected = expected();
        boolean seen = true;
        for (int i = 0; i < readings.size(); i++) {
            seen &= readings.get(i).sense() == GaugeReading.Sense.EXACT
                    || !expected.get(i).standsOut(readings.get(i).sense());
        }
        return new GaugeFindings.Agreement(
                fit.chiSquare(), misfit.degrees(), probability, seen && probability >= GaugeFindings.DISAGREE);
    }

    private Expectation elsewhere() {
        RealMatrix wide = table.sound().covariance().copy();
        for (int i = 0; i < readings.size(); i++) {
            wide.addToEntry(i, i, Math.pow(ELSEWHERE * table.sound().mean().getEntry(i), 2));
        }
        return new Expectation(table.sound().mean(), wide);
    }

    private Cause cause(CauseCurve curve, CauseBelief belief, double share) {
        UnitFault fault = curve.fault();
        OptionalDouble hidden = hidden(curve);
        return new Cause(
                fault,
                fault.sizeAt(belief.best()),
                fault.sizeAt(belief.low()),
                fault.sizeAt(belief.high()),
                belief.chiSquare(),
                share,
                fault.kind().graded() ? fault.sizeAt(hidden.orElse(curve.nodes().lastKey())) : Double.NaN,
                hidden.isPresent());
    }

    /** The way from which a fault moves the readings by more than {@link GaugeFindings#VISIBLE}; empty where it never does. */
    private OptionalDouble hidden(CauseCurve curve) {
        double before = curve.nodes().firstKey();
        for (Map.Entry<Double, Expectation> node : curve.nodes().entrySet()) {
            if (shows(node.getValue())) {
                double low = before;
                double high = node.getKey();
                while (high - low > NEAR) {
                    double middle = (low + high) / 2;
                    if (shows(curve.at(middle))) {
                        high = middle;
                    } else {
                        low = middle;
                    }
                }
                return OptionalDouble.of(high);
            }
            before = node.getKey();
        }
        return OptionalDouble.empty();
    }

    /** As near as this a way is searched (ours). */
    private static final double NEAR = 1e-4;

    private boolean shows(Expectation expected) {
        return misfit.distance(table.sound(), expected) > GaugeFindings.VISIBLE;
    }

    /** The galleries that hold {@link GaugeFindings#LEADING} of what is believed of single faults, those alike in one group. */
    private List<GaugeFindings.Group> groups(List<Cause> causes, Map<Cause, CauseCurve> curves) {
        Network network = table.build().unit().network();
        Map<String, List<Cause>> galleries = new LinkedHashMap<>();
        causes.forEach(cause -> galleries
                .computeIfAbsent(Galleries.of(network, cause.fault()), name -> new ArrayList<>())
                .add(cause));
        List<List<Cause>> likely = galleries.values().stream()
                .sorted(Comparator.comparingDouble((List<Cause> gallery) -> -share(gallery)))
                .toList();
        double missing = GaugeFindings.LEADING * share(causes);
        List<List<Cause>> groups = new ArrayList<>();
        for (List<Cause> gallery : likely) {
            if (missing <= 0) {
                break;
            }
            missing -= share(gallery);
            groups.stream()
                    .filter(group -> alike(group.get(0), gallery.get(0), curves))
                    .findFirst()
                    .ifPresentOrElse(group -> group.addAll(gallery), () -> groups.add(new ArrayList<>(gallery)));
        }
        return groups.stream()
                .map(group -> new GaugeFindings.Group(share(group), sorted(group)))
                .sorted(Comparator.comparingDouble((GaugeFindings.Group group) -> -group.share()))
                .toList();
    }

    private static double share(List<Cause> causes) {
        return causes.stream().mapToDouble(Cause::share).sum();
    }

    private static List<Cause> sorted(List<Cause> causes) {
        return causes.stream()
                .sorted(Comparator.comparingDouble((Cause cause) -> -cause.share()))
                .toList();
    }

    /** Whether a cause can make the readings what the leader of a group makes them. */
    private boolean alike(Cause leader, Cause cause, Map<Cause, CauseCurve> curves) {
        CauseCurve one = curves.get(leader);
        CauseCurve other = curves.get(cause);
        Expectation made = one.at(leader.fault().wayTo(leader.size()));
        double first = other.nodes().firstKey();
        double last = other.nodes().lastKey();
        int steps = 100;
        for (int i = 0; i <= steps; i++) {
            if (misfit.distance(made, other.at(first + (last - first) * i / steps)) < ALIKE) {
                return true;
            }
        }
        return false;
    }
}

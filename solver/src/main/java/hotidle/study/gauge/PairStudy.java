package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.newton.Series;
import hotidle.result.Solution;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.linear.RealVector;

/**
 * Two faults at once.
 *
 * <pre>
 * Screen    to first order both move the readings by the sum of what each moves them alone, in the sound unit's deviations; every pair of
 *           faults that can show, at every pair of solved sizes
 * Solved    the {@link #SOLVED} pairs that leave least: at the sizes that the screen found, then {@link #MOVES} times at those that
 *           are best if from there each fault goes on moving the readings as it does alone; the best of these counts
 * Evidence  likelihood as solved, times what the screen says of the room of sizes: Σ p(u)·p(v)·exp(−½·(χ² − χ²min))·Δu·Δv; a second
 *           fault is {@link #SECOND} times as likely as none, over all faults (assumed)
 * </pre>
 */
final class PairStudy {

    /** Most pairs that are solved (chosen). */
    static final int SOLVED = 30;

    /** How likely a second fault is beside a first one (assumed) [-]. */
    private static final double SECOND = 0.1;

    private final GaugeTable table;
    private final Misfit misfit;

    PairStudy(GaugeTable table, Misfit misfit) {
        this.table = table;
        this.misfit = misfit;
    }

    /** A size of a fault: what it moves the readings by in whitened deviations, and how much of the prior it stands for. */
    private record Move(double way, RealVector by, double weight) {}

    /** A pair as the screen has it. */
    private record Screened(UnitFault one, double oneWay, UnitFault other, double otherWay, double left, double room) {}

    /**
     * A pair as solved.
     *
     * @param logEvidence log of the likelihood of the readings given the pair, beside that of a single fault
     */
    record SolvedPair(
            UnitFault one, double oneSize, UnitFault other, double otherSize, double chiSquare, double logEvidence) {}

    /** The pairs that leave least of the readings. */
    List<SolvedPair> of() {
        Whitened whitened = misfit.whitened(table.sound());
        RealVector off = whitened.of(misfit.values().subtract(table.sound().mean()));
        List<CauseCurve> curves = table.curves().stream()
                .filter(curve -> curve.known() && shows(curve))
                .toList();
        List<List<Move>> moves =
                curves.stream().map(curve -> moves(curve, whitened)).toList();
        List<Screened> all = new ArrayList<>();
        for (int f = 0; f < curves.size(); f++) {
            for (int g = f + 1; g < curves.size(); g++) {
                if (!curves.get(f).fault().part().equals(curves.get(g).fault().part())) {
                    all.add(screened(curves.get(f), moves.get(f), curves.get(g), moves.get(g), off));
                }
            }
        }
        return all.stream().sorted(Comparator.comparingDouble(Screened::left)).limit(SOLVED).toList().parallelStream()
                .map(this::solved)
                .flatMap(Optional::stream)
                .toList();
    }

    private boolean shows(CauseCurve curve) {
        return curve.nodes().values().stream()
                .anyMatch(expected -> misfit.distance(table.sound(), expected) > GaugeFindings.VISIBLE);
    }

    private List<Move> moves(CauseCurve curve, Whitened whitened) {
        List<Double> ways = List.copyOf(curve.nodes().keySet());
        List<Move> moves = new ArrayList<>();
        for (Map.Entry<Double, Expectation> node : curve.nodes().entrySet()) {
            int i = ways.indexOf(node.getKey());
            double low = i == 0 ? node.getKey() : (ways.get(i - 1) + node.getKey()) / 2;
            double high = i == ways.size() - 1 ? node.getKey() : (ways.get(i + 1) + node.getKey()) / 2;
            double prior = curve.fault().kind().graded() ? 2 * (1 - node.getKey()) : 1;
            moves.add(new Move(
                    node.getKey(),
                    whitened.of(node.getValue().mean().subtract(table.sound().mean())),
                    ways.size() == 1 ? 1 : prior * (high - low)));
        }
        return moves;
    }

    private static Screened screened(
            CauseCurve one, List<Move> ones, CauseCurve other, List<Move> others, RealVector off) {
        double least = Double.POSITIVE_INFINITY;
        Move first = ones.get(0);
        Move second = others.get(0);
        double[][] left = new double[ones.size()][others.size()];
        for (int u = 0; u < ones.size(); u++) {
            RealVector rest = off.subtract(ones.get(u).by());
            for (int v = 0; v < others.size(); v++) {
                double distance = rest.getDistance(others.get(v).by());
                left[u][v] = distance * distance;
                if (left[u][v] < least) {
                    least = left[u][v];
                    first = ones.get(u);
                    second = others.get(v);
                }
            }
        }
        double room = 0;
        for (int u = 0; u < ones.size(); u++) {
            for (int v = 0; v < others.size(); v++) {
                room += ones.get(u).weight() * others.get(v).weight() * Math.exp(-(left[u][v] - least) / 2);
            }
        }
        return new Screened(one.fault(), first.way(), other.fault(), second.way(), least, room);
    }

    /** How often the sizes of a pair are moved (ours). */
    private static final int MOVES = 6;

    /** Sizes of each fault that are tried for the next move (ours). */
    private static final int GRID = 120;

    /** A pair solved at two sizes. */
    private record SolvedAt(double oneWay, double otherWay, GaugeModel.SolvedPoints solved, Misfit.ChiSquareFit fit) {
        Expectation expected() {
            return solved.expected();
        }
    }

    private Optional<SolvedPair> solved(Screened pair) {
        Series series = table.model().series();
        Optional<SolvedAt> best = Optional.empty();
        Optional<SolvedAt> last =
                at(series, pair, pair.oneWay(), pair.otherWay(), table.model().states());
        for (int move = 0; last.isPresent(); move++) {
            if (best.isEmpty()
                    || last.get().fit().logLikelihood() > best.get().fit().logLikelihood()) {
                best = last;
            }
            if (move == MOVES) {
                break;
            }
            last = moved(series, pair, last.get());
        }
        double prior = 2 * SECOND / table.curves().size();
        return best.map(found -> new SolvedPair(
                pair.one(),
                pair.one().sizeAt(found.oneWay()),
                pair.other(),
                pair.other().sizeAt(found.otherWay()),
                found.fit().chiSquare(),
                found.fit().logLikelihood() + Math.log(Math.max(pair.room(), 1e-12) * prior)));
    }

    private Optional<SolvedAt> at(
            Series series, Screened pair, double oneWay, double otherWay, Map<TestPoint, Solution> from) {
        List<UnitFault.Sized> faults = List.of(
                pair.one().of(pair.one().sizeAt(oneWay)),
                pair.other().of(pair.other().sizeAt(otherWay)));
        return table.model()
                .along(series, List.of(faults), from)
                .get(0)
                .map(solved -> new SolvedAt(oneWay, otherWay, solved, misfit.of(solved.expected())));
    }

    /** The pair at the sizes that would be best, were both faults to move the readings from here as they do alone. */
    private Optional<SolvedAt> moved(Series series, Screened pair, SolvedAt from) {
        Whitened whitened = misfit.whitened(from.expected());
        RealVector off = whitened.of(misfit.values().subtract(from.expected().mean()));
        CauseCurve one = curve(pair.one());
        CauseCurve other = curve(pair.other());
        List<RealVector> ones = moves(one, from.oneWay(), whitened);
        List<RealVector> others = moves(other, from.otherWay(), whitened);
        double least = Double.POSITIVE_INFINITY;
        int first = 0;
        int second = 0;
        for (int u = 0; u <= GRID; u++) {
            RealVector rest = off.subtract(ones.get(u));
            for (int v = 0; v <= GRID; v++) {
                double left = rest.getDistance(others.get(v));
                if (left < least) {
                    least = left;
                    first = u;
                    second = v;
                }
            }
        }
        return at(
                series, pair, way(one, first), way(other, second), from.solved().states());
    }

    private CauseCurve curve(UnitFault fault) {
        return table.curves().stream()
                .filter(curve -> curve.fault().equals(fault))
                .findFirst()
                .orElseThrow();
    }

    private static double way(CauseCurve curve, int step) {
        double first = curve.nodes().firstKey();
        return first + (curve.nodes().lastKey() - first) * step / GRID;
    }

    private static List<RealVector> moves(CauseCurve curve, double from, Whitened whitened) {
        RealVector here = curve.at(from).mean();
        List<RealVector> moves = new ArrayList<>();
        for (int step = 0; step <= GRID; step++) {
            moves.add(whitened.of(curve.at(way(curve, step)).mean().subtract(here)));
        }
        return moves;
    }
}

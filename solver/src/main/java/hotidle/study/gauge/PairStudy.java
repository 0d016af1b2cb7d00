package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.network.Network;
import hotidle.newton.Series;
import hotidle.newton.SolvedState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Two faults at once.
 *
 * <pre>
 * Screen    both change each reading by the product of the factors by which each changes it alone, {@link FaultSizes#joined}; every
 *           pair of faults that can show and are not of one gallery, at every pair of sizes, in the sound unit's deviations
 * One of    all pairs of the same two galleries look alike: the one that is likeliest so stands for them, with what speaks for all
 * Solved    the {@link #SOLVED} likeliest: at the sizes that the screen found, then up to {@link #MOVES} times at those that are best
 *           if from there each fault goes on changing the readings as it does alone; the best of these counts
 * Evidence  likelihood as solved, times the room of sizes about it: Σ p(u)·p(v)·exp(−½·(χ² − χ²min))·Δu·Δv; a second fault is
 *           {@link #SECOND} times as likely as none, over all faults (assumed)
 * </pre>
 */
final class PairStudy {

    /** Most pairs that are solved (chosen). */
    static final int SOLVED = 30;

    /** How likely a second fault is beside a first one (assumed) [-]. */
    private static final double SECOND = 0.1;

    private final GaugeTable table;
    private final Misfit misfit;
    private final double[] read;
    private final double[] sound;

    PairStudy(GaugeTable table, Misfit misfit) {
        this.table = table;
        this.misfit = misfit;
        read = misfit.values().toArray();
        sound = table.sound().mean().toArray();
    }

    /**
     * A pair as the screen has it.
     *
     * @param log of the likelihood over all its sizes, but for what is the same for all pairs
     */
    private record Screened(FaultSizes one, int oneSize, FaultSizes other, int otherSize, double log) {

        /** Both galleries, in one order. */
        String galleries() {
            return one.gallery().compareTo(other.gallery()) < 0
                    ? one.gallery() + " and " + other.gallery()
                    : other.gallery() + " and " + one.gallery();
        }

        Screened withLog(double all) {
            return new Screened(one, oneSize, other, otherSize, all);
        }
    }

    /**
     * A pair as solved.
     *
     * @param logEvidence log of the likelihood of the readings given the pair, beside that of a single fault
     */
    record SolvedPair(
            UnitFault one, double oneSize, UnitFault other, double otherSize, double chiSquare, double logEvidence) {}

    /** The pairs for which most speaks, one for each two galleries. */
    List<SolvedPair> of() {
        Network network = table.build().unit().network();
        List<FaultSizes> faults = table.curves().parallelStream()
                .filter(curve -> curve.known() && shows(curve))
                .map(curve -> FaultSizes.of(curve, Galleries.of(network, curve.fault()), table.sound(), misfit))
                .toList();
        Whitened whitened = misfit.whitened(table.sound());
        List<Screened> all = IntStream.range(0, faults.size())
                .parallel()
                .boxed()
                .flatMap(f -> faults.subList(f + 1, faults.size()).stream()
                        .filter(other -> !other.gallery().equals(faults.get(f).gallery())
                                && !other.part().equals(faults.get(f).part()))
                        .map(other -> screened(faults.get(f), other, whitened)))
                .toList();
        Map<String, Screened> best = new HashMap<>();
        Map<String, Double> more = new HashMap<>();
        for (Screened pair : all) {
            best.merge(pair.galleries(), pair, (one, other) -> one.log() < other.log() ? other : one);
        }
        for (Screened pair : all) {
            double beside = best.get(pair.galleries()).log();
            more.merge(pair.galleries(), Math.exp(pair.log() - beside), Double::sum);
        }
        List<Screened> likely = best.values().stream()
                .map(pair -> pair.withLog(pair.log() + Math.log(more.get(pair.galleries()))))
                .sorted(Comparator.comparingDouble((Screened pair) -> -pair.log())
                        .thenComparing(Screened::galleries))
                .limit(SOLVED)
                .toList();
        return OneByOne.of(likely, pair -> solved(pair, more.get(pair.galleries()))).stream()
                .flatMap(Optional::stream)
                .toList();
    }

    private boolean shows(CauseCurve curve) {
        return curve.nodes().values().stream()
                .anyMatch(expected -> misfit.distance(table.sound(), expected) > GaugeFindings.VISIBLE);
    }

    private Screened screened(FaultSizes one, FaultSizes other, Whitened whitened) {
        Misfits left = misfits(one, other, sound, one.ones(), other.ones(), whitened);
        return new Screened(one, left.first(), other, left.second(), -left.least() / 2 + Math.log(left.room()));
    }

    /**
     * What pairs of sizes leave of the readings.
     *
     * @param first  size of the one at which it is least
     * @param second size of the other
     * @param least  χ² there
     * @param room   Σ p(u)·p(v)·exp(−½·(χ² − least))·Δu·Δv
     */
    private record Misfits(int first, int second, double least, double room) {}

    /** Of both faults from some readings on, at which they have each changed them by some factors. */
    private Misfits misfits(
            FaultSizes one, FaultSizes other, double[] from, double[] ones, double[] others, Whitened whitened) {
        int n = read.length;
        double[][] left = new double[one.size()][other.size()];
        double[] off = new double[n];
        int first = 0;
        int second = 0;
        for (int u = 0; u < one.size(); u++) {
            for (int v = 0; v < other.size(); v++) {
                for (int i = 0; i < n; i++) {
                    double times = one.times(u, i) / ones[i] * other.times(v, i) / others[i];
                    off[i] = read[i] - FaultSizes.joined(from[i], one.base(i), times);
                }
                left[u][v] = whitened.square(off);
                if (left[u][v] < left[first][second]) {
                    first = u;
                    second = v;
                }
            }
        }
        double room = 0;
        for (int u = 0; u < one.size(); u++) {
            for (int v = 0; v < other.size(); v++) {
                room += one.weight(u) * other.weight(v) * Math.exp((left[first][second] - left[u][v]) / 2);
            }
        }
        return new Misfits(first, second, left[first][second], room);
    }

    /** How often the sizes of a pair are moved at most (ours). */
    private static final int MOVES = 6;

    /** A pair solved at two sizes. */
    private record SolvedAt(double oneWay, double otherWay, GaugeModel.SolvedPoints solved, Misfit.ChiSquareFit fit) {
        Expectation expected() {
            return solved.expected();
        }
    }

    private Optional<SolvedPair> solved(Screened pair, double more) {
        Series series = table.model().series();
        List<SolvedAt> found = new ArrayList<>();
        Optional<SolvedAt> last = at(
                series,
                pair,
                pair.one().way(pair.oneSize()),
                pair.other().way(pair.otherSize()),
                table.model().starts());
        for (int move = 0; move < MOVES && last.isPresent() && !stands(found, last.get()); move++) {
            found.add(last.get());
            last = moved(series, pair, last.get());
        }
        last.ifPresent(found::add);
        double prior = 2 * SECOND / table.curves().size();
        return found.stream()
                .max(Comparator.comparingDouble(one -> one.fit().logLikelihood()))
                .map(best -> new SolvedPair(
                        pair.one().fault(),
                        pair.one().fault().sizeAt(best.oneWay()),
                        pair.other().fault(),
                        pair.other().fault().sizeAt(best.otherWay()),
                        best.fit().chiSquare(),
                        best.fit().logLikelihood() + Math.log(room(pair, best) * more * prior)));
    }

    /** Whether a move led next to nowhere: both sizes stand where they stood before. */
    private static boolean stands(List<SolvedAt> found, SolvedAt now) {
        return found.stream()
                .anyMatch(before -> Math.abs(before.oneWay() - now.oneWay()) < NEAR
                        && Math.abs(before.otherWay() - now.otherWay()) < NEAR);
    }

    /** Sizes nearer than this are the same (ours) [-]. */
    private static final double NEAR = 1e-3;

    /** A pair fits so narrowly at least that it has this room (ours). */
    private static final double LEAST_ROOM = 1e-12;

    /** The room of sizes about a pair that was solved. */
    private double room(Screened pair, SolvedAt best) {
        Misfits left = about(pair, best);
        double chiSquare = best.fit().chiSquare();
        return Math.max(left.room() * Math.exp(Math.min(chiSquare - left.least(), 0) / 2), LEAST_ROOM);
    }

    private Misfits about(Screened pair, SolvedAt from) {
        return misfits(
                pair.one(),
                pair.other(),
                from.expected().mean().toArray(),
                pair.one().times(from.oneWay()),
                pair.other().times(from.otherWay()),
                misfit.whitened(from.expected()));
    }

    private Optional<SolvedAt> at(
            Series series, Screened pair, double oneWay, double otherWay, Map<TestPoint, SolvedState> from) {
        UnitFault one = pair.one().fault();
        UnitFault other = pair.other().fault();
        List<UnitFault.Sized> faults = List.of(one.of(one.sizeAt(oneWay)), other.of(other.sizeAt(otherWay)));
        return table.model()
                .along(series, List.of(faults), StartStates.of(from))
                .get(0)
                .map(solved -> new SolvedAt(oneWay, otherWay, solved, misfit.of(solved.expected())));
    }

    /** The pair at the sizes that would be best, were both faults to change the readings from here as they do alone. */
    private Optional<SolvedAt> moved(Series series, Screened pair, SolvedAt from) {
        Misfits rough = about(pair, from);
        Screened near =
                new Screened(pair.one().about(rough.first()), 0, pair.other().about(rough.second()), 0, 0);
        Misfits fine = about(near, from);
        return at(
                series,
                pair,
                near.one().way(fine.first()),
                near.other().way(fine.second()),
                from.solved().states());
    }
}

package hotidle.study;

import hotidle.assess.Margin;
import hotidle.network.Network;
import hotidle.newton.CentralDifference;
import hotidle.newton.Linearised;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How fast every margin of a build changes with every size.
 *
 * <pre>
 * Method    adjoint, {@link Linearised}: dh/ds = ∂h/∂s − λ·∂r/∂s with Jᵀ·λ = ∂h/∂u, h being the headroom, one transposed solve each
 * ∂r/∂s     the equations stamped anew by the parts of the changed unit at the unchanged state, and ∂h/∂s the headroom read so:
 *           central differences of fourth order, {@link CentralDifference}. ∂h/∂u: differences of the headroom alone, at fixed sizes
 * Hub       film and unit load at the engine speed at which they bind in the build as it is; where the binding speed moves
 *           smoothly that is the whole slope, since the film is least there. At the end of the speeds searched, or where the
 *           secondary begins to unload, it is the slope at that speed
 * Regulation the line is held, the regulator stands at x where the worst served of converter, cooler and lubrication gets what it
 *           needs, g(u, x, s) = 0: dh/ds = h_s − h_x·g_s/g_x, both by the adjoint of the held network. Where x stands at the
 *           end of its way, h_s alone
 * Set       the set pressure stays as the build sets it: a changed unit is made with its spring adjusted, where the build says so
 * Range     the slope holds for a change that is small against the clearance: leaks grow with its cube, see {@code wear} for more
 * </pre>
 *
 * @param margins every margin at every duty whose slopes are known, with what it is in the build
 * @param rates   a slope for each of them and each size
 * @param leftOut what has no slope, and why
 * @param unsolved duties at which no steady state was found
 */
public record Sensitivity(
        Map<Judgement.Key, Margin> margins, List<Rate> rates, List<LeftOut> leftOut, List<String> unsolved) {

    /** Steps of the differences by a size, as a share of it: far less than the clearance of the closest fit (ours) [-]. */
    private static final double STEP = 1e-5;

    /** A state this near to a stop, as a share of its way, has a slope to one side only (ours) [-]. */
    private static final double EDGE = 1e-6;

    /** Regulation is solved anew this far to either side of a size, at most so large a share of it: little beside a clearance (ours) [m], [-]. */
    private static final double ASIDE = 1e-6;

    private static final double ASIDE_SHARE = 0.01;

    /** A least served that is off its need by less than this is just served (ours) [-]. */
    private static final double SERVED = 1e-6;

    /**
     * A slope.
     *
     * @param slope    of the headroom by the size [1/m] or [1/m²]
     * @param oneSided whether a stop takes hold or lets go so near that it holds to one side only, or regulation, solved anew a
     *                 thousandth of a millimetre to either side, bends there
     */
    public record Rate(WearSize dimension, Judgement.Key key, double slope, boolean oneSided) {

        /** Whether it says something of a step of its size [m] or [m²]. */
        public boolean worth(double step) {
            return Math.abs(slope * step) >= WORTH;
        }
    }

    public Sensitivity {
        margins = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(margins));
        rates = List.copyOf(rates);
        leftOut = List.copyOf(leftOut);
        unsolved = List.copyOf(unsolved);
    }

    /** The margin with the least headroom of those whose slopes are known, and of which it is known whether they hold. */
    public Optional<Judgement.Key> least() {
        return margins.entrySet().stream()
                .filter(entry -> entry.getValue().known())
                .min(Comparator.comparingDouble(entry -> entry.getValue().headroom()))
                .map(Map.Entry::getKey);
    }

    /** Less than this share of headroom in a step is not worth telling (chosen) [-]. */
    public static final double WORTH = 5e-4;

    /** The slopes of one margin, the steepest against the size of its step first. */
    public List<Rate> of(Judgement.Key key, java.util.function.ToDoubleFunction<WearSize> step) {
        return rates.stream()
                .filter(rate -> rate.key().equals(key))
                .sorted(Comparator.comparingDouble(
                        (Rate rate) -> -Math.abs(rate.slope() * step.applyAsDouble(rate.dimension()))))
                .toList();
    }

    /**
     * Finds all slopes.
     *
     * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
     * @param step   called after each duty point and each size, from any thread
     */
    public static Sensitivity study(Adjustable build, List<Double> speeds, Runnable step) {
        Transmission unit = build.unit();
        List<LeftOut> leftOut = new ArrayList<>();
        Map<Judgement.Key, Margin> margins = new LinkedHashMap<>();
        List<OperatingPoint> points = new ArrayList<>();
        List<String> unsolved = new ArrayList<>();
        List<Judgement> atDuties = unit.duties().parallelStream()
                .map(duty -> {
                    Judgement judged = Judgement.of(unit, duty, speeds);
                    step.run();
                    return judged;
                })
                .toList();
        for (Judgement judged : atDuties) {
            DutyPoint duty = judged.duty();
            if (judged.outcome().state().isEmpty()) {
                unsolved.add(duty.name());
            }
            List<OperatingPoint> here = points(judged, leftOut);
            points.addAll(here);
            judged.margins().forEach(margin -> {
                Judgement.Key key = Judgement.Key.of(duty, margin);
                if (here.stream().anyMatch(point -> point.keys().contains(key))) {
                    margins.put(key, margin);
                }
            });
        }
        List<Rate> rates = build.dimensions().parallelStream()
                .flatMap(dimension -> {
                    List<Rate> found = rates(build, dimension, points);
                    step.run();
                    return found.stream();
                })
                .toList();
        build.dimensions().stream()
                .filter(dimension ->
                        rates.stream().noneMatch(rate -> rate.dimension().equals(dimension)))
                .forEach(dimension -> leftOut.add(LeftOut.size(
                        dimension.value() == 0 ? LeftOut.LeftOutCause.SIZE_IS_NIL : LeftOut.LeftOutCause.SIZE_IS_FIXED,
                        dimension.name())));
        return new Sensitivity(margins, rates, leftOut, unsolved);
    }

    /** The states that the margins of a duty are read from; none where no state was found. */
    static List<OperatingPoint> points(Judgement judged, List<LeftOut> leftOut) {
        List<OperatingPoint> points = new ArrayList<>();
        List<Judgement.Key> own = new ArrayList<>();
        if (judged.held().flatMap(HeldLine::unsolved).isPresent()) {
            leftOut.add(LeftOut.heldLine(judged.duty().name()));
        }
        for (Margin margin : judged.margins()) {
            Judgement.Key key = Judgement.Key.of(judged.duty(), margin);
            if (!Double.isFinite(margin.headroom())) {
                leftOut.add(LeftOut.margin(
                        margin.value().isEmpty()
                                ? LeftOut.LeftOutCause.VALUE_NOT_KNOWN
                                : LeftOut.LeftOutCause.NOTHING_NEEDED,
                        key));
                continue;
            }
            switch (key.kind()) {
                case REGULATION -> points.add(held(judged, key));
                case FILM ->
                    points.add(free(
                            judged, List.of(key), judged.hub().orElseThrow().thinnest()));
                case UNIT_LOAD ->
                    points.add(free(
                            judged, List.of(key), judged.hub().orElseThrow().heaviest()));
                default -> own.add(key);
            }
        }
        if (!own.isEmpty()) {
            points.add(free(judged, own, judged.outcome().state()));
        }
        return points;
    }

    /** A state of the unit as it is. */
    private static OperatingPoint free(Judgement judged, List<Judgement.Key> keys, Optional<Solution> state) {
        return new OperatingPoint.Free(
                judged.duty(), keys, new Linearised(judged.unit().network(), state.orElseThrow()), judged.unit());
    }

    /** The state with the line held. */
    private static OperatingPoint held(Judgement judged, Judgement.Key key) {
        HeldLineSearch search = new HeldLineSearch(judged.unit(), judged.duty());
        HeldLine line = search.run();
        double position = line.position();
        Network network = search.network(position);
        HeldLine.LineBalance balance = line.balance().orElseThrow();
        Solution state = balance.state();
        Optional<Margin> just = search.served(state).stream()
                .filter(one -> Math.abs(one.headroom()) < SERVED)
                .findFirst();
        return new OperatingPoint.HeldPoint(
                judged.duty(),
                List.of(key),
                new Linearised(network, state),
                judged.unit(),
                position,
                just.map(Margin::part),
                balance.supply() / balance.demand() - 1,
                search.found(line));
    }

    private static List<Rate> rates(Adjustable build, WearSize dimension, List<OperatingPoint> points) {
        double step = STEP * Math.abs(dimension.value());
        List<Transmission> made = new ArrayList<>();
        for (int shift : new int[] {1, -1, 2, -2}) {
            Optional<Transmission> other =
                    step > 0 ? build.with(dimension, dimension.value() + shift * step) : Optional.empty();
            if (other.isEmpty()) {
                return List.of();
            }
            made.add(other.get());
        }
        double aside = Math.min(ASIDE, ASIDE_SHARE * Math.abs(dimension.value()));
        Map<Double, Transmission> beside = new HashMap<>();
        for (double shift : new double[] {aside, -aside}) {
            build.with(dimension, dimension.value() + shift).ifPresent(unit -> beside.put(shift, unit));
        }
        boolean bothSides = beside.size() == 2;
        List<Rate> rates = new ArrayList<>();
        for (OperatingPoint point : points) {
            double[] slopes = point.slopes(step, shift -> made.get(which(shift, step)));
            boolean oneSided =
                    point.linearised().edge() < EDGE || (bothSides && point.bends(aside, beside::get, slopes));
            for (int i = 0; i < point.keys().size(); i++) {
                rates.add(new Rate(dimension, point.keys().get(i), slopes[i], oneSided));
            }
        }
        return rates;
    }

    /** Number of the unit made for a shift of one or two steps up or down. */
    private static int which(double shift, double step) {
        return (Math.abs(shift) > 1.5 * step ? 2 : 0) + (shift < 0 ? 1 : 0);
    }
}

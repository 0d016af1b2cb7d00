package hotidle.study;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.Form;
import hotidle.part.OwnState;
import hotidle.result.Solution;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.DoubleAccumulator;
import java.util.stream.IntStream;

/**
 * Slopes of margins by the adjoint against differences of whole new solves, for every size of a build.
 *
 * <pre>
 * Differences  the unit is made with the size a little larger and smaller, its states solved anew, the margins read; central
 *              differences at steps halved four times and extrapolated, the pair taken that agrees best (Ridders 1982, from memory)
 * Tolerance    error ≤ 1e-5·max(|slope|, 1e-3·margin/size); the margin is its headroom, the size the clearance of a bore or shaft,
 *              otherwise the size itself
 * One side     where a stop takes hold or lets go within the steps, the differences to the side that keeps the build's stops
 * </pre>
 *
 * Past 300 lines, since regulation is solved anew in a network of its own. Run by hand for all ready circuits: {@code java ... hotidle.study.SensitivityCheck [circuit [build]]}
 */
final class SensitivityCheck {

    /** Allowed error as a share of the slope [-]. */
    static final double ERROR = 1e-5;

    /** Below this share of margin over size a slope counts as this [-]. */
    static final double LEAST = 1e-3;

    /** Widest step, as a share of the clearance. */
    private static final double WIDEST = 0.02;

    private static final int LEVELS = 5;

    /** Engine speeds searched for the hub [rev/s]. */
    static final List<Double> SPEEDS =
            IntStream.rangeClosed(2, 16).mapToObj(i -> 250.0 * i / 60).toList();

    /** Largest imbalance of a node [m³/s] and of an own state, as a share of its scale, of all states solved anew. */
    private static final DoubleAccumulator IMBALANCE = new DoubleAccumulator(Math::max, 0);

    private static final DoubleAccumulator FORCE = new DoubleAccumulator(Math::max, 0);

    private SensitivityCheck() {}

    /**
     * One comparison.
     *
     * @param error    as a share of what is allowed; above 1 it is too large
     * @param oneSided whether only one side could be asked
     */
    record Compared(
            String build,
            WearSize dimension,
            Judgement.Key key,
            double adjoint,
            double difference,
            double error,
            boolean oneSided) {

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%s %s, %s %s at %s: adjoint %.9g, difference %.9g, error %.3g of what is allowed%s",
                    build,
                    dimension.name(),
                    key.kind().word(),
                    key.part(),
                    key.duty(),
                    adjoint,
                    difference,
                    error,
                    oneSided ? ", to one side" : "");
        }
    }

    /** Compares all margins of a build by some of its sizes. */
    static List<Compared> compare(Adjustable build, List<WearSize> dimensions) {
        List<LeftOut> leftOut = new ArrayList<>();
        Sensitivity found =
                Sensitivity.study(new Adjustable(build.unit(), dimensions, build.remake()), SPEEDS, () -> {});
        List<OperatingPoint> points = new ArrayList<>();
        for (DutyPoint duty : build.unit().duties()) {
            points.addAll(Sensitivity.points(Judgement.of(build.unit(), duty, SPEEDS), leftOut));
        }
        return dimensions.parallelStream()
                .flatMap(
                        dimension -> points.stream().flatMap(point -> compare(build, dimension, point, found).stream()))
                .toList();
    }

    private static List<Compared> compare(
            Adjustable build, WearSize dimension, OperatingPoint point, Sensitivity found) {
        List<Compared> all = new ArrayList<>();
        double clearance = clearance(build, dimension);
        Optional<Slopes> slopes = Optional.empty();
        for (double widest = WIDEST; widest > 1e-6 && slopes.isEmpty(); widest /= 10) {
            slopes = differences(build, dimension, point, widest * clearance);
        }
        if (slopes.isEmpty()) {
            return all;
        }
        for (int i = 0; i < point.keys().size(); i++) {
            Judgement.Key key = point.keys().get(i);
            Optional<Sensitivity.Rate> rate = found.rates().stream()
                    .filter(one -> one.key().equals(key) && one.dimension().equals(dimension))
                    .findFirst();
            if (rate.isPresent()) {
                double adjoint = rate.get().slope();
                double difference = slopes.get().values[i];
                double headroom = Math.abs(found.margins().get(key).headroom());
                double allowed = ERROR * Math.max(Math.abs(difference), LEAST * headroom / clearance);
                double error = Math.abs(adjoint - difference) / allowed;
                all.add(new Compared(
                        build.unit().build(), dimension, key, adjoint, difference, error, slopes.get().oneSided));
            }
        }
        return all;
    }

    /** The clearance that a bore or shaft leaves, or the size itself. */
    private static double clearance(Adjustable build, WearSize dimension) {
        List<String> pair = List.of("bore", "valve", "hub");
        if (!pair.contains(dimension.key())) {
            return Math.abs(dimension.value());
        }
        return build.dimensions().stream()
                .filter(other -> other.part().equals(dimension.part())
                        && pair.contains(other.key())
                        && !other.key().equals(dimension.key()))
                .mapToDouble(other -> Math.abs(other.value() - dimension.value()))
                .findFirst()
                .orElse(Math.abs(dimension.value()));
    }

    @SuppressWarnings("ArrayRecordComponent")
    private record Slopes(double[] values, boolean oneSided) {}

    /** A unit's margins of a point and the stops that hold in its state, solved anew. */
    @SuppressWarnings("ArrayRecordComponent")
    private record Solved(double[] headrooms, List<Integer> stops) {}

    private static Optional<Slopes> differences(
            Adjustable build, WearSize dimension, OperatingPoint point, double widest) {
        Optional<Solved> here = solved(build, dimension, point, 0);
        List<Solved> up = new ArrayList<>();
        List<Solved> down = new ArrayList<>();
        for (int level = 0; level < LEVELS; level++) {
            double step = widest / (1 << level);
            solved(build, dimension, point, step)
                    .filter(one -> one.stops.equals(here.orElseThrow().stops))
                    .ifPresent(up::add);
            solved(build, dimension, point, -step)
                    .filter(one -> one.stops.equals(here.orElseThrow().stops))
                    .ifPresent(down::add);
        }
        boolean above = up.size() == LEVELS;
        boolean below = down.size() == LEVELS;
        if (!above && !below) {
            return Optional.empty();
        }
        double[] values = new double[point.keys().size()];
        for (int i = 0; i < values.length; i++) {
            double[] column = new double[LEVELS];
            for (int level = 0; level < LEVELS; level++) {
                double step = widest / (1 << level);
                double high = above ? up.get(level).headrooms[i] : here.orElseThrow().headrooms[i];
                double low = below ? down.get(level).headrooms[i] : here.orElseThrow().headrooms[i];
                column[level] = (high - low) / (above && below ? 2 * step : step);
            }
            values[i] = extrapolated(column, above && below ? 4 : 2, above && below ? 4 : 2);
        }
        return Optional.of(new Slopes(values, !(above && below)));
    }

    /** Neville's scheme over halved steps; the entry that agrees best with its neighbours. */
    private static double extrapolated(double[] column, double factor, double growth) {
        double[][] table = new double[column.length][column.length];
        double best = column[column.length - 1];
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < column.length; row++) {
            table[row][0] = column[row];
            double power = factor;
            for (int k = 1; k <= row; k++) {
                table[row][k] = table[row][k - 1] + (table[row][k - 1] - table[row - 1][k - 1]) / (power - 1);
                double change = Math.max(
                        Math.abs(table[row][k] - table[row][k - 1]), Math.abs(table[row][k] - table[row - 1][k - 1]));
                if (change < least) {
                    least = change;
                    best = table[row][k];
                }
                power *= growth;
            }
        }
        return best;
    }

    private static Optional<Solved> solved(Adjustable build, WearSize dimension, OperatingPoint point, double shift) {
        Optional<Transmission> made =
                shift == 0 ? Optional.of(build.unit()) : build.with(dimension, dimension.value() + shift);
        Solution base = point.linearised().in(point.network(build.unit()));
        return made.flatMap(unit -> {
            if (point.keys().get(0).kind() == Margin.Kind.REGULATION) {
                return held(unit, point.duty(), base);
            }
            return new SteadySolver(unit.network())
                    .solve(base.conditions(), Optional.of(base))
                    .state()
                    .map(state -> {
                        IMBALANCE.accumulate(state.imbalance());
                        FORCE.accumulate(state.forceError());
                        Map<Judgement.Key, Margin> margins = Judgement.at(unit, point.duty(), state);
                        return new Solved(
                                point.keys().stream()
                                        .mapToDouble(key -> margins.get(key).headroom())
                                        .toArray(),
                                stops(unit, state));
                    });
        });
    }

    /** The line held, the regulator moved by the secant rule until what is just served in the build is just served again. */
    private static Optional<Solved> held(Transmission unit, DutyPoint duty, Solution base) {
        HeldLineSearch search = new HeldLineSearch(unit, duty);
        String regulator = unit.command().regulator();
        double x = base.own(regulator, OwnState.POSITION);
        Optional<String> just = search.served(base).stream()
                .filter(one -> Math.abs(one.headroom()) < 1e-6)
                .findFirst()
                .map(hotidle.assess.Margin::part);
        Optional<Solution> state = held(search, x, base);
        double before = x + 1e-7;
        double servedBefore = just.isEmpty() ? 0 : served(search, held(search, before, base), just.get());
        for (int i = 0; i < 12 && just.isPresent(); i++) {
            double served = served(search, state, just.get());
            if (Math.abs(served) < 1e-13 || served == servedBefore) {
                break;
            }
            double next = x - served * (x - before) / (served - servedBefore);
            before = x;
            servedBefore = served;
            x = next;
            state = held(search, x, base);
        }
        return state.map(found -> {
            HeldLine.LineBalance balance = search.balance(found);
            List<Integer> stops = new ArrayList<>(stops(unit, found));
            // who is worse served than what is just served decides otherwise
            stops.add((int) search.served(found).stream()
                    .filter(one -> one.headroom() < -1e-6)
                    .count());
            return new Solved(new double[] {balance.supply() / balance.demand() - 1}, stops);
        });
    }

    private static Optional<Solution> held(HeldLineSearch search, double position, Solution start) {
        return new SteadySolver(search.network(position))
                .solve(start.conditions(), Optional.of(start))
                .state();
    }

    private static double served(HeldLineSearch search, Optional<Solution> state, String part) {
        return state.map(found -> search.served(found).stream()
                        .filter(one -> one.part().equals(part))
                        .findFirst()
                        .orElseThrow()
                        .headroom())
                .orElse(Double.NaN);
    }

    /** For each own state whether its lower (-1) or upper (1) stop holds it, or none (0). */
    private static List<Integer> stops(Transmission unit, Solution state) {
        List<Integer> stops = new ArrayList<>();
        for (Placed placed : unit.network().parts()) {
            for (Form.Unknown form : placed.part().form().states()) {
                double x = state.own(placed.name(), form.state());
                double at = 1e-9 * (form.high() - form.low());
                stops.add(x <= form.low() + at ? -1 : x >= form.high() - at ? 1 : 0);
            }
        }
        return stops;
    }

    static DescribedCircuit circuit(String name) {
        return CircuitReader.read(Library.text(name).orElseThrow(), name + ".yaml")
                .circuit()
                .orElseThrow();
    }

    public static void main(String[] arguments) {
        List<Compared> all = new ArrayList<>();
        for (String name : arguments.length > 0 ? List.of(arguments[0]) : Library.names()) {
            DescribedCircuit circuit = circuit(name);
            for (DescribedCircuit.Build one : circuit.builds()) {
                if (arguments.length < 2 || arguments[1].equals(one.name())) {
                    Adjustable build = circuit.adjustable(one.name());
                    List<Compared> found = compare(build, build.dimensions());
                    all.addAll(found);
                    print(name + " " + one.name(), found);
                }
            }
        }
        print("all", all);
        System.out.printf(
                Locale.ROOT,
                "states solved anew: largest imbalance of a node %.2g m3/s, of an own state %.2g of its scale%n",
                IMBALANCE.get(),
                FORCE.get());
    }

    private static void print(String what, List<Compared> all) {
        System.out.printf(
                Locale.ROOT,
                "%s: %d slopes, %d to one side, %d beyond what is allowed%n",
                what,
                all.size(),
                all.stream().filter(Compared::oneSided).count(),
                all.stream().filter(one -> !(one.error <= 1)).count());
        all.stream()
                .sorted(Comparator.comparingDouble((Compared one) -> -(Double.isNaN(one.error) ? 1e99 : one.error)))
                .limit(Integer.getInteger("worst", 4))
                .forEach(one -> System.out.println("  " + one));
    }
}

package hotidle.study;

import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Network;
import hotidle.newton.CentralDifference;
import hotidle.newton.Linearised;
import hotidle.part.OwnState;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A state, the margins that are read from it, and their slopes by a size, as {@link Sensitivity} says. */
interface OperatingPoint {

    DutyPoint duty();

    List<Judgement.Key> keys();

    Linearised linearised();

    /** The network of a unit in which the state is solved. */
    Network network(Transmission unit);

    /** Slopes of the margins by a size, of which units with the size shifted by one and two steps are made. */
    double[] slopes(double step, ShiftedUnit made);

    /**
     * Whether a margin, solved anew a little to either side of a size, leaves its slope there: a part that begins to let oil through
     * bends it, which no stop of an own state tells.
     *
     * @param aside  by which the size is changed
     * @param slopes of the margins, as found
     */
    default boolean bends(double aside, ShiftedUnit made, double[] slopes) {
        return false;
    }

    /** A changed unit by the shift of its size. */
    interface ShiftedUnit {
        Transmission at(double shift);
    }

    /** ∂h/∂s − λ·∂r/∂s of some figures h by the weights λ of each. */
    private static double[] total(
            Linearised linearised, double[][] weights, double step, CentralDifference.Functions figuresThenResidual) {
        double[] by = CentralDifference.central(step, figuresThenResidual);
        double[] slopes = new double[weights.length];
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = by[i];
            for (int j = 0; j < linearised.size(); j++) {
                slopes[i] -= weights[i][j] * by[slopes.length + j];
            }
        }
        return slopes;
    }

    private static double[] joined(double[] figures, double[] residual) {
        double[] all = java.util.Arrays.copyOf(figures, figures.length + residual.length);
        System.arraycopy(residual, 0, all, figures.length, residual.length);
        return all;
    }

    private static double[][] weights(Linearised linearised, double[][] slopes) {
        double[][] weights = new double[slopes.length][];
        for (int i = 0; i < slopes.length; i++) {
            weights[i] = linearised.weights(slopes[i]);
        }
        return weights;
    }

    /** Margins that a state has by itself. */
    @SuppressWarnings("ArrayRecordComponent") // work arrays that do not leave this study
    record Free(DutyPoint duty, List<Judgement.Key> keys, Linearised linearised, double[][] weights)
            implements OperatingPoint {

        Free(DutyPoint duty, List<Judgement.Key> keys, Linearised linearised, Transmission unit) {
            this(
                    duty,
                    keys,
                    linearised,
                    OperatingPoint.weights(linearised, linearised.slopes(state -> figures(unit, duty, keys, state))));
        }

        private static double[] figures(Transmission unit, DutyPoint duty, List<Judgement.Key> keys, Solution state) {
            Map<Judgement.Key, Margin> margins = Judgement.at(unit, duty, state);
            return keys.stream().mapToDouble(key -> margins.get(key).headroom()).toArray();
        }

        @Override
        public Network network(Transmission unit) {
            return unit.network();
        }

        @Override
        public double[] slopes(double step, ShiftedUnit made) {
            return total(linearised, weights, step, shift -> {
                Transmission other = made.at(shift);
                return joined(
                        figures(other, duty, keys, linearised.in(other.network())),
                        linearised.residual(other.network()));
            });
        }
    }

    /** Regulation, with the line held and the regulator where the least served is just served. */
    @SuppressWarnings("ArrayRecordComponent") // work arrays that do not leave this study
    record HeldPoint(
            DutyPoint duty,
            List<Judgement.Key> keys,
            Linearised linearised,
            double position,
            int number,
            Optional<String> just,
            double headroom,
            Optional<HeldLine.HeldStates> found,
            double[][] weights)
            implements OperatingPoint {

        /** A change that departs by more than this share of what the slope foretells is bent; cubes of gaps depart by less (ours) [-]. */
        private static final double BENT = 0.2;

        /** A headroom that moves by less than this does not matter (ours) [-]. */
        private static final double STILL = 1e-5;

        HeldPoint(
                DutyPoint duty,
                List<Judgement.Key> keys,
                Linearised linearised,
                Transmission unit,
                double position,
                Optional<String> just,
                double headroom,
                Optional<HeldLine.HeldStates> found) {
            this(
                    duty,
                    keys,
                    linearised,
                    position,
                    linearised.number(unit.command().regulator(), OwnState.POSITION),
                    just,
                    headroom,
                    found,
                    weights(linearised, new HeldLineSearch(unit, duty), position, just));
        }

        private static double[][] weights(
                Linearised linearised, HeldLineSearch search, double position, Optional<String> just) {
            double[][] slopes = linearised.slopes(state -> figures(search, just, state));
            // a clutch hardly takes oil, so that differences by its pressure would be wider than its drop
            slopes[0] = search.slopes(linearised, linearised.in(search.network(position)));
            return OperatingPoint.weights(linearised, slopes);
        }

        /** Supply over demand less 1, and by how much the least served is served. */
        private static double[] figures(HeldLineSearch search, Optional<String> just, Solution state) {
            HeldLine.LineBalance held = search.balance(state);
            double headroom = held.supply() / held.demand() - 1;
            if (just.isEmpty()) {
                return new double[] {headroom};
            }
            double served = search.served(state).stream()
                    .filter(one -> one.part().equals(just.get()))
                    .findFirst()
                    .orElseThrow()
                    .headroom();
            return new double[] {headroom, served};
        }

        @Override
        public Network network(Transmission unit) {
            return new HeldLineSearch(unit, duty).network(position);
        }

        @Override
        public boolean bends(double aside, ShiftedUnit made, double[] slopes) {
            return bent(aside, made.at(aside), slopes[0]) || bent(-aside, made.at(-aside), slopes[0]);
        }

        private boolean bent(double shift, Transmission unit, double slope) {
            double foretold = shift * slope;
            return new HeldLineSearch(unit, duty, Roles.of(unit), found, Optional.empty(), Optional.empty())
                    .run()
                    .balance()
                    .map(held -> held.supply() / held.demand() - 1 - headroom)
                    .filter(change -> Math.abs(change - foretold) > Math.max(BENT * Math.abs(foretold), STILL))
                    .isPresent();
        }

        @Override
        public double[] slopes(double step, ShiftedUnit made) {
            double[] by = total(linearised, weights, step, shift -> {
                HeldLineSearch search = new HeldLineSearch(made.at(shift), duty);
                Network network = search.network(position);
                return joined(figures(search, just, linearised.in(network)), linearised.residual(network));
            });
            // the regulator's own equation is x − position = 0, so that its weight is the slope by the position
            return just.isEmpty()
                    ? new double[] {by[0]}
                    : new double[] {by[0] - weights[0][number] / weights[1][number] * by[1]};
        }
    }
}

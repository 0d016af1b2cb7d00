package hotidle.study.spread;

import hotidle.assess.Figures;
import hotidle.assess.Roles;
import hotidle.assess.SlipBand;
import hotidle.network.Conditions;
import hotidle.newton.Linearised;
import hotidle.newton.SteadySolver;
import hotidle.result.Solution;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far line pressure and the speed from which it holds may lie from what a build says, for the sizes that nobody measured and for
 * the law of the pump's slip: to first order, by slopes, without drawing units.
 *
 * <pre>
 * Middle    the unit whose unmeasured sizes are all at their median, solved; there the slopes are taken, and each size's mean and
 *           standard deviation, {@link SizePrior}, move and widen the answer: middle + Σ slopeᵢ·(meanᵢ − medianᵢ), variance
 *           Σ (slopeᵢ·σᵢ)²
 * Line      slope by the adjoint of the state at the duty, {@link Linearised}: −λ·∂r/∂s
 * Holds     from the speed n at which line less set pressure passes nil: dn/ds = −(∂p/∂s)/(∂p/∂n), both by the adjoint of the state
 *           just below it, where the regulator does not yet hold the line
 * Slip      the law's stated error with fits as measured, {@link SlipBand}, as one standard deviation of what the pump delivers (ours):
 *           as good as so much less or more speed
 * Band      nine in ten of a normal distribution: ±1.645 standard deviations
 * Range     leaks grow with the cube of a clearance, so that bands of worn units are rather too narrow and lie too low in speed;
 *           {@link SpreadRun} draws the units instead. Where the regulator holds the line in the middle unit, slopes say nothing of units
 *           that do not hold it (on ten worn nodes a tenth of what drawn units differ by): there is no band of line pressure then, and
 *           the speed tells
 * </pre>
 *
 * @param sizes that are not measured
 * @param line  line pressure at the duty [Pa]; empty where the regulator holds it in the middle unit
 * @param holds speed from which the line holds [rev/s]; empty where the middle unit holds it nowhere, or at every speed asked
 */
public record FirstOrderBand(int sizes, Optional<MiddleAndDeviation> line, Optional<MiddleAndDeviation> holds) {

    /** Nine in ten of a normal distribution lie within so many standard deviations. */
    private static final double NINE_IN_TEN = 1.6448536269514722;

    /** Below the speed at which the line holds by this share, so that the regulator is still shut (ours) [-]. */
    private static final double BELOW = 2e-3;

    /** Step of the speed for its slope, and of a size as a share of its standard deviation (ours) [-]. */
    private static final double STEP = 1e-4;

    /** A middle and a standard deviation. */
    public record MiddleAndDeviation(double middle, double deviation) {
        public double low() {
            return middle - NINE_IN_TEN * deviation;
        }

        public double high() {
            return middle + NINE_IN_TEN * deviation;
        }
    }

    /**
     * The bands of a build at a duty point.
     *
     * @param speeds at which is looked for where the line holds [rev/s], rising
     * @return empty where no state is found, nothing is commanded, or every size is measured
     */
    public static Optional<FirstOrderBand> of(SpreadQuestion question, String duty, List<Double> speeds) {
        Transmission middle = question.median();
        if (middle.commanded().isEmpty() || question.sizes().isEmpty()) {
            return Optional.empty();
        }
        DutyPoint point = middle.duty(duty).orElseThrow();
        Conditions conditions = middle.conditions(point);
        Optional<Solution> own =
                new SteadySolver(middle.network()).solve(conditions).state();
        if (own.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble onset = SpeedSweep.run(middle, point, speeds).onset();
        Optional<Solution> below = onset.isEmpty() || onset.getAsDouble() <= speeds.get(0)
                ? Optional.empty()
                : new SteadySolver(middle.network())
                        .solve(conditions.atSpeed((1 - BELOW) * onset.getAsDouble()))
                        .state();
        boolean held = Figures.of(middle, own.get()).regulated();
        double line = own.get().pressure(Roles.of(middle).line());
        return Optional.of(new FirstOrderBand(
                question.sizes().size(),
                held
                        ? Optional.empty()
                        : Optional.of(
                                PressureSpread.of(question, middle, own.get()).band(line, 1)),
                below.map(state -> PressureSpread.of(question, middle, state))
                        .filter(slopes -> slopes.bySpeed() > 0)
                        .map(slopes -> slopes.band(onset.getAsDouble(), -1 / slopes.bySpeed()))));
    }

    /**
     * What moves the line pressure of a state.
     *
     * @param shift    Σ slope·(mean − median) [Pa]
     * @param variance Σ (slope·σ)² [Pa²]
     * @param bySpeed  [Pa·s]
     */
    private record PressureSpread(double shift, double variance, double bySpeed) {

        static PressureSpread of(SpreadQuestion question, Transmission middle, Solution state) {
            Roles roles = Roles.of(middle);
            Linearised linearised = new Linearised(middle.network(), state);
            double[] of = new double[linearised.size()];
            of[linearised.number(roles.line())] = 1;
            double[] weights = linearised.weights(of);
            double shift = 0;
            double variance = 0;
            for (SizePrior prior : question.sizes()) {
                double median = prior.quantile(0.5);
                double step = STEP * prior.standardDeviation();
                Optional<Transmission> more = changed(question, prior, median + step);
                Optional<Transmission> less = changed(question, prior, median - step);
                if (more.isPresent() && less.isPresent()) {
                    double slope = -dot(
                                    weights,
                                    linearised.difference(
                                            more.get().network(), less.get().network()))
                            / (2 * step);
                    shift += slope * (prior.mean() - median);
                    variance += Math.pow(slope * prior.standardDeviation(), 2);
                }
            }
            double speed = state.conditions().speed();
            double turn = STEP * speed;
            double[] faster = linearised.under(state.conditions().atSpeed(speed + turn));
            double[] slower = linearised.under(state.conditions().atSpeed(speed - turn));
            double bySpeed = (dot(weights, slower) - dot(weights, faster)) / (2 * turn);
            Figures figures = Figures.of(middle, state);
            double swept = figures.swept() * figures.filling();
            double law = bySpeed * speed * figures.slipBand().measured() / swept;
            return new PressureSpread(shift, variance + law * law, bySpeed);
        }

        private static Optional<Transmission> changed(SpreadQuestion question, SizePrior prior, double value) {
            return question.medianBut(Map.of(prior.size().name(), value));
        }

        private static double dot(double[] one, double[] other) {
            double sum = 0;
            for (int i = 0; i < one.length; i++) {
                sum += one[i] * other[i];
            }
            return sum;
        }

        /** The band about a middle, of a figure that is so many times the line pressure. */
        MiddleAndDeviation band(double middle, double times) {
            return new MiddleAndDeviation(middle + times * shift, Math.abs(times) * Math.sqrt(variance));
        }
    }
}

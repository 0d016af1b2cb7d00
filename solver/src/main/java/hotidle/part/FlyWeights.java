package hotidle.part;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The weights of a governor on the output shaft.
 *
 * <pre>
 * Balance   p·A = Σ min(m·r·ω², limit) − spring, ω = 2π·ratio·n: the force that keeps a mass on a circle, I. Newton, Principia, 1687,
 *           book I, proposition 4 (from memory)
 * Range     weights at a fixed radius; a weight that acts through a spring stops at its limit, which makes the second stage
 * </pre>
 *
 * @param area    A on which the governor's pressure pushes back [m²]
 * @param weights one or more
 * @param spring  that pushes against the weights [N]
 * @param ratio   speed of the governor over that of the output shaft [-]
 */
public record FlyWeights(double area, List<Weight> weights, double spring, double ratio) implements SignalValve.Demand {

    /**
     * A weight.
     *
     * @param mass   m [kg]
     * @param radius r of its centre of mass [m]
     * @param limit  most that it pushes with, its spring being pressed to the stop [N]; empty without one
     */
    public record Weight(double mass, double radius, OptionalDouble limit) {
        public Weight {
            Check.positive("mass of a governor weight", mass);
            Check.positive("radius of a governor weight", radius);
            limit.ifPresent(most -> Check.positive("limit of a governor weight", most));
        }
    }

    public FlyWeights {
        weights = List.copyOf(weights);
        Check.positive("area of a governor valve", area);
        Check.notNegative("spring of a governor", spring);
        Check.positive("speed ratio of a governor", ratio);
    }

    @Override
    public double pressure(Sensed sensed) {
        double omega = 2 * Math.PI * ratio * sensed.outputSpeed();
        double force = 0;
        for (Weight weight : weights) {
            double outward = weight.mass() * weight.radius() * omega * omega;
            force += Math.min(outward, weight.limit().orElse(outward));
        }
        return Math.max(0, (force - spring) / area);
    }
}

package hotidle.part;

import hotidle.law.Effectiveness;
import hotidle.law.RatedPoint;
import hotidle.oil.OilAt;
import java.util.List;
import java.util.Optional;

/**
 * A cooler with its hoses, known by a rated point of flow and drop, and by one of heat where its outlet temperature is asked for.
 *
 * <pre>
 * Heat      q = ε·C·(T_in − T_medium), ε = 1 − exp(−NTU), NTU = UA/C, C = ρ·cp·flow: {@link Effectiveness} with a medium that keeps its
 *           temperature. UA follows from the rated point and is kept at other flows, which laminar oil in long tubes does (Incropera
 *           et al., Fundamentals of Heat and Mass Transfer, §8.4, from memory)
 * Outlet    T_in − q/C, reported beside the temperature that the duty gives the oil after the cooler, which the flow laws use
 * </pre>
 *
 * @param rated      drop at a flow
 * @param blocked    share of its tubes that are blocked [-], 0 to 0.999
 * @param neededFlow flow that it should have [m³/s]
 * @param heat       what it gives off; empty where that is not known
 */
public record Cooler(RatedPoint rated, double blocked, double neededFlow, Optional<Heat> heat) implements Part {

    /** Heat given off over the most that could be. */
    public static final Measure EFFECTIVENESS =
            new Measure("effectiveness", Measure.QuantityKind.NUMBER, "heat given off over the most that could be");

    /** Given off by the oil. */
    public static final Measure HEAT = new Measure("heat_w", Measure.QuantityKind.POWER, "given off by the oil");

    /** Of the oil that enters. */
    public static final Measure INLET_TEMPERATURE =
            new Measure("inlet_temperature_k", Measure.QuantityKind.TEMPERATURE, "of the oil that enters");

    /** Of the oil that leaves, from the heat given off. */
    public static final Measure OUTLET_TEMPERATURE = new Measure(
            "outlet_temperature_k",
            Measure.QuantityKind.TEMPERATURE,
            "of the oil that leaves, from the heat given off");

    /** Of the oil that leaves, as the duty gives it. */
    public static final Measure OUTLET_TEMPERATURE_GIVEN = new Measure(
            "outlet_temperature_given_k",
            Measure.QuantityKind.TEMPERATURE,
            "of the oil that leaves, as the duty gives it");

    @Override
    public List<Measure> measures() {
        return List.of(EFFECTIVENESS, HEAT, INLET_TEMPERATURE, OUTLET_TEMPERATURE, OUTLET_TEMPERATURE_GIVEN);
    }

    /**
     * What a cooler gives off.
     *
     * @param conductance UA [W/K]
     * @param inlet       region whose temperature the oil has that comes in
     * @param medium      region whose temperature the cooling medium has
     * @param arrangement how both flow past each other
     * @param rate        capacity rate of the medium [W/K]; infinite where it keeps its temperature
     */
    public record Heat(
            double conductance, String inlet, String medium, Effectiveness.Arrangement arrangement, double rate) {
        /** Transfer units beyond which a cooler is counted as endless: what is left of the difference is below 1e-15 [-]. */
        public static final double MOST_UNITS = 36;

        public Heat {
            Check.positive("heat conductance", conductance);
            if (!(rate > 0)) {
                throw new IllegalArgumentException(
                        "capacity rate of the medium is " + rate + " and must be above zero");
            }
        }

        /** With a medium that keeps its temperature. */
        public Heat(double conductance, String inlet, String medium) {
            this(conductance, inlet, medium, Effectiveness.Arrangement.COUNTERFLOW, Double.POSITIVE_INFINITY);
        }

        /** Heat given off over capacity times the difference at the inlets [-]. */
        double share(double conductanceLeft, double capacity) {
            double least = Math.min(capacity, rate);
            double ratio = Double.isInfinite(rate) ? 0 : least / Math.max(capacity, rate);
            return arrangement.effectiveness(conductanceLeft / least, ratio) * least / capacity;
        }

        /**
         * UA of a rated point [W/K].
         *
         * @param power      heat given off [W]
         * @param capacity   ρ·cp·flow of the oil [W/K]
         * @param difference of oil at the inlet and medium [K]
         * @throws IllegalArgumentException where no cooler could give off so much
         */
        public static double conductance(double power, double capacity, double difference) {
            return conductance(
                    power, capacity, difference, Effectiveness.Arrangement.COUNTERFLOW, Double.POSITIVE_INFINITY);
        }

        /** The same with a medium of a capacity rate [W/K] that flows past the oil in some arrangement. */
        public static double conductance(
                double power, double capacity, double difference, Effectiveness.Arrangement arrangement, double rate) {
            double least = Math.min(capacity, rate);
            double ratio = Double.isInfinite(rate) ? 0 : least / Math.max(capacity, rate);
            double wanted = power / (least * difference);
            double most = arrangement.effectiveness(MOST_UNITS, ratio);
            if (!(wanted > 0 && wanted < most)) {
                throw new IllegalArgumentException("a cooler that gives off " + power + " W of "
                        + most * least * difference + " W at most: must lie between");
            }
            double low = 0;
            double high = MOST_UNITS;
            while (Math.nextUp(low) < high) {
                double middle = low + (high - low) / 2;
                if (middle == low || middle == high) {
                    break;
                }
                if (arrangement.effectiveness(middle, ratio) < wanted) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            return high * least;
        }
    }

    /**
     * Heat that the oil gives off [W]; 0 where the cooler's heat is not known.
     *
     * @param capacity ρ·cp·flow of the oil [W/K]
     * @param inlet    temperature of the oil that enters [K]
     * @param medium   temperature of the cooling medium that enters [K]
     */
    public double given(double capacity, double inlet, double medium) {
        return heat.isEmpty() || capacity <= 0 ? 0 : effectiveness(capacity) * capacity * (inlet - medium);
    }

    /** Share of what the oil could give off. */
    private double effectiveness(double capacity) {
        Heat known = heat.orElseThrow();
        return known.share(known.conductance * (1 - blocked), capacity);
    }

    /** A cooler whose heat is not known. */
    public Cooler(RatedPoint rated, double blocked, double neededFlow) {
        this(rated, blocked, neededFlow, Optional.empty());
    }

    /** The same with another share of its tubes blocked [-]. */
    public Cooler blockedBy(double share) {
        return new Cooler(rated, share, neededFlow, heat);
    }

    public Cooler {
        Check.within("blocked share", blocked, 0, 0.999);
        Check.notNegative("flow needed", neededFlow);
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return new Warm(this, new Through(rated.loss(blocked), setting.oil()), setting);
    }

    /** The restriction, with what it gives off. */
    private record Warm(Cooler cooler, Through through, Setting setting) implements Law {

        @Override
        public void evaluate(Reading in, Stamp out) {
            through.evaluate(in, out);
        }

        @Override
        public List<Stream> streams(Reading in) {
            return through.streams(in);
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            double flow = through.streams(in).get(0).mass();
            if (cooler.heat.isEmpty() || flow <= 0) {
                return List.of();
            }
            Heat heat = cooler.heat.get();
            double inlet = setting.temperatures().get(heat.inlet);
            double medium = setting.temperatures().get(heat.medium);
            OilAt entering = setting.oil().warmer(inlet - setting.oil().temperature());
            double capacity = flow * entering.specificHeat();
            double effectiveness = cooler.effectiveness(capacity);
            double power = cooler.given(capacity, inlet, medium);
            return List.of(
                    EFFECTIVENESS.of(effectiveness),
                    HEAT.of(power),
                    INLET_TEMPERATURE.of(inlet),
                    OUTLET_TEMPERATURE.of(inlet - power / capacity),
                    OUTLET_TEMPERATURE_GIVEN.of(setting.oil().temperature()));
        }
    }
}

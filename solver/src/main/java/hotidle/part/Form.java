package hotidle.part;

import java.util.List;

/**
 * The shape of a part as the solver sees it.
 *
 * @param ports   names of the ports; a port without flow only reads its node
 * @param states  own states
 * @param signals names of the pressures and states read from elsewhere
 */
public record Form(List<String> ports, List<Unknown> states, List<String> signals) {

    public Form {
        ports = List.copyOf(ports);
        states = List.copyOf(states);
        signals = List.copyOf(signals);
    }

    /** The form of a path between two ports. */
    public static final Form THROUGH = new Form(List.of("from", "to"), List.of(), List.of());

    /**
     * A part's own unknown between two stops.
     *
     * @param state     which one
     * @param low       lower stop
     * @param high      upper stop, not below the lower
     * @param start     where a cold solve starts
     * @param stiffness usual slope dF/dx of its balance [balance/state], above zero
     * @param scale     what its balance is judged against, for example the spring force [N]
     * @param pole      above the upper stop: its balance grows as the logarithm of the way to it; infinite where it does not
     * @param edges     where something begins to open or to shut, so that its slopes jump
     */
    public record Unknown(
            OwnState state,
            double low,
            double high,
            double start,
            double stiffness,
            double scale,
            double pole,
            List<Double> edges) {

        /** An unknown without a pole and edges. */
        public Unknown(OwnState state, double low, double high, double start, double stiffness, double scale) {
            this(state, low, high, start, stiffness, scale, Double.POSITIVE_INFINITY, List.of());
        }

        public Unknown {
            if (!(high >= low && stiffness > 0 && scale > 0 && pole > high)) {
                throw new IllegalArgumentException("unknown " + state + ": stops " + low + " to " + high
                        + " and pole " + pole + " must rise, stiffness " + stiffness + " and scale " + scale
                        + " be above zero");
            }
            start = Math.min(Math.max(start, low), high);
            edges = List.copyOf(edges);
        }

        /** The same unknown held at one place, as by a spool that is stuck. */
        public Unknown heldAt(double place) {
            return new Unknown(state, place, place, place, stiffness, scale, pole, edges);
        }

        /** The same unknown with a balance that grows as the logarithm of the way to a pole. */
        public Unknown towards(double growing) {
            return new Unknown(state, low, high, start, stiffness, scale, growing, edges);
        }

        /** The same unknown at whose edges something begins to open or to shut. */
        public Unknown opening(List<Double> at) {
            return new Unknown(state, low, high, start, stiffness, scale, pole, at);
        }

        /** What files call it. */
        public String name() {
            return state.name();
        }
    }
}

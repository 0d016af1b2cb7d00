package hotidle.transmission;

/** How the temperatures of a duty point follow from heat. */
public sealed interface Warming {

    /** Done: the temperatures of the duty point are those that it comes to by its own heat. */
    record OwnTemperatures() implements Warming {}

    /** Tried in vain: the duty point comes to no temperature, so that nothing is judged at it. */
    record NeverSettles() implements Warming {}

    /** Held until nothing warms or cools any more. */
    record ToBalance() implements Warming {}

    /**
     * Held for a time after another duty point at the temperatures that one settles at.
     *
     * @param duty    the other duty point
     * @param seconds how long [s], above zero
     */
    record After(String duty, double seconds) implements Warming {
        public After {
            if (!(seconds > 0)) {
                throw new IllegalArgumentException("a time of " + seconds + " s must be above zero");
            }
        }
    }
}

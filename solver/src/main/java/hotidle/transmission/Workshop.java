package hotidle.transmission;

import java.util.List;
import java.util.Optional;

/**
 * A build and the jobs that can be done to it.
 *
 * @param unit   as its build has it
 * @param jobs   in the order in which they are told, each of another name
 * @param rework makes the unit anew with jobs done
 */
public record Workshop(Transmission unit, List<Job> jobs, Rework rework) {

    /** Makes a unit anew. */
    public interface Rework {
        /**
         * The unit after some jobs; its set pressure is kept by the spring, where the build sets one.
         *
         * @param done some of the jobs, in their order
         * @throws IllegalArgumentException where what they leave behind is impossible, with the reason
         */
        Transmission after(List<Job> done);

        /**
         * The same with the sizes that can be changed from then on; empty where this rework does not tell them.
         *
         * @param done   some of the jobs, in their order
         * @param before the build without them
         * @throws IllegalArgumentException where what they leave behind is impossible, with the reason
         */
        default Optional<Adjustable> adjustable(List<Job> done, Adjustable before) {
            return Optional.empty();
        }
    }

    public Workshop {
        jobs = List.copyOf(jobs);
    }

    /** The unit after some jobs; empty where what they leave behind is impossible. */
    public Optional<Transmission> after(List<Job> done) {
        try {
            return Optional.of(done.isEmpty() ? unit : rework.after(done));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    /**
     * The same at another set pressure.
     *
     * @param pressure [Pa]
     * @throws IllegalArgumentException where the build cannot be set to it
     */
    public Workshop setTo(double pressure, SetPressure.By by) {
        return new Workshop(
                SetPressure.of(unit, pressure, by), jobs, done -> SetPressure.of(rework.after(done), pressure, by));
    }
}

package hotidle.transmission;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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
         * The build after some jobs; its set pressure is kept by the spring, where the build sets one.
         *
         * @param done some of the jobs, in their order
         * @throws IllegalArgumentException where what they leave behind is impossible, with the reason
         */
        Adjustable after(List<Job> done);
    }

    public Workshop {
        jobs = List.copyOf(jobs);
    }

    /** The unit after some jobs; empty where what they leave behind is impossible. */
    public Optional<Transmission> after(List<Job> done) {
        try {
            return Optional.of(done.isEmpty() ? unit : rework.after(done).unit());
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }

    /**
     * The same with some jobs done for good: those that are left come on top of them.
     *
     * @param done some of the jobs
     * @throws IllegalArgumentException where what they leave behind is impossible, with the reason
     */
    public Workshop done(List<Job> done) {
        if (done.isEmpty()) {
            return this;
        }
        return new Workshop(
                rework.after(inOrder(done)).unit(),
                jobs.stream().filter(job -> !done.contains(job)).toList(),
                more -> rework.after(
                        inOrder(Stream.concat(done.stream(), more.stream()).toList())));
    }

    /** The jobs of some names, in the order in which they are done, however they are named; names of none are passed over. */
    public List<Job> jobs(List<String> names) {
        return jobs.stream().filter(job -> names.contains(job.name())).toList();
    }

    private List<Job> inOrder(List<Job> some) {
        return jobs.stream().filter(some::contains).toList();
    }

    /**
     * The same at another set pressure.
     *
     * @param pressure [Pa]
     * @throws IllegalArgumentException where the build cannot be set to it
     */
    public Workshop setTo(double pressure, SetPressure.By by) {
        return new Workshop(
                SetPressure.of(unit, pressure, by),
                jobs,
                done -> rework.after(done).setTo(pressure, by));
    }

    /** The same under another name. */
    public Workshop named(String build) {
        return new Workshop(unit.named(build), jobs, done -> rework.after(done).named(build));
    }
}

package hotidle.study;

import hotidle.assess.Margin;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Job;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What each job wins back, and which jobs keep every limit of a build at the set pressure asked for. No set is left out because a
 * smaller one fails or a larger one does: a repair can take oil from what lived on the leak.
 *
 * @param measure  by what sets are told apart
 * @param before   the build at that pressure with nothing done
 * @param alone    each job on its own, the best first
 * @param chosen   the set that costs least by the measure, of several the one with the larger least headroom; empty where none keeps
 *                 every limit
 * @param equal    others that cost as much and keep every limit too
 * @param fewest   a set of fewer jobs that keeps every limit at a higher cost; empty where there is none, or cost is counted in jobs
 * @param notKnown sets of which it is not known, none of which costs more than the one chosen
 * @param most     jobs in the largest set that was tried; fewer than all where sets would be too many
 * @param all      the build with all jobs done; empty where that is impossible
 * @param ceiling  where no set keeps every limit, the highest set pressure at which all jobs together do
 */
public record JobStudy(
        Measure measure,
        JobState before,
        List<JobState> alone,
        Optional<JobSet> chosen,
        List<JobSet> equal,
        Optional<JobSet> fewest,
        List<List<Job>> notKnown,
        int most,
        Optional<JobState> all,
        Optional<Ceiling> ceiling) {

    /** By what sets of jobs are told apart. */
    public enum Measure {
        PRICE,
        HOURS,
        JOBS;

        /** Prices where every job has one, else hours where every job has them, else the number of jobs. */
        static Measure of(List<Job> jobs) {
            if (!jobs.isEmpty() && jobs.stream().allMatch(job -> job.price().isPresent())) {
                return PRICE;
            }
            return !jobs.isEmpty() && jobs.stream().allMatch(job -> job.hours().isPresent()) ? HOURS : JOBS;
        }

        /** What a job costs by it. */
        public double cost(Job job) {
            return switch (this) {
                case PRICE -> job.price().orElseThrow();
                case HOURS -> job.hours().orElseThrow();
                case JOBS -> 1;
            };
        }

        /** What several cost. */
        public double cost(List<Job> jobs) {
            return jobs.stream().mapToDouble(this::cost).sum();
        }
    }

    /** A limit at a duty point as judged. */
    public record JudgedLimit(Judgement.Key key, Margin margin) {}

    /**
     * The build with some jobs done.
     *
     * @param jobs    that are done
     * @param effect  at the duty that was asked for; empty where no state was found
     * @param failing limits that then fail at any duty, the worst first
     * @param known   whether everything is known
     */
    public record JobState(
            List<Job> jobs, Optional<Repairs.Effect> effect, List<Judgement.Key> failing, boolean known) {
        public JobState {
            jobs = List.copyOf(jobs);
            failing = List.copyOf(failing);
        }
    }

    /**
     * Jobs that keep every limit.
     *
     * @param least     the limit that then has least headroom; empty where none is judged
     * @param undecided limits of which it is not known whether they hold: they are no failures
     */
    public record JobSet(List<Job> jobs, Optional<JudgedLimit> least, List<Judgement.Key> undecided) {
        public JobSet {
            jobs = List.copyOf(jobs);
            undecided = List.copyOf(undecided);
        }

        /** The least headroom [-]. */
        double headroom() {
            return least.map(limit -> limit.margin().rank()).orElse(Double.POSITIVE_INFINITY);
        }
    }

    /**
     * How high the set pressure may be with all jobs done.
     *
     * @param pressure [Pa]; empty where no pressure tried keeps every limit
     * @param endedBy  the limit that fails above; empty where it holds up to the highest one tried, or at none
     * @param lowest   pressure tried [Pa]
     * @param highest  pressure tried [Pa]
     */
    public record Ceiling(OptionalDouble pressure, Optional<Judgement.Key> endedBy, double lowest, double highest) {}

    public JobStudy {
        alone = List.copyOf(alone);
        equal = List.copyOf(equal);
        notKnown = List.copyOf(notKnown);
    }

    /**
     * The pressure that is asked for.
     *
     * @param pressure highest set pressure [Pa]; empty for that of each unit as it is
     * @param by       what is changed for it
     */
    public record Asked(OptionalDouble pressure, SetPressure.By by) {

        /** As the build is. */
        public static final Asked NOTHING = new Asked(OptionalDouble.empty(), SetPressure.By.COMMAND_AND_SPRING);

        /** The unit at it; empty where it cannot be set so. */
        Optional<Transmission> at(Transmission unit) {
            return pressure.isEmpty() ? Optional.of(unit) : at(unit, pressure.getAsDouble());
        }

        Optional<Transmission> at(Transmission unit, double other) {
            try {
                return Optional.of(SetPressure.of(unit, other, by));
            } catch (IllegalArgumentException impossible) {
                return Optional.empty();
            }
        }
    }

    /**
     * Tries jobs alone and in sets.
     *
     * @param duty   at which is told what a job wins back
     * @param onsets engine speeds over which the onset of regulation is searched [rev/s], rising
     * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
     * @param step   called after each job that was tried alone and after each level of sets, from any thread
     * @throws IllegalArgumentException where the build itself cannot be set to the pressure asked for
     */
    public static JobStudy of(
            Workshop shop, Asked asked, DutyPoint duty, List<Double> onsets, List<Double> speeds, Runnable step) {
        Transmission unit = asked.at(shop.unit())
                .orElseThrow(() -> new IllegalArgumentException("the set pressure asked for is out of reach"));
        return new JobSearch(shop, asked, unit, duty, onsets, speeds, step).run();
    }
}

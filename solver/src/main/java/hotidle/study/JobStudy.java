package hotidle.study;

import hotidle.assess.Margin;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Job;
import hotidle.transmission.JobCost;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What each job wins back, and which jobs keep every limit of a build at its set pressure. No set is left out because a
 * smaller one fails or a larger one does: a repair can take oil from what lived on the leak.
 *
 * @param measure  by what sets are told apart
 * @param before   the build with nothing done
 * @param lowAtIdle whether its line is not held at the slowest duty
 * @param alone    each job on its own, the best first
 * @param chosen   the set that costs least by the measure, of several the one with the larger least headroom; empty where none keeps
 *                 every limit
 * @param done     the build with the chosen set done; empty where none is
 * @param equal    others that cost as much and keep every limit too
 * @param fewest   a set of fewer jobs that keeps every limit at a higher cost; empty where there is none, or cost is counted in jobs
 * @param easier   where the chosen set keeps a limit only narrowly, the cheapest one job larger that keeps all with ease; empty where
 *                 none does
 * @param notKnown sets of which it is not known, none of which costs more than the one chosen
 * @param most     jobs in the largest set that was tried; fewer than all where sets would be too many
 * @param all      the build with all jobs done; empty where that is impossible
 * @param ceiling  where no set keeps every limit, the highest set pressure at which all jobs together do
 */
public record JobStudy(
        JobCost measure,
        JobState before,
        boolean lowAtIdle,
        List<JobState> alone,
        Optional<JobSet> chosen,
        Optional<JobState> done,
        List<JobSet> equal,
        Optional<JobSet> fewest,
        Optional<JobSet> easier,
        List<List<Job>> notKnown,
        int most,
        Optional<JobState> all,
        Optional<Ceiling> ceiling) {

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

        /** Whether every limit holds, one of them only just. */
        public boolean narrow() {
            return least.filter(limit -> limit.margin().verdict() == Margin.Verdict.CLOSE)
                    .isPresent();
        }

        /** The least headroom [-]. */
        double headroom() {
            return least.map(limit -> limit.margin().headroom()).orElse(Double.POSITIVE_INFINITY);
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
     * Tries jobs alone and in sets.
     *
     * @param shop   at the set pressure asked for
     * @param by     what is changed for another one
     * @param duty   at which is told what a job wins back
     * @param onsets engine speeds over which the onset of regulation is searched [rev/s], rising
     * @param speeds engine speeds searched for the hub's film and load [rev/s], rising
     * @param step   called after each job that was tried alone and after each level of sets, from any thread
     */
    public static JobStudy of(
            Workshop shop, SetPressure.By by, DutyPoint duty, List<Double> onsets, List<Double> speeds, Runnable step) {
        return new JobSearch(shop, by, duty, onsets, speeds, step).run();
    }

    /** Looks for the set that it takes alone: {@link #alone} has none then, and {@link #fewest} and {@link #easier} are not looked for. */
    public static JobStudy needed(
            Workshop shop, SetPressure.By by, DutyPoint duty, List<Double> onsets, List<Double> speeds) {
        return new JobSearch(shop, by, duty, onsets, speeds, () -> {}).needed();
    }
}

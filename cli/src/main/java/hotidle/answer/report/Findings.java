package hotidle.answer.report;

import hotidle.answer.Answer;
import hotidle.answer.check.CheckAnswer;
import hotidle.answer.compare.CompareAnswer;
import hotidle.answer.gauge.GaugeAnswer;
import hotidle.answer.heat.HeatAnswer;
import hotidle.answer.jobs.JobsAnswer;
import hotidle.answer.leaks.LeaksAnswer;
import hotidle.answer.margins.MarginsAnswer;
import hotidle.answer.phrase.CustomerPhrase;
import hotidle.answer.sweep.SweepAnswer;
import hotidle.answer.torque.TorqueAnswer;
import hotidle.answer.wear.WearAnswer;
import hotidle.answer.window.WindowAnswer;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a report is put together from: the answers of other commands, as these give them.
 *
 * @param compare builds side by side
 * @param margins every limit
 * @param sweeps  over engine speed, at the first driving condition
 * @param torque  empty where nothing can be told of it
 * @param window  empty where nothing is commanded
 * @param repaired which pressures the first build may be set to with the jobs done that it needs, under a name of its own; empty where
 *                it needs none, none are enough, or it was not asked for
 * @param repairedTorque engine torque that it then holds in every range [N·m]; empty with that, and where one is not known
 * @param told    name of the build whose leaks and jobs are told
 * @param leaks   of that build; empty without a pump
 * @param jobs    of that build; empty without a pump
 * @param otherJobs of other builds that fail, one each; without those that have no pump
 * @param wear    empty where it was not asked for
 * @param heat    empty where no temperature follows from heat
 * @param gauge   of the first build; empty where no readings were given
 * @param check   what the circuit leaves to the program
 */
public record Findings(
        CompareAnswer compare,
        MarginsAnswer margins,
        Optional<SweepAnswer> sweeps,
        Optional<TorqueAnswer> torque,
        Optional<WindowAnswer> window,
        Optional<WindowAnswer> repaired,
        OptionalDouble repairedTorque,
        String told,
        Optional<LeaksAnswer> leaks,
        Optional<JobsAnswer> jobs,
        List<JobsAnswer> otherJobs,
        Optional<WearAnswer> wear,
        Optional<HeatAnswer> heat,
        Optional<GaugeAnswer> gauge,
        CheckAnswer check) {

    public Findings {
        otherJobs = List.copyOf(otherJobs);
    }

    /** Whether a build fails. */
    public static boolean fails(MarginsAnswer margins, String build) {
        return margins.builds().stream()
                .filter(one -> one.unit().build().equals(build))
                .anyMatch(one -> Verdicts.looks(one) == CustomerPhrase.Looks.FAILS);
    }

    /** The jobs of a build; empty where none were looked for. */
    Optional<JobsAnswer> jobs(String build) {
        return Stream.concat(jobs.stream(), otherJobs.stream())
                .filter(found -> found.shop().unit().build().equals(build))
                .findFirst();
    }

    /** Whether all of it is known. */
    boolean complete() {
        return Stream.of(
                        List.of(compare, margins),
                        sweeps.stream().toList(),
                        torque.stream().toList(),
                        window.stream().toList(),
                        repaired.stream().toList(),
                        leaks.stream().toList(),
                        jobs.stream().toList(),
                        otherJobs,
                        wear.stream().toList(),
                        heat.stream().toList(),
                        gauge.stream().toList())
                .flatMap(List::stream)
                .allMatch(answer -> ((Answer) answer).complete());
    }
}

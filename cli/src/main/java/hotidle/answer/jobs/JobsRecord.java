package hotidle.answer.jobs;

import hotidle.answer.LimitRecord;
import hotidle.answer.leaks.AfterRecord;
import hotidle.study.JobStudy;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Jobs as JSON; a set is the list of the names of its jobs. */
record JobsRecord(
        String circuit,
        String build,
        String duty,
        OptionalDouble setPressurePa,
        List<JobRecord> jobs,
        String countedIn,
        AfterJobs before,
        List<AfterJobs> alone,
        Optional<AfterJobs> all,
        Optional<SetRecord> chosen,
        Optional<AfterJobs> done,
        List<SetRecord> equal,
        Optional<SetRecord> fewest,
        Optional<SetRecord> easier,
        List<List<String>> setsNotKnown,
        int mostJobsTried,
        Optional<CeilingRecord> highest) {

    record JobRecord(String job, String about, OptionalDouble hours, OptionalDouble price) {}

    /** The build with some jobs done; without effect where no state was found. */
    record AfterJobs(List<String> jobs, Optional<AfterRecord> effect, List<LimitRecord> failing, boolean known) {}

    /** Jobs that keep every limit. */
    record SetRecord(
            List<String> jobs,
            OptionalDouble leastHeadroom,
            Optional<LimitRecord> leastOf,
            List<LimitRecord> notKnown) {}

    /** The highest set pressure with all jobs done. */
    record CeilingRecord(
            OptionalDouble setPressurePa, Optional<LimitRecord> endedBy, double lowestPa, double highestPa) {}

    static JobsRecord of(JobsAnswer answer) {
        JobStudy study = answer.study();
        return new JobsRecord(
                answer.shop().unit().circuit(),
                answer.shop().unit().build(),
                answer.duty().name(),
                answer.set(),
                answer.shop().jobs().stream()
                        .map(job -> new JobRecord(job.name(), job.about(), job.hours(), job.price()))
                        .toList(),
                study.measure().name().toLowerCase(Locale.ROOT),
                after(study.before()),
                study.alone().stream().map(JobsRecord::after).toList(),
                study.all().map(JobsRecord::after),
                study.chosen().map(JobsRecord::set),
                study.done().map(JobsRecord::after),
                study.equal().stream().map(JobsRecord::set).toList(),
                study.fewest().map(JobsRecord::set),
                study.easier().map(JobsRecord::set),
                study.notKnown().stream().map(JobSentences::names).toList(),
                study.most(),
                study.ceiling()
                        .map(ceiling -> new CeilingRecord(
                                ceiling.pressure(),
                                ceiling.endedBy().map(LimitRecord::of),
                                ceiling.lowest(),
                                ceiling.highest())));
    }

    private static AfterJobs after(JobStudy.JobState state) {
        return new AfterJobs(
                JobSentences.names(state.jobs()),
                state.effect().map(AfterRecord::of),
                LimitRecord.of(state.failing()),
                state.known());
    }

    private static SetRecord set(JobStudy.JobSet set) {
        return new SetRecord(
                JobSentences.names(set.jobs()),
                set.least().stream()
                        .mapToDouble(limit -> limit.margin().headroom())
                        .findFirst(),
                set.least().map(limit -> LimitRecord.of(limit.key())),
                LimitRecord.of(set.undecided()));
    }
}

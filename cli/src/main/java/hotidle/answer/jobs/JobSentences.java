package hotidle.answer.jobs;

import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HeadroomPhrase;
import hotidle.answer.phrase.JobPhrase;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.study.JobStudy;
import hotidle.study.Judgement;
import hotidle.transmission.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Which sentence is said of jobs, the answer first.
 *
 * @param jobs to choose from
 * @param set  pressure that was asked for [Pa]; empty where nothing commands one
 */
record JobSentences(Quantity.UnitSystem units, JobStudy study, int jobs, OptionalDouble set) {

    List<String> all() {
        List<String> lines = new ArrayList<>();
        if (jobs == 0) {
            lines.add(JobPhrase.NOTHING);
        }
        if (study.chosen().isPresent()) {
            kept(study.chosen().get(), lines);
        } else {
            none(lines);
        }
        if (!study.notKnown().isEmpty()) {
            lines.add(JobPhrase.notKnown(
                    study.notKnown().stream().map(JobSentences::names).toList()));
        }
        return lines;
    }

    private void kept(JobStudy.JobSet chosen, List<String> lines) {
        String least = chosen.least()
                .map(limit -> chosen.narrow()
                        ? JobPhrase.narrow(headroom(limit), at(limit.key()))
                        : JobPhrase.least(headroom(limit), at(limit.key())))
                .orElse("");
        if (chosen.jobs().isEmpty()) {
            lines.add(JobPhrase.nothingNeeded(least));
        } else {
            lines.add(JobPhrase.chosen(names(chosen.jobs()), jobs, cost(chosen.jobs()), least) + " "
                    + JobPhrase.why(study.measure(), study.most(), study.most() == jobs));
            if (!study.equal().isEmpty()) {
                lines.add(JobPhrase.equal(
                        study.equal().stream().map(set -> names(set.jobs())).toList()));
            }
            study.fewest().ifPresent(set -> lines.add(JobPhrase.fewest(names(set.jobs()), cost(set.jobs()))));
            List<String> now = limits(study.before().failing());
            if (!now.isEmpty()) {
                lines.add(JobPhrase.asItIs(now.get(0), now.size() - 1));
            }
        }
        study.easier().ifPresent(set -> lines.add(easier(chosen, set)));
        if (!chosen.undecided().isEmpty()) {
            lines.add(NotKnown.beside(chosen.undecided(), false));
        }
    }

    private static String headroom(JobStudy.JudgedLimit limit) {
        return HeadroomPhrase.of(limit.margin().headroom());
    }

    private String easier(JobStudy.JobSet chosen, JobStudy.JobSet larger) {
        List<Job> more = larger.jobs().stream()
                .filter(job -> !chosen.jobs().contains(job))
                .toList();
        JobStudy.JudgedLimit least = larger.least().orElseThrow();
        return JobPhrase.easier(
                names(more),
                JobPhrase.more(study.measure(), study.measure().cost(more)),
                headroom(least),
                at(least.key()));
    }

    private void none(List<String> lines) {
        String first = JobPhrase.none(jobs, study.most(), study.most() == jobs);
        lines.add(first
                + study.all()
                        .map(all -> " "
                                + (all.failing().isEmpty()
                                        ? JobPhrase.ALL_KEEP
                                        : JobPhrase.failWithAll(limits(all.failing()))))
                        .orElse(""));
        JobPhrase phrase = new JobPhrase(units);
        study.ceiling().ifPresent(ceiling -> lines.add(ceiling(phrase, ceiling)));
    }

    private String ceiling(JobPhrase phrase, JobStudy.Ceiling ceiling) {
        if (ceiling.pressure().isEmpty()) {
            return phrase.noPressure(ceiling.lowest(), ceiling.highest());
        }
        double highest = ceiling.pressure().getAsDouble();
        if (set.isPresent() && set.getAsDouble() < highest) {
            return phrase.more(set.getAsDouble(), highest);
        }
        return phrase.ceiling(highest)
                + ceiling.endedBy().map(key -> JobPhrase.endedBy(at(key))).orElse(JobPhrase.HIGHER_NOT_TRIED);
    }

    private String cost(List<Job> done) {
        return JobPhrase.cost(study.measure(), study.measure().cost(done));
    }

    static List<String> names(List<Job> done) {
        return done.stream().map(Job::name).toList();
    }

    /** A limit that is meant at several driving conditions is named once. */
    private static List<String> limits(List<Judgement.Key> keys) {
        Map<List<Object>, List<Judgement.Key>> same = new LinkedHashMap<>();
        keys.forEach(key -> same.computeIfAbsent(List.of(key.kind(), key.part()), any -> new ArrayList<>())
                .add(key));
        return same.values().stream()
                .map(some -> JobPhrase.at(
                        some.get(0).kind(),
                        some.get(0).part(),
                        some.stream().map(Judgement.Key::duty).toList()))
                .toList();
    }

    private static String at(Judgement.Key key) {
        return LimitPhrase.at(key.kind(), key.part(), key.duty());
    }
}

package hotidle.answer.jobs;

import hotidle.answer.format.TextTable;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.CustomerPhrase;
import hotidle.answer.phrase.JobPhrase;
import hotidle.study.JobStudy;
import hotidle.transmission.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What must be repaired, for who pays for it. */
public record PlainJobs(JobsAnswer of) {

    private JobStudy study() {
        return of.study();
    }

    /** The jobs that are needed, or that none are. */
    public String said() {
        Optional<JobStudy.JobSet> chosen = study().chosen();
        if (of.shop().jobs().isEmpty()) {
            return JobPhrase.NOTHING;
        }
        if (chosen.isEmpty()) {
            return CustomerPhrase.NO_REPAIR_DOES;
        }
        List<Job> jobs = chosen.get().jobs();
        return jobs.isEmpty()
                ? CustomerPhrase.NO_REPAIR
                : CustomerPhrase.repair(
                        JobSentences.names(jobs),
                        JobPhrase.cost(study().measure(), study().measure().cost(jobs)),
                        chosen.get().narrow());
    }

    /** Every job, what it is and whether it is needed. */
    public List<Block> blocks() {
        List<Job> all = of.shop().jobs();
        List<Job> needed = study().chosen().map(JobStudy.JobSet::jobs).orElse(List.of());
        if (all.isEmpty()) {
            return List.of(Block.said(JobPhrase.NOTHING));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.table(CustomerPhrase.jobs(of.shop().unit().build()), table(all, needed)));
        if (!needed.isEmpty()) {
            blocks.add(Block.said(CustomerPhrase.enough(
                    needed.size(), JobPhrase.why(study().measure(), study().most(), study().most() == all.size()))));
        }
        return blocks;
    }

    private static TextTable table(List<Job> all, List<Job> needed) {
        boolean hours = all.stream().anyMatch(job -> job.hours().isPresent());
        TextTable table = new TextTable(CustomerPhrase.jobHead(hours));
        for (Job job : all) {
            List<String> row = new ArrayList<>(List.of(job.name(), job.about()));
            if (hours) {
                row.add(job.hours().isPresent() ? JobPhrase.amount(job.hours().getAsDouble()) : "-");
            }
            row.add(needed.contains(job) ? CustomerPhrase.NEEDED : CustomerPhrase.NOT_NEEDED);
            table.add(row);
        }
        return table;
    }
}

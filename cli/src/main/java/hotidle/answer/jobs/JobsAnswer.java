package hotidle.answer.jobs;

import hotidle.answer.Answer;
import hotidle.answer.UsefulPressureSentence;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.AfterWorkPhrase;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.JobPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.study.JobStudy;
import hotidle.study.UsefulPressure;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What each job wins back, and which jobs keep every limit.
 *
 * @param units of the user
 * @param shop  the build at the set pressure asked for, with its jobs
 * @param named whether the file names the jobs
 * @param asked whether another set pressure than the build's own was asked for
 * @param duty  at which is told what jobs win back
 * @param study what was found
 * @param useful up to which set pressure more torque is held; empty where none was asked for, or torque cannot be asked of the unit
 */
public record JobsAnswer(
        Quantity.UnitSystem units,
        Workshop shop,
        boolean named,
        boolean asked,
        DutyPoint duty,
        JobStudy study,
        Optional<UsefulPressure> useful)
        implements Answer {

    /** Where it is not asked up to which set pressure more torque is held. */
    public JobsAnswer(
            Quantity.UnitSystem units, Workshop shop, boolean named, boolean asked, DutyPoint duty, JobStudy study) {
        this(units, shop, named, asked, duty, study, Optional.empty());
    }

    /** The set pressure that was asked for [Pa]; empty where nothing commands one. */
    OptionalDouble set() {
        return shop.unit().commanded().isPresent()
                ? OptionalDouble.of(shop.unit().highestSet())
                : OptionalDouble.empty();
    }

    /** Jobs that the first screen lists at most (chosen). */
    private static final int MOST = 9;

    /** Lines of the table beside its jobs: a blank one, head and rule, as it is, the set, all of them, and what is left out. */
    private static final int AROUND = 7;

    private String footnote() {
        return new JobRows(units, this).losesMoreByPressure() ? Wrap.lines(JobPhrase.MORE_PRESSURE, "", "  ") : "";
    }

    /** What to ask of the jobs that keep every limit. */
    private String next() {
        return study.chosen().filter(set -> !set.jobs().isEmpty()).isPresent()
                ? Wrap.lines(JobPhrase.NEXT, "", "  ")
                : "";
    }

    @Override
    public String screen() {
        String said = said();
        String end = footnote() + next() + "\n" + noStall() + Caution.LINE + "\n";
        long left = Wrap.LINES - (said + end).lines().count() - AROUND;
        return said + rows((int) Math.max(1, Math.min(MOST, left))) + end;
    }

    @Override
    public String full() {
        return said()
                + rows(shop.jobs().size())
                + footnote()
                + next()
                + "\n"
                + (named ? "" : Wrap.lines(JobPhrase.BY_PLACE, "", ""))
                + noStall()
                + Caution.WHOLE
                + "\n";
    }

    /** The same on a page: which jobs, and what each wins back. */
    public List<Block> page() {
        List<Block> blocks = new ArrayList<>(List.of(Block.said(sentences())));
        if (!shop.jobs().isEmpty()) {
            blocks.add(Block.table(
                    heading(), new JobRows(units, this).shown(shop.jobs().size())));
        }
        blocks.add(Block.said(named ? "" : JobPhrase.BY_PLACE));
        return blocks;
    }

    /** The answer, before what it rests on. */
    public String first() {
        return sentences().get(0);
    }

    private List<String> sentences() {
        List<String> all =
                new ArrayList<>(new JobSentences(units, study, shop.jobs().size(), set()).all());
        UsefulPressureSentence.beyond(units, shop.unit().build(), useful).ifPresent(all::add);
        return all;
    }

    private String heading() {
        String build = shop.unit().build();
        return JobPhrase.heading(
                shop.unit().circuit(),
                build,
                AfterWorkPhrase.saysPressure(build) ? "" : new JobPhrase(units).at(set(), asked));
    }

    private String noStall() {
        return NoStallPhrase.of(study.lowAtIdle() ? List.of(shop.unit().build()) : List.of());
    }

    private String said() {
        StringBuilder text = new StringBuilder(heading()).append("\n\n");
        sentences().forEach(line -> text.append(Wrap.lines(line, "", "  ")));
        return text.toString();
    }

    private String rows(int most) {
        if (shop.jobs().isEmpty()) {
            return "";
        }
        int more = study.alone().size() - most;
        return "\n" + new JobRows(units, this).shown(most).aligned()
                + (more > 0 ? JobPhrase.moreJobs(more) + "\n" : "");
    }

    @Override
    public TextTable table() {
        return new JobRows(units, this).all();
    }

    @Override
    public Object json() {
        return JobsRecord.of(this);
    }

    @Override
    public boolean complete() {
        return study.before().known() && study.notKnown().isEmpty();
    }
}

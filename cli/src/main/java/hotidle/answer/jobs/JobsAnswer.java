package hotidle.answer.jobs;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.JobPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.study.JobStudy;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Workshop;
import java.util.List;

/**
 * What each job wins back, and which jobs keep every limit.
 *
 * @param units of the user
 * @param shop  the build at the set pressure asked for, with its jobs
 * @param named whether the file names the jobs
 * @param asked whether another set pressure than the build's own was asked for
 * @param duty  at which is told what jobs win back
 * @param study what was found
 */
public record JobsAnswer(
        Quantity.UnitSystem units, Workshop shop, boolean named, boolean asked, DutyPoint duty, JobStudy study)
        implements Answer {

    /** The set pressure that was asked for [Pa]; NaN where nothing commands one. */
    double set() {
        return shop.unit().commanded().isPresent() ? shop.unit().highestSet() : Double.NaN;
    }

    @Override
    public String screen() {
        return said() + "\n" + noStall() + Caution.LINE + "\n";
    }

    @Override
    public String full() {
        return said() + "\n" + (named ? "" : Wrap.lines(JobPhrase.BY_PLACE, "", "")) + noStall() + Caution.WHOLE + "\n";
    }

    private String noStall() {
        return NoStallPhrase.of(study.lowAtIdle() ? List.of(shop.unit().build()) : List.of());
    }

    private String said() {
        JobPhrase phrase = new JobPhrase(units);
        StringBuilder text = new StringBuilder(
                        JobPhrase.heading(shop.unit().circuit(), shop.unit().build(), phrase.at(set(), asked)))
                .append("\n\n");
        new JobSentences(units, study, shop.jobs().size())
                .all()
                .forEach(line -> text.append(Wrap.lines(line, "", "  ")));
        return shop.jobs().isEmpty()
                ? text.toString()
                : text.append("\n")
                        .append(new JobRows(units, this).shown().aligned())
                        .toString();
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

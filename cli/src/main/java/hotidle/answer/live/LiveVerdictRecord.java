package hotidle.answer.live;

import hotidle.answer.format.Rpm;
import hotidle.answer.margins.MarginsAnswer;
import hotidle.answer.margins.ToldLimit;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a build comes to, in the words of {@code margins}.
 *
 * @param verdict  fails, not_known, close or holds: the worst of all limits
 * @param summary  in a sentence
 * @param counted  how many limits fail, are narrow and hold
 * @param notKnown what drags, and where no state was found
 * @param limits   of all driving conditions, the worst first
 * @param noStall  that no stall test is run; empty where it may be
 * @param onsetRpm from which speed the line looked at holds; empty where it does at none
 * @param found    what the curve shows, in a sentence
 * @param highest  how high a line pressure is held at the speed looked at, in a sentence; empty where none is commanded
 */
public record LiveVerdictRecord(
        String verdict,
        String summary,
        String counted,
        List<String> notKnown,
        List<ToldLimit> limits,
        String noStall,
        OptionalDouble onsetRpm,
        String found,
        String highest) {

    public static LiveVerdictRecord of(MarginsAnswer answer, OptionalDouble onset, String found, String highest) {
        MarginsAnswer.MarginFindings told = answer.told();
        return new LiveVerdictRecord(
                told.verdict(),
                told.summary(),
                told.counted(),
                told.notKnown(),
                told.limits(),
                told.noStall(),
                Rpm.of(onset),
                found,
                highest);
    }
}

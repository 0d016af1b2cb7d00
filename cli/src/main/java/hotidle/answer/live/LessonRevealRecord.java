package hotidle.answer.live;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What was hidden.
 *
 * @param fault   as it is written behind {@code --fault}
 * @param said    the same in words
 * @param judged  how the answer stands to it, in words
 * @param answer  what was said, in words; empty where nothing was
 * @param read    each reading taken, with what the answer would have read
 * @param shows   where the fault shows most
 * @param gentlest the gentlest test that shows it, in a sentence; empty where none does
 * @param curve   of the gauge at which it does
 * @param command that shows it again
 */
public record LessonRevealRecord(
        String fault,
        String said,
        String judged,
        String answer,
        List<ReadLine> read,
        List<ReadLine> shows,
        String gentlest,
        GaugeCurve curve,
        String command) {

    /**
     * A reading.
     *
     * @param place      what was read and at what, in words
     * @param at         the same as a page asks for it
     * @param pressurePa of the unit with the fault
     * @param soundPa    of the sound build
     * @param answerPa   of the build with the fault that was named; empty where none was
     */
    public record ReadLine(
            String place,
            LessonGaugeRecord at,
            OptionalDouble pressurePa,
            OptionalDouble soundPa,
            OptionalDouble answerPa) {}

    /**
     * A gauge over engine speed.
     *
     * @param title    what it is of
     * @param soundPa  before
     * @param faultPa  after
     * @param answerPa with the fault that was named; empty where none was
     */
    public record GaugeCurve(
            String title,
            List<Double> engineSpeedRpm,
            List<OptionalDouble> soundPa,
            List<OptionalDouble> faultPa,
            List<OptionalDouble> answerPa) {}
}

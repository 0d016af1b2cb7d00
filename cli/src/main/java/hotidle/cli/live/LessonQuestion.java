package hotidle.cli.live;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a page asks of a lesson; which of it counts depends on the question.
 *
 * @param build      whose unit has a fault
 * @param number     of the lesson: the same of the same build and difficulty is the same lesson
 * @param difficulty easy, medium or hard
 * @param fault      that a teacher sets, as it is written behind {@code --fault}
 * @param phrase     of the teacher; empty where there is none
 * @param code       of the teacher
 * @param ticket     of the lesson that is on
 * @param answer     fault that the pupil names; empty where none
 * @param readings   taken, or to be taken
 */
record LessonQuestion(
        String build,
        long number,
        String difficulty,
        String fault,
        String phrase,
        String code,
        String ticket,
        String answer,
        List<GaugeQuestion> readings) {

    /**
     * A gauge and what is set.
     *
     * @param sumpTemperatureC empty where the circuit's oil has one temperature
     */
    record GaugeQuestion(String tap, String range, double engineSpeedRpm, OptionalDouble sumpTemperatureC) {
        GaugeQuestion {
            sumpTemperatureC = sumpTemperatureC == null ? OptionalDouble.empty() : sumpTemperatureC;
        }
    }

    LessonQuestion {
        difficulty = word(difficulty);
        fault = word(fault);
        phrase = word(phrase);
        code = word(code);
        ticket = word(ticket);
        answer = word(answer);
        readings = readings == null ? List.of() : List.copyOf(readings);
    }

    private static String word(String text) {
        return text == null ? "" : text;
    }

    /** Nothing in particular. */
    static LessonQuestion none() {
        return new LessonQuestion(null, 0, "", "", "", "", "", "", List.of());
    }
}

package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.LessonCodeRecord;
import hotidle.answer.live.LessonOfferRecord;
import hotidle.answer.live.LessonReadingRecord;
import hotidle.answer.live.LessonTicketRecord;
import hotidle.answer.phrase.HiddenFaultPhrase;
import hotidle.oil.Oil;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.GaugeValues;
import hotidle.study.gauge.LessonFaults;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.TestPoint;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a page asks of a lesson. Nothing that goes wrong in one names what it went wrong with: that might be the part with the fault.
 */
final class LiveLesson {

    /** A dial is read no finer than this (chosen) [Pa]. */
    private static final double DIVISION = 1000;

    /** Deviations to both sides within which sound units read (chosen). */
    private static final double BAND = 2;

    private static final double SLOWEST = 400 / 60.0;
    private static final double FASTEST = 4000 / 60.0;
    private static final double COLDEST = Oil.ZERO_CELSIUS - 20;
    private static final double HOTTEST = Oil.ZERO_CELSIUS + 140;
    private static final int MOST = 40;

    private final LiveUnit unit;
    private final Lessons lessons;

    LiveLesson(LiveUnit unit) {
        this.unit = unit;
        lessons = new Lessons(unit);
    }

    /** What may be asked, by name. */
    Map<String, LiveAnswers.Answerer> answerers() {
        Map<String, LiveAnswers.Answerer> all = new LinkedHashMap<>();
        all.put("lesson-offer", (question, step) -> offer(question.lesson()));
        all.put("lesson-draw", (question, step) -> ticket(lessons.drawn(question.lesson(), step)));
        all.put("lesson-code", (question, step) -> code(question.lesson()));
        all.put("lesson-open", (question, step) -> ticket(lessons.ticket(question.lesson())));
        all.put("lesson-read", (question, step) -> reading(question.lesson()));
        all.put("lesson-reveal", (question, step) -> revealed(question, step).reveal());
        all.put("lesson-review", (question, step) -> revealed(question, step).review());
        all.replaceAll((kind, answerer) -> (question, step) -> silently(answerer, question, step));
        return all;
    }

    /** Without a word of what failed, and where. */
    private static Object silently(LiveAnswers.Answerer answerer, LiveQuestion question, Runnable step) {
        try {
            return answerer.answer(question, step);
        } catch (WrongStateException | Newest.GivenUpException | Newest.TooLongException told) {
            throw told;
        } catch (RuntimeException failed) {
            throw new WrongStateException(HiddenFaultPhrase.FAILED);
        }
    }

    private LessonOfferRecord offer(LessonQuestion asked) {
        LessonFaults lesson = lessons.of(asked.build());
        return LessonOfferRecord.of(lessons.builds(), lesson.build().unit(), lesson.idle(), lesson.faults());
    }

    private LessonTicketRecord ticket(String ticket) {
        return new LessonTicketRecord(ticket, lessons.open(ticket).sound().build());
    }

    private LessonCodeRecord code(LessonQuestion asked) {
        return new LessonCodeRecord(lessons.code(asked), !asked.phrase().isBlank());
    }

    private LessonReadingRecord reading(LessonQuestion asked) {
        Lessons.OpenLesson open = lessons.open(asked.ticket());
        GaugeReading.Row row = rows(open.sound(), asked.readings()).get(0);
        Optional<LessonFaults.SoundBand> band = open.lesson().band(row);
        OptionalDouble value = band.isEmpty() ? OptionalDouble.empty() : GaugeValues.of(open.faulty(), row);
        double mean = band.map(LessonFaults.SoundBand::mean).orElse(Double.NaN);
        double reach = band.map(one -> BAND * one.deviation()).orElse(Double.NaN);
        return new LessonReadingRecord(
                value.isPresent() ? OptionalDouble.of(dial(value.getAsDouble())) : value,
                dial(mean - reach),
                dial(mean + reach),
                value.isPresent() ? "" : HiddenFaultPhrase.NOT_KNOWN);
    }

    /** As a dial is read. */
    static double dial(double pressure) {
        return DIVISION * Math.rint(pressure / DIVISION);
    }

    private RevealedLesson revealed(LiveQuestion question, Runnable step) {
        LessonQuestion asked = question.lesson();
        Lessons.OpenLesson open = lessons.open(asked.ticket());
        Quantity.UnitSystem units = question.system().orElse(unit.units());
        List<GaugeReading.Row> rows = asked.readings().isEmpty() ? List.of() : rows(open.sound(), asked.readings());
        return new RevealedLesson(unit.circuit().name(), units, open, asked.answer(), rows, step);
    }

    private static List<GaugeReading.Row> rows(Transmission sound, List<LessonQuestion.GaugeQuestion> asked) {
        require(!asked.isEmpty() && asked.size() <= MOST, HiddenFaultPhrase.READINGS);
        return asked.stream().map(one -> row(sound, one)).toList();
    }

    private static GaugeReading.Row row(Transmission sound, LessonQuestion.GaugeQuestion asked) {
        Meter meter = Meter.of(sound, asked.tap() == null ? "" : asked.tap())
                .filter(one -> one.reads() == Meter.Reads.PRESSURE)
                .orElseThrow(() -> new WrongStateException(HiddenFaultPhrase.NO_GAUGE));
        require(asked.range() != null && sound.range(asked.range()).isPresent(), HiddenFaultPhrase.NO_GAUGE);
        double speed = asked.engineSpeedRpm() / 60;
        TestPoint cold =
                new TestPoint(speed, Double.NaN, asked.range(), OptionalDouble.empty(), OptionalDouble.empty());
        DutyPoint like = cold.like(sound);
        double own = like.temperatures().getOrDefault("sump", Double.NaN);
        double temperature =
                asked.sumpTemperatureC().isPresent() ? asked.sumpTemperatureC().getAsDouble() + Oil.ZERO_CELSIUS : own;
        require(
                speed >= SLOWEST && speed <= FASTEST && !(temperature < COLDEST) && !(temperature > HOTTEST),
                HiddenFaultPhrase.BOUNDS);
        return new GaugeReading.Row(meter, cold.atTemperature(temperature));
    }

    private static void require(boolean rule, String message) {
        if (!rule) {
            throw new WrongStateException(message);
        }
    }
}

package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFault;
import hotidle.transmission.Transmission;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Faults of a small unit that a learner can find by its four gauges. */
class LessonFaultsTest {

    private static void nothing() {}

    private static LessonFaults lesson;

    @BeforeAll
    static void solve() {
        lesson = LessonFaults.of(Tapped.build());
    }

    private static UnitFault.Sized fault(String name, double size) {
        return lesson.faults().stream()
                .filter(fault -> fault.name().equals(name))
                .findFirst()
                .orElseThrow()
                .of(size);
    }

    @Test
    void aWeakSpringShowsAtTheLineAndABrokenOneMore() {
        LessonFaults.Shown weak =
                lesson.shown(fault("spring-weak@regulator", 0.2)).get(0);
        LessonFaults.Shown broken =
                lesson.shown(fault("spring-weak@regulator", 0.9)).get(0);
        assertTrue(weak.off() < 0 && broken.off() < weak.off(), weak.off() + " and " + broken.off());
        assertTrue(lesson.shows(fault("spring-weak@regulator", 0.9)));
    }

    @Test
    void aFaultOfNoSizeShowsNowhere() {
        UnitFault.Sized none = fault("spring-weak@regulator", 0);
        assertFalse(lesson.shows(none));
        assertEquals(0, lesson.shown(none).get(0).off(), 1e-6);
    }

    @Test
    void theGentlestTestShowsTheFaultWithTheSlowestEngineThatDoes() {
        List<LessonFaults.Shown> all = lesson.shown(fault("spring-weak@regulator", 0.9));
        LessonFaults.Shown gentlest =
                lesson.gentlest(fault("spring-weak@regulator", 0.9)).orElseThrow();
        assertTrue(Math.abs(gentlest.off()) >= 4, "it shows: " + gentlest);
        for (LessonFaults.Shown other : all) {
            boolean slower = other.row().at().speed() < gentlest.row().at().speed();
            boolean lower = other.row().at().speed() == gentlest.row().at().speed()
                    && drives(other) == drives(gentlest)
                    && Math.max(other.value(), other.sound()) < Math.max(gentlest.value(), gentlest.sound());
            boolean freer =
                    other.row().at().speed() == gentlest.row().at().speed() && drives(gentlest) && !drives(other);
            assertTrue(!(slower || freer || lower) || Math.abs(other.off()) < 4, other + " is gentler and shows");
        }
        assertTrue(lesson.gentlest(fault("spring-weak@regulator", 0)).isEmpty());
    }

    private static boolean drives(LessonFaults.Shown shown) {
        return !lesson.build()
                .unit()
                .range(shown.row().at().range())
                .orElseThrow()
                .applied()
                .isEmpty();
    }

    @Test
    void whatIsShownIsWhatTheGaugeReads() {
        UnitFault.Sized cooler = fault("cooler-blocked@cooler", 0.9);
        Transmission faulty = cooler.fault().in(lesson.build(), cooler.size()).orElseThrow();
        for (LessonFaults.Shown shown : lesson.shown(cooler).subList(0, 8)) {
            assertEquals(shown.value(), GaugeValues.of(faulty, shown.row()).orElseThrow(), 1e-6 * shown.value() + 1);
            assertEquals(
                    shown.sound(),
                    GaugeValues.of(lesson.build().unit(), shown.row()).orElseThrow(),
                    1e-6 * shown.sound() + 1);
            LessonFaults.SoundBand band = lesson.band(shown.row()).orElseThrow();
            assertEquals((shown.value() - band.mean()) / band.deviation(), shown.off(), 1e-3 * Math.abs(shown.off()));
        }
    }

    @Test
    void theSameSeedIsTheSameFaultAndOthersAreOthers() {
        Set<String> names = new HashSet<>();
        for (long seed = 1; seed <= 12; seed++) {
            UnitFault.Sized one = lesson.drawn(LessonFaults.Difficulty.EASY, seed, LessonFaultsTest::nothing)
                    .orElseThrow();
            UnitFault.Sized again = lesson.drawn(LessonFaults.Difficulty.EASY, seed, LessonFaultsTest::nothing)
                    .orElseThrow();
            assertEquals(one.fault().name() + one.size(), again.fault().name() + again.size());
            names.add(one.fault().name());
        }
        assertTrue(names.size() >= 4, names.toString());
    }

    @Test
    void anEasyFaultStandsFurtherOutThanAHardOne() {
        for (LessonFaults.Difficulty difficulty : LessonFaults.Difficulty.values()) {
            for (long seed = 1; seed <= 5; seed++) {
                UnitFault.Sized drawn = lesson.drawn(difficulty, seed, LessonFaultsTest::nothing)
                        .orElseThrow();
                assertTrue(lesson.shows(drawn), drawn.fault().name() + " " + drawn.size());
                double most = Math.abs(lesson.shown(drawn).get(0).off());
                assertTrue(difficulty.holds(most), difficulty + " " + most);
            }
        }
    }

    @Test
    void aDrawEndsWhereNobodyWaitsForIt() {
        assertThrows(
                IllegalStateException.class,
                () -> lesson.drawn(LessonFaults.Difficulty.HARD, 1, () -> {
                    throw new IllegalStateException("nobody waits");
                }));
    }

    @Test
    void aGaugeOverSpeedPassesThroughWhatItReadsAtEachSpeed() {
        Meter line = Meter.of(lesson.build().unit(), "line").orElseThrow();
        GaugeReading.Row row = new GaugeReading.Row(line, Tapped.at(650));
        List<OptionalDouble> curve = GaugeValues.overSpeed(
                lesson.build().unit(), row, List.of(1500 / 60.0, 650 / 60.0), LessonFaultsTest::nothing);
        for (int i = 0; i < 2; i++) {
            GaugeReading.Row here = new GaugeReading.Row(line, Tapped.at(i == 0 ? 650 : 1500));
            assertEquals(
                    GaugeValues.of(lesson.build().unit(), here).orElseThrow(),
                    curve.get(i).orElseThrow(),
                    10);
        }
    }

    @Test
    void anAnswerIsSizedAsTheReadingsHaveIt() {
        UnitFault.Sized cooler = fault("cooler-blocked@cooler", 0.8);
        Transmission faulty = cooler.fault().in(lesson.build(), cooler.size()).orElseThrow();
        FittedFault fitted = FittedFault.of(lesson.build(), cooler.fault(), Tapped.readings(faulty))
                .orElseThrow();
        assertEquals(0.8, fitted.fault().size(), 0.05);
        assertTrue(fitted.explains());
    }

    @Test
    void anAnswerThatReadingsSpeakAgainstDoesNotExplainThem() {
        UnitFault.Sized spring = fault("spring-weak@regulator", 0.5);
        Transmission faulty = spring.fault().in(lesson.build(), spring.size()).orElseThrow();
        FittedFault other = FittedFault.of(
                        lesson.build(), fault("cooler-blocked@cooler", 0.8).fault(), Tapped.readings(faulty))
                .orElseThrow();
        assertFalse(other.explains());
    }
}

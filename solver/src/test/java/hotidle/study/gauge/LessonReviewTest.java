package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFault;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** How soon the gauges of a small unit tell a broken regulator spring. */
class LessonReviewTest {

    private static void nothing() {}

    private static LessonFaults lesson;
    private static UnitFault.Sized broken;
    private static Transmission faulty;

    @BeforeAll
    static void solve() {
        lesson = LessonFaults.of(Tapped.build());
        broken = lesson.faults().stream()
                .filter(fault -> fault.name().equals("spring-weak@regulator"))
                .findFirst()
                .orElseThrow()
                .of(0.5);
        faulty = broken.fault().in(lesson.build(), broken.size()).orElseThrow();
    }

    private static LessonReview after(List<GaugeReading> readings) {
        return LessonReview.of(lesson.build(), broken.fault(), readings, LessonReviewTest::nothing);
    }

    @Test
    void readingsOfASoundUnitTellNothing() {
        LessonReview review = after(Tapped.readings(lesson.build().unit()));
        assertTrue(review.agrees());
        assertEquals(0, review.left());
        assertTrue(review.next().isEmpty());
    }

    @Test
    void allGaugesTellMoreThanTheLineAlone() {
        LessonReview line = after(Tapped.readings(faulty).subList(0, 1));
        LessonReview all = after(Tapped.readings(faulty));
        assertFalse(line.agrees());
        assertTrue(all.share() > line.share(), all.share() + " after all, " + line.share() + " after the line");
        assertTrue(all.share() > 0.5, "share " + all.share());
        assertTrue(line.next().isPresent());
        assertEquals(Meter.Reads.PRESSURE, line.next().get().row().meter().reads());
    }

    @Test
    void takingEachTimeWhatIsExpectedToTellMostFindsTheFault() {
        List<GaugeReading> taken = new ArrayList<>();
        GaugeReading.Row row = lesson.shown(broken).get(0).row();
        LessonReview review = null;
        while (row != null && taken.size() < 4) {
            taken.add(LessonReview.reading(row, GaugeValues.of(faulty, row).orElseThrow()));
            LessonReview now = after(taken);
            assertTrue(review == null || now.share() > review.share(), "each reading tells something");
            review = now;
            row = now.found() ? null : now.next().map(NextReading::row).orElse(null);
        }
        assertTrue(review.found(), "share " + review.share() + " after " + taken.size() + " readings");
    }
}

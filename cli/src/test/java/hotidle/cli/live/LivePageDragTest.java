package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import hotidle.answer.format.Quantity;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/**
 * Ten sliders dragged with the mouse. Each time a slider is let go, what stands there is the answer to what stands in the address. Says
 * how long pictures, verdicts and causes took, by the browser's own clock; {@code -Dhotidle.drag=300} drags for five minutes.
 */
@ExtendWith(LiveBrowser.class)
class LivePageDragTest {

    /** How long is dragged [s]. */
    private static final int SECONDS = Integer.getInteger("hotidle.drag", 5);

    /** From so much on, readings are those of the whole unit [s]. */
    private static final int LONG = 60;

    /** Memory is measured first once so much of the time is over, and one minute at most [s]. */
    private static final double FIRST = Math.min(60, SECONDS / 3.0);

    private static final long MOST_GROWTH = 10_000_000;

    /** Of one drag: so many steps of this length, to and fro. */
    private static final int STEPS = 8;

    private static final Duration STEP = Duration.ofMillis(16);

    private static final List<String> SLIDERS = List.of(
            "#knob-set_pressure_pa",
            "#knob-engine_speed_rpm",
            "#knob-sump_temperature_c",
            "input[type=range][aria-label='hub-face clearance']",
            "input[type=range][aria-label='hub-bushing bore']",
            "input[type=range][aria-label='regulator bore']",
            "input[type=range][aria-label='regulator valve']",
            "input[type=range][aria-label='primary face-clearance']",
            "input[type=range][aria-label='primary tip-clearance']",
            "input[type=range][aria-label='secondary face-clearance']");

    /** By the browser's own clock: from an input to its picture, from a slider's last move to the verdict. */
    private final Times pictures = new Times();

    private final Times verdicts = new Times();
    private double held;

    /** Answers that came while sliders were held. */
    private long answered;

    /** What the pictures took, browser's and program's, over the time that sliders were held. */
    private final Spent spent = new Spent();

    private static final String BEGUN = LivePage.IDLE + "&kept=build%3Drestored%26duty%3Dhot-idle";

    private void drag(LivePage page, String selector, int there) {
        WebElement slider = page.find(selector);
        int width = slider.getSize().getWidth();
        int left = -width / 2 + 8;
        Actions actions =
                new Actions(page.driver, STEP).moveToElement(slider, left, 0).clickAndHold();
        int step = (width - 16) / STEPS;
        for (int i = 0; i < STEPS + there; i++) {
            actions.moveByOffset(step, 0);
            if (i % 4 == 3) {
                actions.moveByOffset(-step, 0);
            }
        }
        page.took("picture");
        page.took("verdict");
        long before = page.answered();
        spent.begin(page);
        long begun = System.nanoTime();
        actions.release().perform();
        held += (System.nanoTime() - begun) / 1e9;
        spent.end(page);
        answered += page.answered() - before;
        pictures.addAll(page.took("picture"));
    }

    /** The line of what stands in the address. */
    private static void newestIsShown(LivePage page) throws Exception {
        JsonNode answer = page.answerForTheAddress("state");
        double pressure = answer.get("line_pa").asDouble();
        String line = Quantity.PRESSURE.shortOf(
                Quantity.UnitSystem.SHOP, pressure, answer.get("set_pa").asDouble(pressure));
        long rpm = Math.round(answer.at("/state/engine_speed_rpm").asDouble());
        page.until("document.getElementById('curve-under').textContent.startsWith('At " + rpm + " rpm: line " + line
                + "')");
    }

    /** The same of its verdict, once the sliders rest. */
    private static void verdictIsTheNewest(LivePage page) throws Exception {
        page.settled();
        assertEquals(page.answerForTheAddress("verdict").get("summary").asText(), page.text("#verdict .sentence"));
        assertEquals("", page.text("#trouble"));
    }

    @Test
    void slidersDraggedLeaveNoErrorNoStalePictureAndNoMemory(LivePage page) throws Exception {
        page.open(BEGUN);
        long begun = System.nanoTime();
        long first = 0;
        int drags = 0;
        while ((System.nanoTime() - begun) / 1e9 < SECONDS || drags < SLIDERS.size()) {
            drag(page, SLIDERS.get(drags % SLIDERS.size()), drags % 5 - 4);
            newestIsShown(page);
            drags++;
            if (drags % SLIDERS.size() % 3 == 0) {
                page.until("(window.took.verdict || []).length > 0");
                verdicts.addAll(page.took("verdict"));
            }
            if (drags % SLIDERS.size() == 0) {
                verdictIsTheNewest(page);
                page.js("location.hash = arguments[0]", BEGUN + LivePage.OPENED);
                page.settled();
            }
            if (first == 0 && (System.nanoTime() - begun) / 1e9 > FIRST) {
                first = page.heap();
            }
        }
        long grown = page.heap() - first;
        System.out.println(told(drags, (System.nanoTime() - begun) / 1e9, first, grown));
        assertTrue(first > 0 && grown < MOST_GROWTH, grown + " bytes more");
        assertEquals(List.of(), page.errors());
        assertTrue(pictures.count() > drags, pictures.count() + " pictures in " + drags + " drags");
        assertTrue(verdicts.count() >= drags / SLIDERS.size(), verdicts.count() + " verdicts in " + drags + " drags");
    }

    /** Readings typed in at the line's gauge, each other than the one before: of the rig, and of the whole unit where much time is given. */
    @Test
    void aReadingIsFollowedByWhatMayExplainIt(LivePage page) throws Exception {
        boolean whole = SECONDS >= LONG;
        Times agreement = new Times();
        Times causes = new Times();
        Times next = new Times();
        try (Visitor other = new Visitor(whole ? "shuttle-five" : "training-rig")) {
            page.open(other, "build=worn");
            long until = System.nanoTime() + SECONDS * 1_000_000_000L;
            for (int psi = 50; psi < 53 || (System.nanoTime() < until && psi < 100); psi++) {
                page.type("[aria-label^='Read at line [']", "" + psi);
                page.until("(window.took.causes || []).length > 0");
                agreement.addAll(page.took("agreement"));
                causes.addAll(page.took("likely"));
                next.addAll(page.took("causes"));
            }
            page.leave();
        }
        System.out.println("READ: " + (whole ? "shuttle-five" : "training-rig")
                + "; from a reading to whether it agrees: " + agreement.told() + "; to its causes: " + causes.told()
                + "; to what to read next: " + next.told());
        assertTrue(causes.count() >= 3 && causes.count() == next.count(), causes.told());
    }

    private String told(int drags, double seconds, long first, long grown) {
        return String.format(
                Locale.ROOT,
                "DRAGGED: %d drags in %.0f s; while held %.1f pictures and %.1f answers a second; heap after collection %.1f MB,"
                        + " then %+.1f MB%n  from input to picture: %s%n  from the last move to the verdict: %s%n  a picture: %s",
                drags,
                seconds,
                pictures.count() / held,
                answered / held,
                first / 1e6,
                grown / 1e6,
                pictures.told(),
                verdicts.told(),
                spent.each(pictures.count()));
    }
}

package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/**
 * Who listens, who uses keys alone, who has a telephone or a projector: all can use the page. {@code -Dhotidle.pictures=FOLDER} keeps
 * pictures of it to be looked at.
 */
@ExtendWith(LiveBrowser.class)
class LivePageForEveryoneTest {

    private static final String FAILING = LivePage.IDLE
            + "&kept=build%3Drestored%26duty%3Dhot-idle&fault=spring-weak%40regulator%3A20%25&job=pump&size.hub-face.clearance=0.00004";

    @Test
    void whoListensGetsAllOfItAndKeysAloneReachEverythingOnce(LivePage page) throws IOException {
        page.open(FAILING);
        page.unfold();
        long stops = PageChecks.keysReachAll(page);
        assertTrue(stops > 200, stops + " stops");
        PageChecks.cleanAtAnyWidth(page, FAILING);
        try (Visitor rig = new Visitor("training-rig")) {
            page.open(rig, "build=worn");
            page.unfoldTheDrawing();
            page.js("const part = document.getElementById('part'); part.value = 'pump';"
                    + " part.dispatchEvent(new Event('change'))");
            PageChecks.cleanAtAnyWidth(page, "drawn");
            page.js("location.hash = 'build=nosuch'");
            page.until("!document.getElementById('trouble').hidden");
            PageChecks.clean(page, "in trouble");
            page.leave();
        }
        page.errors(); // the refusal itself is written down by the browser
    }

    private static void press(LivePage page, CharSequence... keys) {
        WebElement held = page.driver.switchTo().activeElement();
        if ("file".equals(held.getDomAttribute("type"))) {
            new Actions(page.driver)
                    .sendKeys(keys)
                    .perform(); // else a driver takes what is pressed for the name of a file
        } else {
            held.sendKeys(keys);
        }
    }

    /** What has the keys. */
    private static String held(LivePage page) {
        return (String) page.js("""
                const one = document.activeElement;
                return one === document.body ? '' : one.id || (one.getAttribute('aria-label')
                  || (one.name || '') + (one.value || '') || one.textContent) + ' in ' + one.closest('[id]').id
                """);
    }

    @Test
    void keysAloneDoTheWork(LivePage page) {
        page.open(LivePage.IDLE);
        String worn = page.seen();
        // to the sheet by the link before everything, and there a slider and a field
        page.driver.findElement(org.openqa.selenium.By.tagName("body")).sendKeys(Keys.TAB);
        assertEquals("skip", held(page));
        press(page, Keys.ENTER);
        assertEquals("sheet", held(page));
        focus(page, "input[type=range][aria-label='hub-face clearance']");
        press(page, Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT);
        page.settled();
        assertTrue(page.address().contains("size.hub-face.clearance="), page.address());
        assertEquals("hub-face clearance in sheet", held(page));
        press(page, Keys.chord(Keys.CONTROL, "z"), Keys.chord(Keys.CONTROL, "z"), Keys.chord(Keys.CONTROL, "z"));
        page.settled();
        assertEquals("", LivePage.difference(worn, page.seen()));
        // another build: the arrow keeps the keys where they are
        focus(page, "input[name=build]:checked");
        press(page, Keys.ARROW_LEFT);
        page.settled();
        assertFalse(page.address().contains("build=worn&"), page.address());
        assertTrue(held(page).startsWith("build"), held(page));
        press(page, Keys.ARROW_RIGHT);
        page.settled();
        // a job, and back again; a set pressure, and back to what is written
        focus(page, "[data-job=pump]");
        press(page, Keys.SPACE);
        page.settled();
        assertTrue(page.address().contains("&job=pump&fold="), page.address());
        assertEquals("pump", page.js("return document.activeElement.dataset.job"));
        press(page, Keys.SPACE);
        page.settled();
        focus(page, "#knob-set_pressure_pa");
        press(page, Keys.ARROW_RIGHT);
        page.settled();
        focus(page, "[aria-label='Back to the set pressure as written']");
        press(page, Keys.ENTER);
        page.settled();
        assertNotEquals("", held(page));
        assertEquals("", LivePage.difference(worn, page.seen()));
        // a fault laid over and taken away
        focus(page, "#fault + *, #work label + button");
        press(page, Keys.ENTER);
        page.settled();
        assertTrue(page.address().contains("fault="), page.address());
        focus(page, "#work .faults li button");
        press(page, Keys.ENTER);
        page.settled();
        assertEquals("fault", held(page));
        assertEquals("", LivePage.difference(worn, page.seen()));
        // back to the beginning, where undo has no more to do
        focus(page, "#undo");
        for (int i = 0; i < 20 && page.find("#undo").isEnabled(); i++) {
            new Actions(page.driver).sendKeys(Keys.ENTER).perform(); // whatever has the keys by then
        }
        page.settled();
        assertEquals("redo", held(page));
    }

    private static void focus(LivePage page, String selector) {
        page.js("document.querySelector(arguments[0]).focus()", selector);
    }

    @Test
    void nothingLiesOverAnotherOrSticksOutFromATelephoneToAProjector(LivePage page) throws IOException {
        for (String state : List.of(FAILING, LivePage.IDLE + "&units=metric")) {
            page.open(state);
            if (state.equals(FAILING)) {
                page.unfold();
            }
            for (int width : List.of(360, 1280, 1920)) {
                page.width(width);
                page.until("innerWidth === " + width);
                PageChecks.keep(page, width + (state.equals(FAILING) ? "-unfolded" : ""));
                page.until("document.querySelector('#curve canvas').getBoundingClientRect().right <= innerWidth");
                PageChecks.tidy(page, width + " px");
            }
        }
    }
}

package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.cli.AxeCore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
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

    private static String axe(LivePage page) throws IOException {
        page.js(AxeCore.script());
        return (String)
                page.driver.executeAsyncScript(
                        "const done = arguments[0]; axe.run().then((found) => done(found.violations.map((one) => one.id + ': '"
                                + " + one.nodes.map((node) => node.html).slice(0, 3).join(' and ')).join('; ') + ' kept ' + found.passes.length))");
    }

    @Test
    void whoListensGetsAllOfIt(LivePage page) throws IOException {
        page.open(FAILING);
        page.unfold();
        cleanAtAnyWidth(page, FAILING);
        try (Visitor rig = new Visitor("training-rig")) {
            page.open(rig, "build=worn");
            page.unfoldTheDrawing();
            page.js("const part = document.getElementById('part'); part.value = 'pump';"
                    + " part.dispatchEvent(new Event('change'))");
            cleanAtAnyWidth(page, "drawn");
            page.js("location.hash = 'build=nosuch'");
            page.until("!document.getElementById('trouble').hidden");
            clean(axe(page), "in trouble");
            page.leave();
        }
        page.errors(); // the refusal itself is written down by the browser
    }

    private static void cleanAtAnyWidth(LivePage page, String what) throws IOException {
        for (int width : List.of(1280, 360)) {
            page.width(width);
            clean(axe(page), width + " px, " + what);
        }
    }

    private static void clean(String found, String where) {
        assertTrue(found.matches(" kept [1-9]\\d+"), where + ": " + found);
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

    /** Notes each thing that gets the keys, and whether it is marked and in sight. */
    private static final String WATCH = """
            window.reached = [];
            document.addEventListener('focusin', (event) => {
              const one = event.target;
              const shown = one.matches('.tabs input') ? one.nextElementSibling : one;
              const style = getComputedStyle(shown);
              const box = shown.getBoundingClientRect();
              const seen = style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2
                && box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth;
              window.reached.push([one, seen]);
            });
            return [...document.querySelectorAll('a[href], button, input, select, summary, textarea, [tabindex="0"]')]
              .filter((it) => !it.disabled && it.checkVisibility() && !(it.type === 'radio' && !it.checked)).length
            """;

    /** What was reached: things in all, those of them reached twice or before what stands above them, and those not seen. */
    private static final String REACHED = """
            const all = window.reached.map(([one]) => one);
            const named = (one) => one.id || one.getAttribute('aria-label') || one.textContent.slice(0, 40) || one.type;
            return [String(all.length),
              ...all.filter((one, i) => all.indexOf(one) !== i).map((one) => 'again: ' + named(one)),
              ...window.reached.filter(([, seen]) => !seen).map(([one]) => 'not seen: ' + named(one))]
            """;

    @Test
    void keysAloneReachEverythingOnceAndSeeWhereTheyAre(LivePage page) {
        page.open(FAILING);
        page.unfold();
        page.js("document.activeElement.blur(); getSelection().removeAllRanges(); scrollTo(0, 0)");
        long stops = (Long) page.js(WATCH);
        assertTrue(stops > 200, stops + " stops");
        CharSequence[] tabs = new CharSequence[(int) stops];
        Arrays.fill(tabs, Keys.TAB);
        new Actions(page.driver).sendKeys(tabs).perform();
        assertEquals(List.of("" + stops), page.js(REACHED));
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
        assertTrue(page.address().endsWith("job=pump"), page.address());
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
        focus(page, "#work li button");
        press(page, Keys.ENTER);
        page.settled();
        assertEquals("fault", held(page));
        assertEquals("", LivePage.difference(worn, page.seen()));
        // back to the beginning, where undo has no more to do
        focus(page, "#undo");
        for (int i = 0; i < 20 && page.find("#undo").isEnabled(); i++) {
            press(page, Keys.ENTER);
        }
        assertEquals("redo", held(page));
    }

    private static void focus(LivePage page, String selector) {
        page.js("document.querySelector(arguments[0]).focus()", selector);
    }

    /** Texts that lie over each other, or stick out of the page. */
    private static final String MESS = """
            const boxes = [];
            /** Whether it lies in what is shown of the panes that it scrolls in. */
            const inside = (one, box) => {
              for (let it = one; it !== document.body; it = it.parentElement) {
                const frame = it.getBoundingClientRect();
                if (getComputedStyle(it).overflowY !== 'visible' && (box.bottom > frame.bottom || box.top < frame.top)) { return false; }
              }
              return true;
            };
            const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            while (walk.nextNode()) {
              const node = walk.currentNode;
              const of = node.parentElement;
              if (!node.textContent.trim() || !of.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true })
                  || of.closest('svg, option, textarea, .skip, .gutter')) { continue; }
              const range = document.createRange();
              range.selectNodeContents(node);
              for (const box of range.getClientRects()) {
                if (box.width > 1 && inside(of, box)) { boxes.push([box, node.textContent.trim().slice(0, 40), of]); }
              }
            }
            for (const one of document.querySelectorAll('button, select, input:not([type=radio]), canvas')) {
              if (one.checkVisibility() && !one.closest('.tabs')) { boxes.push([one.getBoundingClientRect(), one.id || one.ariaLabel || one.textContent, one]); }
            }
            const said = [];
            boxes.forEach(([a, text, of], i) => {
              if ((a.left < -1 || a.right > document.documentElement.clientWidth + 1) && !of.closest('.table, .picture')) { said.push('sticks out: ' + text); }
              for (let j = i + 1; j < boxes.length; j++) {
                const [b, other, its] = boxes[j];
                if (of === its || of.contains(its) || its.contains(of)) { continue; }
                const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
                const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
                if (wide > 2 && high > 3 && !(of.closest('.column.read') && !its.closest('.column.read'))) { said.push(text + ' over ' + other); }
              }
            });
            for (const one of document.querySelectorAll('button, th, td, label, h1, h2, h3, dd, dt, summary, legend')) {
              if (one.checkVisibility() && one.scrollWidth > one.clientWidth + 2 && one.clientWidth > 0
                  && getComputedStyle(one).overflowX !== 'visible') { said.push('cut: ' + one.textContent.slice(0, 40)); }
            }
            for (const one of document.querySelectorAll('section')) {
              if (one.scrollWidth > one.clientWidth + 1) { said.push('wider than its column: ' + one.id); }
            }
            return said.slice(0, 12)
            """;

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
                keep(page, width + (state.equals(FAILING) ? "-unfolded" : ""));
                page.until("document.querySelector('#curve canvas').getBoundingClientRect().right <= innerWidth");
                assertEquals(List.of(), page.js(MESS), width + " px");
                long wide = (Long) page.js("return document.documentElement.scrollWidth");
                assertTrue(wide <= width, wide + " px at " + width);
            }
        }
    }

    private static void keep(LivePage page, String name) throws IOException {
        String folder = System.getProperty("hotidle.pictures");
        if (folder != null) {
            Files.createDirectories(Path.of(folder));
            List<String> parts = page.pictures();
            for (int i = 0; i < parts.size(); i++) {
                Files.write(
                        Path.of(folder, name + "-" + i + ".png"),
                        Base64.getDecoder().decode(parts.get(i)));
            }
        }
    }
}

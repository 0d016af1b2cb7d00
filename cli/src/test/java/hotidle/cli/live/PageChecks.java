package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.cli.AxeCore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;

/** What holds of a page however it stands: for who listens, who uses keys alone, and who looks at it on any screen. */
final class PageChecks {

    private PageChecks() {}

    /** Nothing is found by the rules of axe, on a screen and on a telephone. */
    static void cleanAtAnyWidth(LivePage page, String what) throws IOException {
        for (int width : List.of(1280, 360)) {
            page.width(width);
            clean(page, width + " px, " + what);
        }
    }

    /** Nothing is found by the rules of axe as it stands. */
    static void clean(LivePage page, String where) throws IOException {
        page.js(AxeCore.script());
        String found = (String) page.driver.executeAsyncScript(
                "const done = arguments[0]; axe.run({resultTypes: ['violations']}).then((found) => done(found.violations.map((one) =>"
                        + " one.id + ': ' + one.nodes.map((node) => node.html).slice(0, 3).join(' and ')).join('; ') + ' kept '"
                        + " + found.passes.length))");
        assertTrue(found.matches(" kept [1-9]\\d+"), where + ": " + found);
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

    /** Keys alone reach everything once, and it is seen where they are; how many stops there are. */
    static long keysReachAll(LivePage page) {
        page.js("getSelection().removeAllRanges(); scrollTo(0, 0); document.body.tabIndex = -1; document.body.focus();"
                + " document.body.removeAttribute('tabindex')"); // keys go on from what had them last
        long stops = (Long) page.js(WATCH);
        CharSequence[] tabs = new CharSequence[(int) stops];
        Arrays.fill(tabs, Keys.TAB);
        new Actions(page.driver).sendKeys(tabs).perform();
        assertEquals(List.of("" + stops), page.js(REACHED));
        return stops;
    }

    /** Texts that lie over each other, or stick out of the page. */
    private static final String MESS = """
            const boxes = [];
            /** What stays in sight while the rest scrolls by lies over it. */
            const apart = (one) => one.closest('#places, .column.read');
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
            boxes.sort(([a], [b]) => a.top - b.top);
            boxes.forEach(([a, text, of], i) => {
              if ((a.left < -1 || a.right > document.documentElement.clientWidth + 1) && !of.closest('.table, .picture')) { said.push('sticks out: ' + text); }
              for (let j = i + 1; j < boxes.length; j++) {
                const [b, other, its] = boxes[j];
                if (b.top >= a.bottom) { break; }
                if (of === its || of.contains(its) || its.contains(of)) { continue; }
                const wide = Math.min(a.right, b.right) - Math.max(a.left, b.left);
                const high = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
                if (wide > 2 && high > 3 && apart(of) === apart(its)) { said.push(text + ' over ' + other); }
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

    /** Nothing lies over something else, sticks out or is cut off. */
    static void tidy(LivePage page, String where) {
        assertEquals(List.of(), page.js(MESS), where);
        long wide = (Long) page.js("return document.documentElement.scrollWidth - innerWidth");
        assertTrue(wide <= 0, wide + " px too wide, " + where);
    }

    /** The same at each width, with pictures of it. */
    static void tidyAtAnyWidth(LivePage page, String what) throws IOException {
        for (int width : List.of(360, 1280, 1920)) {
            page.width(width);
            page.until("innerWidth === " + width);
            keep(page, width + "-" + what);
            tidy(page, width + " px, " + what);
        }
    }

    /** Keeps pictures where {@code -Dhotidle.pictures=FOLDER} asks for them. */
    static void keep(LivePage page, String name) throws IOException {
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

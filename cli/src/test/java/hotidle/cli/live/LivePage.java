package hotidle.cli.live;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;

/** A live page as somebody at the browser sees and uses it. */
final class LivePage {

    /** The worn unit at hot idle, as it stands in an address. */
    static final String IDLE = "build=worn&duty=hot-idle";

    /** Panels that are shut at first and that most tests turn at. */
    static final String OPENED = "&fold=sheet+gauges";

    /** Nothing on the page takes longer, on a machine that is busy with other tests [ms]. */
    private static final long PATIENCE = 60_000;

    /** Between two looks [ms]. */
    private static final long LOOK = 15;

    /** Height of a picture [px]. */
    private static final long SCREEN = 1500;

    /**
     * Everything that the panels show: words, numbers, fields, drawing. A lesson proposes another number to each page; of the gauges'
     * scales what they show, not how far they go.
     */
    private static final String SEEN = """
            const scales = [...document.querySelectorAll('.scale')];
            scales.forEach((one) => { one.style.display = 'none'; });
            const later = document.querySelector('#verdict .later');
            later.style.display = 'none';
            const seen = [...document.querySelectorAll('main section:not(#lesson)')].map((panel) => [panel.id, panel.innerText,
              ...[...panel.querySelectorAll('input, select')].map((one) => one.type === 'radio' ? one.checked : one.value),
              ...[...panel.querySelectorAll('svg:not(.scale) text')].map((one) => one.textContent)].join('|')).join('\\n');
            scales.forEach((one) => { one.style.display = ''; });
            later.style.display = '';
            return seen
            """;

    /** Where it stands, and all that the page says of what went wrong. */
    private static final String TROUBLE = """
            return location.href + ' ' + [...document.querySelectorAll('[role=alert], [role=status], .causes p, .old, .waiting, .costing')]
              .map((one) => (one.className || one.id) + ': ' + one.textContent.slice(0, 200)).join(' | ').replaceAll('\\n', ' ')
            """;

    final ChromeDriver driver;
    final Visitor visitor;
    private final String first;

    LivePage(ChromeDriver driver, Visitor visitor) {
        this.driver = driver;
        this.visitor = visitor;
        first = driver.getWindowHandles().iterator().next();
    }

    /** Opens it as from a bookmark. */
    LivePage open(String fragment) {
        return open(visitor, fragment);
    }

    /** Opens the page of another server. */
    LivePage open(Visitor other, String fragment) {
        driver.get(other.server.address() + "#" + fragment + (fragment.contains("fold=") ? "" : OPENED));
        settled();
        return this;
    }

    Object js(String script, Object... arguments) {
        return driver.executeScript(script, arguments);
    }

    private long number(String script) {
        return ((Number) js(script)).longValue();
    }

    /** Waits until a script says yes. */
    void until(String condition) {
        long end = System.currentTimeMillis() + PATIENCE;
        while (!Boolean.TRUE.equals(js("return Boolean(" + condition + ")"))) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError("never: " + condition + "; " + js(TROUBLE));
            }
            try {
                Thread.sleep(LOOK); // else the driver keeps a processor from the page
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new AssertionError(stopped);
            }
        }
    }

    /** Waits until all that was asked for stands there, but for what may be set, which takes seconds: see {@link #wholly}. */
    void settled() {
        until(
                "document.getElementById('verdict')?.dataset.verdict && window.awaited === window.awaitedLong && !document.querySelector("
                        + "'.waiting:not(.later), .costing, section.old, .scales.old, .causes.old, #gauges[aria-busy]')");
    }

    /** Waits until what may be set stands there too. */
    void wholly() {
        settled();
        until("window.awaited === 0 && !document.querySelector('.waiting')");
    }

    String text(String selector) {
        return (String) js("return document.querySelector(arguments[0])?.innerText ?? ''", selector);
    }

    @SuppressWarnings("unchecked")
    List<String> texts(String selector) {
        return (List<String>)
                js("return [...document.querySelectorAll(arguments[0])].map((one) => one.textContent)", selector);
    }

    /** Cells of the rows of a table, shown or not. */
    List<List<String>> cells(String rows) {
        return lists(
                "return [...document.querySelectorAll(arguments[0])].map((row) => [...row.cells].map((cell) => cell.textContent))",
                rows);
    }

    /** Lists of texts that a script gives. */
    @SuppressWarnings("unchecked")
    List<List<String>> lists(String script, Object... arguments) {
        return (List<List<String>>) js(script, arguments);
    }

    WebElement find(String selector) {
        WebElement found = driver.findElement(By.cssSelector(selector));
        js("arguments[0].scrollIntoView({block: 'center'})", found);
        return found;
    }

    /** Clicks, as a person does: at what is seen there. */
    void click(String selector) {
        find(selector).click();
    }

    /** Chooses one of the tabs. */
    void choose(String name, String value) {
        click("input[name='" + name + "'][value='" + value + "'] + span");
    }

    /** Types a number into a field, and leaves it. */
    void type(String selector, String value) {
        find(selector).sendKeys(Keys.chord(Keys.CONTROL, "a"), value, Keys.TAB);
    }

    /** Opens whatever can be opened but the drawing. */
    void unfold() {
        js("document.querySelectorAll('section.shut:not(#drawing) .fold').forEach((one) => one.click());"
                + " document.querySelectorAll('section:not(#drawing) details').forEach((one) => { one.open = true; })");
        until("document.querySelectorAll('#curve tbody tr').length > 0");
        settled();
    }

    /** Opens the drawing, which of a large circuit takes long. */
    void unfoldTheDrawing() {
        js("document.querySelector('#drawing.shut .fold')?.click()");
        until("document.querySelector('#drawing svg')");
        until("document.querySelector('#drawing .quiet').textContent.startsWith('Light to dark')");
        settled();
    }

    String seen() {
        return (String) js(SEEN);
    }

    /** Where two of these first differ; empty where they are the same. */
    static String difference(String one, String other) {
        int at = 0;
        while (at < Math.min(one.length(), other.length()) && one.charAt(at) == other.charAt(at)) {
            at++;
        }
        return one.equals(other) ? "" : around(one, at) + " is now " + around(other, at);
    }

    private static String around(String text, int at) {
        return text.substring(Math.max(0, at - 60), Math.min(text.length(), at + 60));
    }

    /** What stands in the address, without the token. */
    String address() {
        return (String) js("return location.href");
    }

    /** What the program answers about the state that stands in the address, asked anew. */
    JsonNode answerForTheAddress(String kind) throws IOException, InterruptedException {
        String state = (String)
                driver.executeAsyncScript(
                        "const done = arguments[0]; import('/state.js').then((m) => done(JSON.stringify(m.read(location.hash.slice(1)))))");
        new ObjectMapper().readTree(state);
        return visitor.answer(kind, state);
    }

    /** Leaves the page of a server that is about to end. */
    void leave() {
        driver.get("about:blank");
    }

    /** Another page beside this one. */
    LivePage another() {
        driver.switchTo().newWindow(org.openqa.selenium.WindowType.TAB);
        return this;
    }

    void onlyThisWindow() {
        for (String window : driver.getWindowHandles()) {
            if (!window.equals(first)) {
                driver.switchTo().window(window).close();
            }
        }
        driver.switchTo().window(first);
        driver.executeCdpCommand("Emulation.clearDeviceMetricsOverride", Map.of());
    }

    /** A window of a width, or a telephone [px]. */
    void width(int width) {
        driver.executeCdpCommand(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", 900, "deviceScaleFactor", 1, "mobile", false));
    }

    /** Errors that the browser has written down since it was asked last. */
    List<String> errors() {
        return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
                .filter(entry -> entry.getLevel().intValue() >= Level.SEVERE.intValue())
                .map(entry -> entry.getMessage())
                .toList();
    }

    /** Memory of the page's scripts after collection [bytes]. */
    long heap() {
        driver.executeCdpCommand("HeapProfiler.enable", Map.of());
        driver.executeCdpCommand("HeapProfiler.collectGarbage", Map.of());
        driver.executeCdpCommand("HeapProfiler.collectGarbage", Map.of());
        return ((Number) driver.executeCdpCommand("Runtime.getHeapUsage", Map.of())
                        .get("usedSize"))
                .longValue();
    }

    /** Times of a kind from what was done to what stands there, by the browser's own clock, since they were asked for last [ms]. */
    List<Double> took(String what) {
        return ((List<?>) js("return (window.took[arguments[0]] || []).splice(0)", what))
                .stream().map(one -> ((Number) one).doubleValue()).toList();
    }

    /** Answers that came since the page was loaded. */
    long answered() {
        return number("return window.answered");
    }

    /** All of the page from top to bottom, as PNGs in base 64 of one screen each. */
    List<String> pictures() {
        long height = number("return document.documentElement.scrollHeight");
        long width = number("return innerWidth");
        List<String> pictures = new ArrayList<>();
        for (long top = 0; top < height; top += SCREEN) {
            Map<String, Object> clip =
                    Map.of("x", 0, "y", top, "width", width, "height", Math.min(SCREEN, height - top), "scale", 1);
            pictures.add((String) driver.executeCdpCommand(
                            "Page.captureScreenshot", Map.of("captureBeyondViewport", true, "clip", clip))
                    .get("data"));
        }
        return pictures;
    }
}

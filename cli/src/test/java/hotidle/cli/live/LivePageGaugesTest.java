package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Gauges of the live page as somebody reads them who types in beside them what the real ones show. */
@ExtendWith(LiveBrowser.class)
class LivePageGaugesTest {

    private static final String LINE = "[aria-label^='Read at line [']";
    /** Whether somebody who looks at the gauges has been worked ahead for. */
    private static final String AHEAD =
            "performance.getEntriesByType('resource').some((one) => one.name.endsWith('/api/ahead'))";

    private static final String ROWS = "document.querySelectorAll('.readings tbody tr').length";

    @Test
    void aReadingStandsBesideTheModelWithWhatExplainsItAndIsUndoneAndLoadedAgain(LivePage page)
            throws IOException, InterruptedException {
        try (Visitor rig = new Visitor("training-rig")) {
            page.open(rig, "");
            double line = rig.answer("gauges", "{}").at("/gauges/0/pressure_pa").asDouble();
            assertEquals(
                    Quantity.PRESSURE.with(Quantity.UnitSystem.SHOP, line),
                    page.texts(".scales .figures strong").get(0));
            assertTrue(page.texts(".scales .figures")
                    .get(0)
                    .endsWith(Quantity.PRESSURE.with(Quantity.UnitSystem.METRIC, line)));
            assertTrue(page.text("#gauges").contains("eye protection on"), "cautions stand beside the gauges");
            page.find(LINE);
            page.until(AHEAD);
            page.type(LINE, "60");
            page.until(ROWS + " === 1 && document.querySelector('.causes .sentence')");
            page.settled();
            String verdict = page.text(".causes .sentence");
            assertTrue(verdict.startsWith("worn, 1 reading of this page: THEY "), verdict);
            page.until("document.querySelector('.causes .next li, .causes p')");
            PageChecks.tidyAtAnyWidth(page, "causes");
            PageChecks.cleanAtAnyWidth(page, "gauges with causes");
            PageChecks.keysReachAll(page);
            page.type("[aria-label^='Note of reading 1']", "<img src=x onerror=alert(1)>");
            page.settled();
            assertEquals(0L, page.js("return document.querySelectorAll('#gauges img').length"));
            page.click("#undo");
            page.click("#undo");
            page.until(ROWS + " === 0");
            page.click("#redo");
            page.until(ROWS + " === 1");
            page.driver.navigate().refresh();
            page.until(ROWS + " === 1");
            page.settled();
            assertEquals("60", page.find(LINE).getDomProperty("value"));
        }
    }
}

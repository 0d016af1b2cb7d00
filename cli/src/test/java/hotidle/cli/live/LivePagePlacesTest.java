package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** The page is long: each panel is found by a row of names that stays in sight, and can be shut. */
@ExtendWith(LiveBrowser.class)
class LivePagePlacesTest {

    private static final String SHOWN = "document.querySelector('#sheet table').checkVisibility()";

    @Test
    void aPanelIsOpenedByItsNameOrItsHeadStaysSoWhenLoadedAnewAndIsShutByItsHead(LivePage page) throws IOException {
        try (Visitor rig = new Visitor("training-rig")) {
            page.open(rig, "build=worn&fold=");
            page.until("!" + SHOWN);
            assertEquals("false", expanded(page));
            page.js("scrollTo(0, document.body.scrollHeight)");
            page.until("document.getElementById('bar').getBoundingClientRect().top === 0");
            page.js("[...document.querySelectorAll('#places a')].find((one) => one.textContent === 'Sheet').click()");
            page.until(SHOWN);
            assertEquals("sheet", page.js("return document.activeElement.id"));
            assertTrue(page.address().endsWith("fold=sheet"), page.address());
            page.until("document.querySelector('#sheet h2').getBoundingClientRect().top"
                    + " >= document.getElementById('bar').getBoundingClientRect().bottom");
            page.driver.navigate().refresh();
            page.settled();
            page.until(SHOWN);
            PageChecks.cleanAtAnyWidth(page, "with panels shut");
            page.find("#sheet h2 button").sendKeys(Keys.ENTER);
            page.until("!" + SHOWN);
            assertEquals("false", expanded(page));
            assertFalse(page.address().contains("fold"), page.address());
            page.leave();
        }
    }

    private static Object expanded(LivePage page) {
        return page.js("return document.querySelector('#sheet h2 button').getAttribute('aria-expanded')");
    }

    /** All panels fold in one way, by their heads: what opens a drawing or a lesson opens the verdict too. */
    @Test
    void eachPanelIsFoldedByItsHeadAndWhatIsNotNeededFirstIsShut(LivePage page) {
        page.open("build=worn&fold=");
        assertEquals(
                "verdict, conditions, work, curve, oil",
                page.js("return [...document.querySelectorAll('section:not(.shut)')].map((one) => one.id)"
                        + ".sort((a, b) => ['verdict', 'conditions', 'work', 'curve', 'oil'].indexOf(a)"
                        + " - ['verdict', 'conditions', 'work', 'curve', 'oil'].indexOf(b)).join(', ')"));
        assertEquals(
                page.js("return document.querySelectorAll('main section').length"),
                page.js("return document.querySelectorAll('main section > h2 > button[aria-expanded]').length"));
        page.js("document.querySelector('#lesson .fold').click()");
        page.until("document.querySelector('#lesson .begin select').options.length > 1");
        assertTrue(page.address().endsWith("fold=lesson"), page.address());
    }

    /** A column that is higher than the window has no scroll bar of its own: it stays in sight with its lower end. */
    @Test
    void whatIsReadStaysInSightAndUndoToo(LivePage page) {
        page.open("build=worn");
        page.width(1280);
        page.js("document.querySelector('#curve details').open = true");
        page.until("document.querySelector('.column.read').offsetHeight > innerHeight");
        page.js("scrollTo(0, 3000)");
        page.until("Math.abs(document.querySelector('.column.read').getBoundingClientRect().bottom - innerHeight) < 2");
        assertEquals(
                true,
                page.js(
                        "const read = document.querySelector('.column.read'); return read.scrollHeight <= read.clientHeight"));
        assertEquals(
                true,
                page.js("const b = document.getElementById('undo').getBoundingClientRect();"
                        + " return b.top >= 0 && b.bottom < 100"));
    }

    /** There is no state before the first one, so that nothing is said to be of it. */
    @Test
    void theFirstVerdictThatIsWaitedForIsOfNoStateBefore(LivePage page) {
        page.driver.get(page.visitor.server.address() + "#build=worn");
        page.until(
                "document.querySelector('#verdict.waiting .stale')?.textContent || document.getElementById('verdict')?.dataset.verdict");
        String first = page.text("#verdict h2");
        assertFalse(first.contains("state before"), first);
        assertEquals(0L, page.js("return document.querySelectorAll('#curve .waiting').length"));
        page.settled();
        page.js(
                "const b = document.querySelector('#knob-set_pressure_pa'); b.value = 0.9 * b.value; b.dispatchEvent(new Event('input'));"
                        + " window.waited = document.querySelector('#verdict .stale').textContent");
        assertTrue(((String) page.js("return window.waited")).contains("of the state before"));
        page.settled();
    }

    @Test
    void aStuckValveSaysWhatItLeavesOpenAndShut(LivePage page) {
        page.open(LivePage.IDLE + "&fault=valve-stuck%40converter-limit%3A0m");
        assertTrue(page.text("#work .faults").contains("off its rest: feed OPEN"), page.text("#work .faults"));
        page.js("location.hash = arguments[0]", LivePage.IDLE + "&fault=valve-stuck%40converter-limit%3A0.0018m");
        page.settled();
        assertTrue(page.text("#work .faults").contains("feed SHUT"), page.text("#work .faults"));
    }
}

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
    void aPanelIsShutByItsHeadStaysShutWhenLoadedAnewAndIsOpenedByItsName(LivePage page) throws IOException {
        try (Visitor rig = new Visitor("training-rig")) {
            page.open(rig, "build=worn");
            page.find("#sheet h2 button").sendKeys(Keys.ENTER);
            page.until("!" + SHOWN);
            assertEquals(
                    "false",
                    page.js("return document.querySelector('#sheet h2 button').getAttribute('aria-expanded')"));
            assertTrue(page.address().endsWith("shut=sheet"), page.address());
            PageChecks.cleanAtAnyWidth(page, "with a panel shut");
            page.driver.navigate().refresh();
            page.settled();
            page.until("!" + SHOWN);
            page.js("scrollTo(0, document.body.scrollHeight)");
            page.until("document.getElementById('places').getBoundingClientRect().top === 0");
            page.js("[...document.querySelectorAll('#places a')].find((one) => one.textContent === 'Sheet').click()");
            page.until(SHOWN);
            assertEquals("sheet", page.js("return document.activeElement.id"));
            assertFalse(page.address().contains("shut"), page.address());
            page.until("document.querySelector('#sheet h2').getBoundingClientRect().top"
                    + " >= document.getElementById('places').getBoundingClientRect().bottom");
            page.leave();
        }
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

package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** What was set on the page comes back to the last digit: undone, done again, loaded anew, beside another page. */
@ExtendWith(LiveBrowser.class)
class LivePageHistoryTest {

    private static final String HUB = "[aria-label^='hub-face clearance [']";

    /** What can be seen and what stands in the address. */
    private static String all(LivePage page) {
        page.settled();
        return page.address() + "\n" + page.seen();
    }

    private static void unfoldTheCurve(LivePage page) {
        page.js("document.querySelector('#curve details').open = true");
        page.until("document.querySelectorAll('#curve tbody tr').length > 0");
    }

    @Test
    void undoAndRedoBringBackEachNumber(LivePage page) {
        page.open(LivePage.IDLE);
        unfoldTheCurve(page);
        page.find(HUB).sendKeys("1", Keys.BACK_SPACE, Keys.TAB); // begun and put back: the field goes on with the rest
        List<String> steps = new ArrayList<>(List.of(all(page)));
        page.wholly();
        String maySet = page.text("#may-set");
        page.type(HUB, "0.0012");
        steps.add(all(page));
        page.type("[aria-label^='Engine speed [']", "725");
        steps.add(all(page));
        page.click("[data-job=pump]");
        steps.add(all(page));
        page.choose("build", "restored");
        steps.add(all(page));
        page.click("#keep");
        steps.add(all(page));
        page.type("#units", "metric");
        steps.add(all(page));
        for (int i = 1; i < steps.size(); i++) {
            assertNotEquals(steps.get(i - 1), steps.get(i));
        }
        for (int i = steps.size() - 2; i >= 0; i--) {
            page.click("#undo");
            assertEquals("", LivePage.difference(steps.get(i), all(page)), "undone to step " + i);
        }
        assertFalse(page.find("#undo").isEnabled());
        page.wholly();
        assertEquals(maySet, page.text("#may-set"), "what may be set is not of the state that was undone");
        for (int i = 1; i < steps.size(); i++) {
            page.click("#redo");
            assertEquals("", LivePage.difference(steps.get(i), all(page)), "done again to step " + i);
        }
        assertFalse(page.find("#redo").isEnabled());
    }

    @Test
    void aPageLoadedAnewOrInARestartedProgramStandsWhereItStood(LivePage page) throws IOException {
        page.open(LivePage.IDLE + "&kept=build%3Drestored");
        page.type(HUB, "0.0013");
        page.type("[aria-label^='Sump temperature [']", "200");
        page.settled();
        unfoldTheCurve(page);
        String before = all(page);
        page.driver.navigate().refresh();
        page.settled();
        unfoldTheCurve(page);
        assertEquals("", LivePage.difference(before, all(page)));
        String address = page.address();
        assertFalse(address.contains(page.visitor.token), address);
        try (Visitor restarted = new Visitor("shuttle-five")) {
            page.open(restarted, address.substring(address.indexOf('#') + 1));
            unfoldTheCurve(page);
            assertEquals(
                    before.substring(before.indexOf('#')),
                    all(page).substring(all(page).indexOf('#')));
            page.leave();
        }
    }

    @Test
    void twoPagesAtOnceDoNotMix(LivePage page) {
        page.open(LivePage.IDLE);
        String one = page.driver.getWindowHandle();
        String worn = page.text("#curve-under");
        String wornVerdict = page.text("#verdict .sentence");
        page.another().open("build=restored&duty=hot-idle");
        String other = page.driver.getWindowHandle();
        String restored = page.text("#curve-under");
        assertNotEquals(worn, restored);
        // both are turned at, in turn and without waiting
        for (int rpm = 700; rpm <= 900; rpm += 100) {
            page.driver.switchTo().window(one);
            page.type("[aria-label^='Engine speed [']", "" + rpm);
            page.driver.switchTo().window(other);
            page.type("[aria-label^='Engine speed [']", "" + (rpm + 50));
        }
        page.settled();
        assertTrue(page.text("#curve-under").startsWith("At 950 rpm"), page.text("#curve-under"));
        assertTrue(page.text("#verdict .sentence").startsWith("restored"), page.text("#verdict"));
        page.type("[aria-label^='Engine speed [']", "650");
        page.settled();
        assertEquals(restored, page.text("#curve-under"));
        page.driver.switchTo().window(one);
        page.settled();
        assertTrue(page.text("#curve-under").startsWith("At 900 rpm"), page.text("#curve-under"));
        page.type("[aria-label^='Engine speed [']", "650");
        page.settled();
        assertEquals(worn, page.text("#curve-under"));
        assertEquals(wornVerdict, page.text("#verdict .sentence"));
    }

    /** Three builds chosen faster than any is answered: the page ends at the last one. */
    @Test
    void theNewestChoiceWins(LivePage page) throws Exception {
        page.open(LivePage.IDLE);
        page.js("for (const name of ['restored', 'fresh', 'worn-raised', 'restored-raised']) {"
                + " document.querySelector(`input[name=build][value=${name}]`).click(); }");
        page.until("document.querySelector('#verdict .sentence').textContent.startsWith('restored-raised')");
        page.settled();
        assertTrue(page.address().contains("#build=restored-raised&duty=hot-idle&fold="), page.address());
        assertEquals("", page.text("#trouble"));
        double line = page.answerForTheAddress("state").get("line_pa").asDouble();
        assertTrue(page.text("#curve-under").contains("line " + Math.round(line / 6894.757293168362) + " psi"));
        assertEquals(
                "true",
                String.valueOf(page.js("return document.querySelector('input[value=restored-raised]').checked")));
    }
}

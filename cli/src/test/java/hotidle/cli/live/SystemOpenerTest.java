package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class SystemOpenerTest {

    @Test
    void eachSystemHasItsOpener() {
        assertEquals(List.of("xdg-open"), SystemOpener.opener("Linux"));
        assertEquals(List.of("open"), SystemOpener.opener("Mac OS X"));
        assertEquals("rundll32", SystemOpener.opener("Windows 11").get(0));
    }

    @Test
    void anOpenerThatIsMissingOrFailsHasOpenedNothing() {
        assertFalse(SystemOpener.opened(List.of("no-such-opener"), "http://127.0.0.1:1/"));
        assertFalse(SystemOpener.opened(List.of("false"), "http://127.0.0.1:1/"));
        assertTrue(SystemOpener.opened(List.of("true"), "http://127.0.0.1:1/"));
    }
}

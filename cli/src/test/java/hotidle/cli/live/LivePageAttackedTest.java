package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.net.httpserver.HttpServer;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** A page that was led astray, and names that are scripts: the browser gives nothing away and runs nothing. */
@ExtendWith(LiveBrowser.class)
class LivePageAttackedTest {

    private static final String SCRIPT = "<img src=x onerror=window.hit=1><script>window.hit=1</script>";

    @Test
    void aPartCannotBeNamedAScript() {
        String text = Library.text("training-rig")
                .orElseThrow()
                .replace("  relief: {kind", "  \"relief" + SCRIPT + "\": {kind");
        assertTrue(CircuitReader.read(text, "rig.yaml").circuit().isEmpty());
    }

    @Test
    void aScriptInWhatAFileSaysOfAPartIsText(LivePage page) throws Exception {
        String text = Library.text("training-rig")
                .orElseThrow()
                .replace("about: one hole open and a worn pump", "about: \"worn " + SCRIPT + "\"")
                .replace("about: invented bench", "about: " + SCRIPT + " invented bench")
                .replace("about: \"equal holes", "about: \"" + SCRIPT + " equal holes")
                .replace("line: outlet of the pump", "line: \"" + SCRIPT + "\"");
        try (Visitor visitor = new Visitor("training-rig", text, Visitor.SEARCHED)) {
            page.driver.get(
                    visitor.server.address() + "#build=worn&duty=fast&fault=%3Cscript%3Ewindow.hit%3D1%3C/script%3E");
            page.until("!document.getElementById('trouble').hidden");
            page.errors(); // the fault that is none was refused, which the browser writes down
            page.open(visitor, "build=worn&duty=over");
            page.unfold();
            page.unfoldTheDrawing();
            page.js("const part = document.getElementById('part');"
                    + " part.value = 'bleed';"
                    + " part.dispatchEvent(new Event('change'))");
            assertTrue(page.text("#drawing").contains(SCRIPT + " equal holes"), page.text("#drawing"));
            assertTrue(page.text("#about").contains(SCRIPT), page.text("#about"));
            assertEquals(true, page.js("return window.hit === undefined"));
            assertEquals(
                    1L,
                    page.js(
                            "return document.querySelectorAll('script').length + document.querySelectorAll('img').length"));
            page.leave();
        }
    }

    /** What another page can get out of this server. */
    private static final String STOLEN = """
            const done = arguments[2];
            const [at, token] = arguments;
            const got = [];
            const question = JSON.stringify({ page: 'p', number: 1, state: {} });
            const tried = async (name, work) => { try { got.push(name + ' ' + await work()); } catch (e) { got.push(name + ' no'); } };
            (async () => {
              await tried('asked', async () => (await fetch(at + 'api/state', { method: 'POST', body: question })).text());
              await tried('asked with the token', async () => (await fetch(at + 'api/state',
                { method: 'POST', body: question, headers: { 'X-Hotidle-Token': token } })).text());
              await tried('asked blindly', async () => (await fetch(at + 'api/end', { method: 'POST', mode: 'no-cors', body: '{}' })).text());
              await tried('read', async () => (await fetch(at)).text());
              await tried('loaded', () => new Promise((yes, no) => {
                const script = document.createElement('script');
                script.src = at + 'dom.js';
                script.onload = () => yes('as a script');
                script.onerror = no;
                document.head.append(script);
              }));
              await tried('framed', () => new Promise((yes) => {
                const frame = document.createElement('iframe');
                frame.src = at;
                frame.onload = () => { try { yes(frame.contentDocument === null ? 'no' : frame.contentDocument.title); } catch { yes('no'); } };
                document.body.append(frame);
              }));
              done(got);
            })()
            """;

    @Test
    void anotherPageGetsNothing(LivePage page) throws Exception {
        HttpServer foreign = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        foreign.createContext("/", exchange -> {
            byte[] html = "<!DOCTYPE html><title>foreign</title><body>".getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().set("Content-Type", "text/html");
            exchange.sendResponseHeaders(200, html.length);
            exchange.getResponseBody().write(html);
            exchange.close();
        });
        foreign.start();
        try {
            page.driver.get("http://127.0.0.1:" + foreign.getAddress().getPort() + "/");
            Object got = page.driver.executeAsyncScript(
                    STOLEN, "http://127.0.0.1:" + page.visitor.port + "/", page.visitor.token);
            assertEquals(
                    List.of(
                            "asked no",
                            "asked with the token no",
                            "asked blindly no",
                            "read no",
                            "loaded no",
                            "framed no"),
                    got);
        } finally {
            foreign.stop(0);
        }
        page.errors(); // each of these is written down by the browser
        page.open(LivePage.IDLE);
        assertFalse(page.text("#verdict").isEmpty());
    }

    @Test
    void anotherNameOfThisMachineLeadsNowhere(LivePage page) {
        page.driver.get("http://" + LiveBrowser.REBOUND + ":" + page.visitor.port + "/");
        assertTrue(page.text("body").contains("this server answers at 127.0.0.1 alone"), page.text("body"));
        page.open(LivePage.IDLE);
        page.errors(); // the refusal itself
    }
}

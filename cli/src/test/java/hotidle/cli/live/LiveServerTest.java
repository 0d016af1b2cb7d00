package hotidle.cli.live;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import java.io.IOException;
import java.net.BindException;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Who is let in, and what of what is sent is read. */
class LiveServerTest {

    private static final String RIG = "{\"build\": \"worn\"}";

    private static Visitor visitor;

    @BeforeAll
    static void open() throws IOException {
        visitor = new Visitor("training-rig");
    }

    @AfterAll
    static void close() {
        assertEquals(List.of(), visitor.faults);
        visitor.close();
    }

    @Test
    void thePageAndItsScriptsAreServedWithAPolicyThatAllowsNoInlineScript() throws Exception {
        for (String path : List.of("/", "/main.js", "/live.css", "/uPlot.esm.js", "/uPlot.min.css")) {
            HttpResponse<String> page = visitor.got(path);
            assertEquals(200, page.statusCode(), path);
            assertTrue(page.body().length() > 100, path);
            String policy = page.headers().firstValue("Content-Security-Policy").orElseThrow();
            assertTrue(policy.contains("default-src 'none'") && policy.contains("script-src 'self';"), policy);
            assertFalse(policy.contains("unsafe"), policy);
            assertEquals(
                    "nosniff",
                    page.headers().firstValue("X-Content-Type-Options").orElseThrow());
        }
        String html = visitor.got("/").body();
        assertFalse(html.matches("(?s).*(<script(?![^>]* src=)|<style| style=| on[a-z]+=).*"), html);
    }

    @Test
    void whoHasReadTheAddressIsAnsweredAndNobodyElse() throws Exception {
        String question = Visitor.question("one", 1, RIG);
        assertEquals(200, visitor.posted("state", question).statusCode());
        HttpRequest without = HttpRequest.newBuilder(
                        visitor.asked("state").build().uri())
                .header("Origin", "http://127.0.0.1:" + visitor.port)
                .POST(HttpRequest.BodyPublishers.ofString(question))
                .build();
        assertEquals(403, visitor.sent(without).statusCode());
        HttpRequest guessed = visitor.asked("state")
                .setHeader("X-Hotidle-Token", visitor.token.substring(1) + "x")
                .POST(HttpRequest.BodyPublishers.ofString(question))
                .build();
        HttpResponse<String> refused = visitor.sent(guessed);
        assertEquals(403, refused.statusCode());
        assertFalse(refused.body().contains(visitor.token));
    }

    @Test
    void aTokenIsLongAndEachRunHasItsOwn() throws IOException {
        assertTrue(visitor.token.length() >= 32, visitor.token);
        try (Visitor other = new Visitor("training-rig")) {
            assertFalse(other.token.equals(visitor.token));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://example.org", "null", "http://127.0.0.1:1", "https://127.0.0.1"})
    void aForeignOriginIsRefused(String origin) throws Exception {
        HttpRequest request = visitor.asked("state")
                .setHeader("Origin", origin)
                .POST(HttpRequest.BodyPublishers.ofString(Visitor.question("two", 1, RIG)))
                .build();
        assertEquals(403, visitor.sent(request).statusCode());
    }

    @Test
    void aQuestionWithoutAnOriginOrFromAnotherSiteIsRefused() throws Exception {
        HttpRequest none = HttpRequest.newBuilder(visitor.asked("state").build().uri())
                .header("X-Hotidle-Token", visitor.token)
                .POST(HttpRequest.BodyPublishers.ofString(Visitor.question("three", 1, RIG)))
                .build();
        assertEquals(403, visitor.sent(none).statusCode());
        HttpRequest led = visitor.asked("state")
                .header("Sec-Fetch-Site", "cross-site")
                .POST(HttpRequest.BodyPublishers.ofString(Visitor.question("three", 1, RIG)))
                .build();
        assertEquals(403, visitor.sent(led).statusCode());
    }

    @ParameterizedTest
    @ValueSource(strings = {"rebound.example.org", "rebound.example.org:%d", "127.0.0.1", "0.0.0.0:%d", "[::1]:%d"})
    void anotherNameOfThisMachineIsRefused(String host) throws IOException {
        String asked = "GET / HTTP/1.1\nHost: " + host.replace("%d", "" + visitor.port) + "\n\n";
        assertEquals("HTTP/1.1 403 Fo", visitor.raw(asked));
        assertEquals("HTTP/1.1 200 OK", visitor.raw("GET / HTTP/1.1\nHost: localhost:" + visitor.port + "\n\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/../../../../etc/passwd",
                "/..%2f..%2fetc%2fpasswd",
                "/%2e%2e/%2e%2e/etc/passwd",
                "/META-INF/LICENSE",
                "//etc/passwd",
                "/main.js/../index.html",
                "/main.js%00.css",
                "/LiveServer.class"
            })
    void nothingButTheFilesOfTheTableIsServed(String path) throws IOException {
        String answered = visitor.raw("GET " + path + " HTTP/1.1\nHost: 127.0.0.1:" + visitor.port + "\n\n");
        assertTrue(List.of("HTTP/1.1 404 No", "HTTP/1.1 400 Ba").contains(answered), path + " " + answered);
    }

    @Test
    void aHundredMegabytesAreRefusedBeforeTheyAreSent() throws IOException {
        String head =
                "POST /api/state HTTP/1.1\nHost: 127.0.0.1:%1$d\nOrigin: http://127.0.0.1:%1$d\nX-Hotidle-Token: %2$s\n"
                        .formatted(visitor.port, visitor.token);
        assertEquals("HTTP/1.1 413 Re", visitor.raw(head + "Content-Length: 100000000\n\n"));
    }

    @Test
    void aLongBodyOfWhichNobodyTellsTheLengthIsCutOff() throws Exception {
        byte[] long300k = new byte[300 * 1024];
        HttpRequest request = visitor.asked("state")
                .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new java.io.ByteArrayInputStream(long300k)))
                .build();
        assertEquals(413, visitor.sent(request).statusCode());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "null",
                "{\"page\": \"p\", \"number\": 1, \"state\": 3}",
                "{\"page\": \"p\", \"number\": 1, \"surprise\": 3}",
                "{\"number\": 1}",
                "{\"page\": \"p\", \"number\": 1, \"state\": {\"sizes\": {\"regulator.bore\": null}}}"
            })
    void brokenJsonIsRefusedAndSaysSo(String body) throws Exception {
        HttpResponse<String> refused = visitor.posted("state", body);
        assertEquals(400, refused.statusCode(), body);
        assertTrue(refused.body().startsWith("{\"refused\":\""), refused.body());
    }

    @Test
    void deeplyNestedJsonIsRefused() throws Exception {
        assertEquals(400, visitor.posted("state", "[".repeat(100_000)).statusCode());
    }

    @Test
    void onlyPagesAreGotAndOnlyQuestionsPosted() throws Exception {
        assertEquals(405, visitor.sent(visitor.asked("state").GET().build()).statusCode());
        assertEquals(405, visitor.sent(visitor.asked("state").DELETE().build()).statusCode());
        assertEquals(404, visitor.posted("nosuch", "{}").statusCode());
        HttpResponse<String> preflight = visitor.sent(visitor.asked("state")
                .method("OPTIONS", HttpRequest.BodyPublishers.noBody())
                .build());
        assertEquals(405, preflight.statusCode());
        assertTrue(preflight.headers().firstValue("Access-Control-Allow-Origin").isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"build\": \"nosuch\"}",
                "{\"duty\": \"nosuch\"}",
                "{\"sizes\": {\"nosuch.bore\": 0.01}}",
                "{\"faults\": [\"spring-weak@nosuch:20%\"]}",
                "{\"engine_speed_rpm\": 1e9}",
                "{\"sump_temperature_c\": 900}"
            })
    void aStateThatCannotBeIsRefusedWithItsReason(String state) throws Exception {
        HttpResponse<String> refused = visitor.posted("state", Visitor.question("four", 1, state));
        assertEquals(422, refused.statusCode(), refused.body());
        if (state.contains("build")) {
            assertEquals(
                    422,
                    visitor.posted("unit", Visitor.question("four", 2, state)).statusCode());
        }
    }

    @Test
    void aPortThatIsTakenIsRefused() {
        LiveUnit unit = new LiveUnit(
                CircuitReader.read(Library.text("training-rig").orElseThrow(), "rig.yaml")
                        .circuit()
                        .orElseThrow(),
                "training-rig",
                Quantity.UnitSystem.SHOP,
                "worn");
        assertThrows(BindException.class, () -> LiveServer.start(unit, visitor.port, Visitor.COMMANDS, fault -> {}));
    }

    @Test
    void anOlderQuestionThanTheNewestOfItsPageIsGivenUp() throws Exception {
        assertEquals(
                200, visitor.posted("state", Visitor.question("five", 7, RIG)).statusCode());
        assertEquals(
                409, visitor.posted("state", Visitor.question("five", 6, RIG)).statusCode());
        assertEquals(
                200, visitor.posted("state", Visitor.question("six", 6, RIG)).statusCode());
        assertEquals(
                200, visitor.posted("verdict", Visitor.question("five", 8, RIG)).statusCode());
    }

    @Test
    void aSlowVerdictIsGivenUpOnceANewerStateOfItsPageIsAskedFor() throws Exception {
        List<Double> many =
                IntStream.range(0, 20_000).mapToObj(i -> (600 + i / 10.0) / 60).toList();
        try (Visitor slow =
                new Visitor("shuttle-five", Library.text("shuttle-five").orElseThrow(), many)) {
            CompletableFuture<HttpResponse<String>> verdict = CompletableFuture.supplyAsync(() -> {
                try {
                    return slow.posted("verdict", Visitor.question("page", 1, RIG));
                } catch (IOException | InterruptedException e) {
                    throw new IllegalStateException(e);
                }
            });
            assertEquals(
                    200, slow.posted("state", Visitor.question("page", 2, RIG)).statusCode());
            assertEquals(409, verdict.get().statusCode());
        }
    }

    @Test
    void itEndsFromThePageAndFromOutside() throws Exception {
        try (Visitor other = new Visitor("training-rig")) {
            other.server.await(() -> true, 1e6);
            other.server.await(() -> false, 0);
            assertEquals(200, other.posted("end", "{}").statusCode());
            other.server.await(() -> false, 1e6);
        }
    }
}

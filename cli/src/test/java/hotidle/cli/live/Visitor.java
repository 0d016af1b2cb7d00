package hotidle.cli.live;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hotidle.answer.format.Quantity;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.Window;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Somebody who asks a live page, as its own script does or as it should not be asked. */
final class Visitor implements AutoCloseable {

    /** Speeds over which the hub is searched [rev/s]: 600 to 3600 rpm in steps of 1000. */
    static final List<Double> SEARCHED =
            IntStream.rangeClosed(0, 3).mapToObj(i -> (600 + 1000 * i) / 60.0).toList();

    /** Set pressures at which a window is searched [Pa]: 60, 160, 260 psi. */
    static final List<Double> TRIED =
            IntStream.of(60, 160, 260).mapToObj(psi -> psi * SetPressure.PSI).toList();

    /** What other commands do, as quick as can be. */
    private record QuickCommands(List<Double> searched) implements OtherCommands {
        @Override
        public List<Double> searched(Transmission unit) {
            return searched;
        }

        @Override
        public Window window(Transmission unit, Window.Raised raised, Runnable step) {
            return Window.study(unit, raised, TRIED, searched, step);
        }

        @Override
        public String report(AskedReport asked) {
            return asked.toString();
        }
    }

    static final OtherCommands COMMANDS = new QuickCommands(SEARCHED);

    private static final ObjectMapper MAPPER = new ObjectMapper();

    final LiveServer server;
    final int port;
    final String token;
    final List<String> faults = new ArrayList<>();
    private final HttpClient client = HttpClient.newHttpClient();
    private long number;

    /** Of a ready circuit. */
    Visitor(String circuit) throws IOException {
        this(circuit, Library.text(circuit).orElseThrow(), SEARCHED);
    }

    /**
     * Of a circuit of its own.
     *
     * @param text     its file
     * @param searched speeds over which the hub is searched [rev/s]
     */
    Visitor(String circuit, String text, List<Double> searched) throws IOException {
        LiveUnit unit = new LiveUnit(
                CircuitReader.read(text, circuit + ".yaml").circuit().orElseThrow(),
                circuit,
                Quantity.UnitSystem.SHOP,
                "worn");
        server = LiveServer.start(unit, 0, new QuickCommands(searched), faults::add);
        URI address = URI.create(server.address());
        port = address.getPort();
        token = address.getQuery().substring("token=".length());
    }

    /** As the page's script asks. */
    HttpRequest.Builder asked(String kind) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/api/" + kind))
                .header("Origin", "http://127.0.0.1:" + port)
                .header("X-Hotidle-Token", token);
    }

    HttpResponse<String> sent(HttpRequest request) throws IOException, InterruptedException {
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    HttpResponse<String> posted(String kind, String body) throws IOException, InterruptedException {
        return sent(asked(kind).POST(HttpRequest.BodyPublishers.ofString(body)).build());
    }

    HttpResponse<String> got(String path) throws IOException, InterruptedException {
        return sent(HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .build());
    }

    /** The answer about a state, which was given. */
    JsonNode answer(String kind, String state) throws IOException, InterruptedException {
        HttpResponse<String> response = posted(kind, question("page", ++number, state));
        if (response.statusCode() != 200) {
            throw new AssertionError(response.statusCode() + " " + response.body());
        }
        return MAPPER.readTree(response.body());
    }

    /** What comes to a question about something else than a state. */
    HttpResponse<String> sentAbout(String kind, String about, String json) throws IOException, InterruptedException {
        return posted(
                kind,
                "{\"page\": \"page\", \"number\": " + ++number + ", \"units\": \"shop\", \"" + about + "\": " + json
                        + "}");
    }

    /** The answer to it, which was given. */
    JsonNode about(String kind, String about, String json) throws IOException, InterruptedException {
        HttpResponse<String> response = sentAbout(kind, about, json);
        if (response.statusCode() != 200) {
            throw new AssertionError(response.statusCode() + " " + response.body());
        }
        return MAPPER.readTree(response.body());
    }

    static String question(String page, long number, String state) {
        return "{\"page\": \"" + page + "\", \"number\": " + number + ", \"units\": \"shop\", \"state\": " + state
                + "}";
    }

    /** What comes back to bytes as they are, its first line. */
    String raw(String request) throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setSoTimeout(5000);
            socket.getOutputStream().write(request.replace("\n", "\r\n").getBytes(StandardCharsets.ISO_8859_1));
            String all = new String(socket.getInputStream().readNBytes(15), StandardCharsets.ISO_8859_1);
            return all.split("\r", -1)[0];
        }
    }

    @Override
    public void close() {
        server.close();
    }
}

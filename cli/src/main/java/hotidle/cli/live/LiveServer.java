package hotidle.cli.live;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import hotidle.answer.format.Json;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Answers the live page on the loopback address of this machine, until it is ended. */
public final class LiveServer implements AutoCloseable {

    /** A question is a few kilobytes; nothing longer is read [bytes]. */
    private static final int LONGEST = 256 * 1024;

    /** Questions answered at a time (chosen). */
    private static final int THREADS = 24;

    /** Wait between two looks at whether it is to end [ms]. */
    private static final long LOOK = 100;

    private static final String QUESTION = "/api/";
    private static final String END = "end";
    private static final String JSON = "application/json; charset=utf-8";

    /** No script, style or picture but those of the page itself; nothing is asked of any other server. */
    private static final Map<String, String> HEADERS = Map.of(
            "Content-Security-Policy",
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; connect-src 'self';"
                    + " form-action 'none'; base-uri 'none'; frame-ancestors 'none'",
            "X-Content-Type-Options",
            "nosniff",
            "X-Frame-Options",
            "DENY",
            "Referrer-Policy",
            "no-referrer",
            "Cross-Origin-Resource-Policy",
            "same-origin",
            "Cross-Origin-Opener-Policy",
            "same-origin",
            "Cache-Control",
            "no-store");

    private final HttpServer server;
    private final ExecutorService threads;
    private final Gate gate;
    private final PageFiles files = new PageFiles();
    private final Newest newest = new Newest();
    private final LiveAnswers answers;
    private final Consumer<String> faults;
    private final CountDownLatch ended = new CountDownLatch(1);
    private volatile boolean ending;

    private LiveServer(HttpServer server, LiveAnswers answers, Consumer<String> faults) {
        this.server = server;
        this.answers = answers;
        this.faults = faults;
        gate = new Gate(server.getAddress().getPort(), Gate.newToken());
        threads = Executors.newFixedThreadPool(THREADS, work -> {
            Thread thread = new Thread(work, "live page");
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * Starts it.
     *
     * @param port     to listen on, 0 for any that is free
     * @param commands that a page asks for too
     * @param faults   told of faults of the program
     * @throws IOException where it cannot listen there
     */
    public static LiveServer start(LiveUnit unit, int port, OtherCommands commands, Consumer<String> faults)
            throws IOException {
        // read once by the JDK's server: answers leave at once, and a question that comes in drops is cut off
        System.setProperty("sun.net.httpserver.nodelay", "true");
        System.setProperty("sun.net.httpserver.maxReqTime", "20");
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 0);
        LiveServer live = new LiveServer(server, new LiveAnswers(unit, commands), faults);
        server.setExecutor(live.threads);
        server.createContext("/", live::handle);
        server.start();
        return live;
    }

    /**
     * Works ahead what the first page asks for, so that it comes sooner; who asks meanwhile is answered. Where the circuit cannot be
     * solved or drawn nothing comes of it, and the page is told why once it asks.
     */
    public void ahead() {
        threads.execute(() -> {
            try {
                answers.ahead(() -> {
                    if (ending) {
                        throw new Newest.GivenUpException("the program ends");
                    }
                });
            } catch (Newest.GivenUpException
                    | WrongStateException
                    | CompletionException
                    | RejectedExecutionException none) {
                // nothing is ready then: a page that asks is answered, or told why not
            }
        });
    }

    /** What is typed into a browser. The page takes the token out of it at once. */
    public String address() {
        return "http://127.0.0.1:" + gate.port() + "/?token=" + gate.token();
    }

    /**
     * Waits until it is ended from a page.
     *
     * @param stop   looked at now and then: ends it too
     * @param longest ends it too [s]
     */
    public void await(BooleanSupplier stop, double longest) throws InterruptedException {
        long until = System.nanoTime() + (long) (longest * 1e9);
        while (!stop.getAsBoolean() && System.nanoTime() < until && !ended.await(LOOK, TimeUnit.MILLISECONDS)) {
            // looked again
        }
    }

    @Override
    public void close() {
        ending = true;
        server.stop(0);
        answers.close();
        threads.shutdownNow();
    }

    private void handle(HttpExchange exchange) throws IOException {
        try (exchange) {
            HEADERS.forEach(exchange.getResponseHeaders()::set);
            String path = exchange.getRequestURI().getPath();
            boolean question = path.startsWith(QUESTION);
            Optional<String> refused = gate.refused(exchange.getRequestHeaders(), question);
            if (refused.isPresent()) {
                refuse(exchange, 403, refused.get());
            } else if (!exchange.getRequestMethod().equals(question ? "POST" : "GET")) {
                refuse(exchange, 405, "not asked so");
            } else if (question) {
                question(exchange, path.substring(QUESTION.length()));
            } else {
                file(exchange, path);
            }
        }
    }

    private void file(HttpExchange exchange, String path) throws IOException {
        Optional<PageFiles.PageFile> file = files.at(path);
        if (file.isEmpty()) {
            refuse(exchange, 404, "there is nothing here");
        } else {
            send(exchange, 200, file.get().type(), file.get().content());
        }
    }

    private void question(HttpExchange exchange, String kind) throws IOException {
        if (kind.equals(END)) {
            send(exchange, 200, JSON, Json.bytes(Map.of("ended", true)));
            ended.countDown();
        } else if (!answers.kinds().contains(kind)) {
            refuse(exchange, 404, "there is nothing here");
        } else {
            Optional<byte[]> body = body(exchange);
            if (body.isEmpty()) {
                refuse(exchange, 413, "a question has at most 256 kB");
            } else {
                answer(exchange, kind, body.get());
            }
        }
    }

    /** What was sent; empty where it is too long, of which no more is read than that shows. */
    private static Optional<byte[]> body(HttpExchange exchange) throws IOException {
        Headers headers = exchange.getRequestHeaders();
        String told = headers.getFirst("Content-Length");
        if (told != null && (told.length() > 9 || Long.parseLong(told) > LONGEST)) {
            return Optional.empty();
        }
        byte[] read = exchange.getRequestBody().readNBytes(LONGEST + 1);
        return read.length > LONGEST ? Optional.empty() : Optional.of(read);
    }

    private void answer(HttpExchange exchange, String kind, byte[] body) throws IOException {
        try {
            LiveQuestion question = Json.read(body, LiveQuestion.class);
            Runnable step = newest.begin(question.page(), kind, question.number(), LiveAnswers.outdoneBy(kind));
            byte[] answer = Json.bytes(answers.answer(kind, question, step));
            send(exchange, 200, JSON, answer);
        } catch (Newest.GivenUpException outdated) {
            refuse(exchange, 409, outdated.getMessage());
        } catch (Newest.TooLongException slow) {
            refuse(exchange, 503, slow.getMessage());
        } catch (WrongStateException wrong) {
            refuse(exchange, 422, wrong.getMessage());
        } catch (IllegalArgumentException broken) {
            refuse(exchange, 400, broken.getMessage());
        } catch (RuntimeException | StackOverflowError fault) {
            faults.accept(
                    "hotidle: sorry, this is a fault of the program: " + fault + "\n  " + fault.getStackTrace()[0]);
            refuse(exchange, 500, "this is a fault of the program, not of what you did: " + fault);
        }
    }

    private static void refuse(HttpExchange exchange, int code, String why) throws IOException {
        send(exchange, code, JSON, Json.bytes(Map.of("refused", why)));
    }

    private static void send(HttpExchange exchange, int code, String type, byte[] content) throws IOException {
        exchange.getResponseHeaders().set("Content-Type", type);
        exchange.sendResponseHeaders(code, content.length == 0 ? -1 : content.length);
        if (content.length > 0 && !exchange.getRequestMethod().equals("HEAD")) {
            exchange.getResponseBody().write(content);
        }
    }
}

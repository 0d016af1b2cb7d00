package hotidle.circuits.torture;

import hotidle.torture.Case;
import hotidle.torture.Tally;
import hotidle.torture.Verdict;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;

/**
 * Puts circuits on the rack until something breaks: {@code --cases N --seed S --save FOLDER}, or {@code --replay FILE}. Ends in one
 * line of JSON on standard output; the bar is drawn on standard error. Each unsolved case, and each that throws, is saved as a file.
 */
final class TortureRun {

    private static final int BAR = 40;
    private static final Pattern FIRST_LINE = Pattern.compile("seed (-?\\d+) case (\\d+)");

    private final Yard yard = new Yard();
    private final Tally tally = new Tally();
    private final AtomicLong done = new AtomicLong();
    private final long cases;
    private final long seed;
    private final Path folder;
    private final long begin = System.nanoTime();

    TortureRun(long cases, long seed, Path folder) {
        this.cases = cases;
        this.seed = seed;
        this.folder = folder;
    }

    Tally run() {
        LongStream.range(0, cases).parallel().forEach(this::one);
        return tally;
    }

    private void one(long number) {
        Case drawn = yard.draw(seed, number);
        try {
            Verdict verdict = Verdict.of(drawn);
            tally.add(verdict);
            if (verdict.method().isEmpty()) {
                save(number, verdict.outcome().unsolved().orElseThrow().toString(), drawn);
            }
        } catch (RuntimeException fault) {
            tally.add(fault);
            save(number, fault + "\n" + java.util.Arrays.toString(fault.getStackTrace()), drawn);
        }
        done.incrementAndGet();
    }

    private void save(long number, String why, Case drawn) {
        try {
            Files.createDirectories(folder);
            Files.writeString(
                    folder.resolve("case-" + seed + "-" + number + ".txt"),
                    "seed " + seed + " case " + number + "\n" + why + "\n" + drawn.described());
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /** Draws the bar once a second. */
    private void bar() {
        double seconds = (System.nanoTime() - begin) / 1e9;
        long now = Math.max(done.get(), 1);
        int full = (int) (BAR * now / cases);
        System.err.printf(
                "\r[%s%s] %d of %d, %d unsolved, %.0f s to go ",
                "#".repeat(full),
                ".".repeat(BAR - full),
                now,
                cases,
                tally.unsolved() + tally.thrown(),
                seconds * (cases - now) / now);
    }

    /** Runs with a bar. */
    private void watch() {
        Thread bar = new Thread(
                () -> {
                    while (done.get() < cases) {
                        bar();
                        LockSupport.parkNanos(1_000_000_000L);
                    }
                },
                "bar");
        bar.setDaemon(true);
        bar.start();
        run();
        bar();
        System.err.println();
    }

    String json() {
        return tally.json(seed, (System.nanoTime() - begin) / 1e9);
    }

    private static void replay(Path file) throws IOException {
        Matcher first = FIRST_LINE.matcher(Files.readAllLines(file).get(0));
        if (!first.matches()) {
            throw new IllegalArgumentException(file + " is no saved case: it should start with its seed and number");
        }
        Case drawn = new Yard().draw(Long.parseLong(first.group(1)), Long.parseLong(first.group(2)));
        Verdict verdict = Verdict.of(drawn);
        System.out.println(drawn.described());
        System.out.println(verdict.outcome().unsolved().map(Object::toString).orElse("solved by " + verdict.method()));
    }

    public static void main(String[] arguments) throws IOException {
        long cases = 2000;
        long seed = 1;
        Path folder = Path.of("torture-cases");
        for (int i = 0; i + 1 < arguments.length; i += 2) {
            switch (arguments[i]) {
                case "--cases" -> cases = Long.parseLong(arguments[i + 1]);
                case "--seed" -> seed = Long.parseLong(arguments[i + 1]);
                case "--save" -> folder = Path.of(arguments[i + 1]);
                case "--replay" -> {
                    replay(Path.of(arguments[i + 1]));
                    return;
                }
                default ->
                    throw new IllegalArgumentException(arguments[i] + " is none of --cases, --seed, --save, --replay");
            }
        }
        TortureRun run = new TortureRun(cases, seed, folder);
        run.watch();
        System.out.println(run.json());
    }
}

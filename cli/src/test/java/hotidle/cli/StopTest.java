package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StopTest {

    private final Stop stop = new Stop();
    private final StringWriter said = new StringWriter();

    /** Work of eight steps on several threads, stopped at the user's wish in one build. */
    private String study(String build, String last) {
        Progress progress = new Progress(new PrintWriter(said), "wearing", 8, true, () -> 0, stop);
        IntStream.range(0, 8).parallel().forEach(step -> {
            if (build.equals(last)) {
                stop.printed();
                stop.ask();
            }
            progress.step();
        });
        progress.end();
        return build + " done";
    }

    private List<String> each(String last) {
        return Stop.each(
                List.of("fresh", "worn", "restored"), build -> study(build, last), new PrintWriter(said, true));
    }

    @Test
    void nobodyStopsAndAllBuildsAreStudied() {
        assertEquals(List.of("fresh done", "worn done", "restored done"), each("none"));
        assertEquals("", said.toString());
    }

    @Test
    void stoppedInTheSecondBuildTheFirstIsTheAnswer() {
        assertEquals(List.of("fresh done"), each("worn"));
        assertEquals("hotidle: stopped; 1 of 3 builds are finished\n", said.toString());
    }

    @Test
    void stoppedInTheFirstThereIsNone() {
        assertThrows(Stop.StoppedException.class, () -> each("fresh"));
        assertEquals("", said.toString());
    }

    @Test
    void itWaitsUntilWhatWasFinishedIsPrinted() throws InterruptedException {
        Thread asking = new Thread(stop::ask);
        asking.start();
        while (!stop.asked()) {
            Thread.onSpinWait();
        }
        assertTrue(asking.isAlive());
        stop.printed();
        asking.join();
    }
}

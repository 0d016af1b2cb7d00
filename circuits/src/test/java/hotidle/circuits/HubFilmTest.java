package hotidle.circuits;

import static hotidle.circuits.Golden.resource;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.oil.Oil;
import hotidle.oil.ShearThinning;
import hotidle.part.Bushing;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What a file says of a hub that leans and of rough surfaces. */
class HubFilmTest {

    private static ReadCircuit read(String more) throws IOException {
        return CircuitReader.read(
                resource("every-kind.yaml").replace("    film-factor: 4\n", "    film-factor: 4\n" + more), "x.yaml");
    }

    private static Bushing hub(String more) throws IOException {
        return (Bushing) read(more)
                .circuit()
                .orElseThrow()
                .unit("fresh")
                .network()
                .part("hub")
                .orElseThrow()
                .part();
    }

    private static String problem(String more) throws IOException {
        return read(more).problems().toString();
    }

    @Test
    void aHubOfWhichNothingIsSaidLeansALittle() throws IOException {
        assertEquals(1e-4, hub("").tilt(), 1e-12);
        assertEquals(0, hub("    tilt: 0 mm/m\n").tilt());
    }

    @Test
    void aRunoutIsTwiceWhatTheHubIsOffItsAxisOverTheDistance() throws IOException {
        assertEquals(
                0.05 / (2 * 160),
                hub("    runout: 0.05 mm\n    runout-over: 160 mm\n").tilt(),
                1e-12);
    }

    @Test
    void theRoughnessOfDrawingsIsTurnedIntoTheOneOfTheFilmRatio() throws IOException {
        assertEquals(4 * 1.2533 * 0.5e-6, hub("").permissibleFilm(), 1e-10);
    }

    @Test
    void tiltAndRunoutTogetherAreAContradictionAndARunoutNeedsItsDistance() throws IOException {
        String both = problem("    tilt: 1 mm/m\n    runout: 0.05 mm\n    runout-over: 160 mm\n");
        assertTrue(both.contains("both a tilt and a runout"), both);
        String half = problem("    runout: 0.05 mm\n");
        assertTrue(half.contains("runout-over"), half);
    }

    @Test
    void anOilThinsWhileItIsShearedUnlessTheFileSaysOtherwise() throws IOException {
        assertEquals(new ShearThinning(0.3, 3e3), oil("").thinning());
        assertEquals(
                new ShearThinning(0, 5e3),
                oil("    shear-loss: 0 %\n    shear-stress: 5 kPa\n").thinning());
    }

    private static Oil oil(String more) throws IOException {
        return CircuitReader.read(
                        resource("every-kind.yaml").replace("    air: 2 %\n", "    air: 2 %\n" + more), "x.yaml")
                .circuit()
                .orElseThrow()
                .unit("fresh")
                .oil();
    }
}

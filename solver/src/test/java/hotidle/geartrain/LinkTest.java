package hotidle.geartrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.geartrain.Coupling.Kind;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.PlanetarySet.Central;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A sun of 30 teeth that a brake holds or a clutch joins to the ring of 60, which the turbine turns; the carrier drives. */
class LinkTest {

    private static final GearTrain TRAIN = new GearTrain(
            "turbine",
            "output",
            List.of(PlanetarySet.single("set", new Central("sun", 30), new Central("turbine", 60), "output", 1)),
            List.of(
                    new Coupling("brake", Kind.CLUTCH, "sun", Coupling.CASE),
                    new Coupling("direct", Kind.CLUTCH, "sun", "turbine")));
    private static final Driven FIRST = (Driven) TrainDrive.of(TRAIN, Set.of("brake"));
    private static final Driven SECOND = (Driven) TrainDrive.of(TRAIN, Set.of("direct"));

    private static OptionalDouble share(String carries, Driven driven) {
        return new Link("link", carries, 100).share(TRAIN, driven);
    }

    /** The sun bears 30/60 of the ring's torque, the carrier both. */
    @Test
    void sharesFollowFromTheTeeth() {
        assertEquals(1, share("turbine", FIRST).orElseThrow(), 1e-12);
        assertEquals(1.5, share("output", FIRST).orElseThrow(), 1e-12);
        assertEquals(0.5, share("brake", FIRST).orElseThrow(), 1e-12);
        assertEquals(0.5, share(Coupling.CASE, FIRST).orElseThrow(), 1e-12);
        assertEquals(0.5, share("set.sun", FIRST).orElseThrow(), 1e-12);
        assertEquals(1.5, share("set.carrier", FIRST).orElseThrow(), 1e-12);
        assertEquals(1.0 / 3, share("direct", SECOND).orElseThrow(), 1e-12);
        assertEquals(1, share("output", SECOND).orElseThrow(), 1e-12);
    }

    @Test
    void whatARangeDoesNotLoadHasNoShare() {
        assertTrue(share("direct", FIRST).isEmpty());
        assertTrue(share("brake", SECOND).isEmpty());
        assertTrue(share(Coupling.CASE, SECOND).isEmpty(), "with all locked the case bears nothing");
        assertTrue(share(Link.PUMP, FIRST).isEmpty(), "the engine turns the pump");
    }

    @Test
    void aRatingIsAboveZeroAndFinite() {
        for (double rating : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            String said = assertThrows(IllegalArgumentException.class, () -> new Link("shaft", "turbine", rating))
                    .getMessage();
            assertTrue(said.contains("shaft"), said);
        }
    }
}

package hotidle.geartrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.geartrain.Coupling.Kind;
import hotidle.geartrain.Drive.DriveFault;
import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.Drive.NotDriven;
import hotidle.geartrain.PlanetarySet.Central;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A Ravigneaux set with clutches on both suns, brakes on the large sun and the carrier, a one-way clutch beside the last. */
class TrainDriveTest {

    private static final GearTrain TRAIN = train(
            1,
            List.of(
                    clutch("forward", "turbine", "small"),
                    clutch("direct", "turbine", "large"),
                    clutch("second", "large", Coupling.CASE),
                    clutch("low", "carrier", Coupling.CASE),
                    new Coupling("one-way", Kind.ONE_WAY, "carrier", Coupling.CASE)));

    private static Coupling clutch(String name, String first, String second) {
        return new Coupling(name, Kind.CLUTCH, first, second);
    }

    private static GearTrain train(double efficiency, List<Coupling> couplings) {
        return new GearTrain(
                "turbine",
                "output",
                List.of(PlanetarySet.ravigneaux(
                        "set",
                        new Central("large", 36),
                        new Central("small", 30),
                        new Central("output", 84),
                        "carrier",
                        efficiency)),
                couplings);
    }

    private static Driven driven(GearTrain train, String... applied) {
        return assertInstanceOf(Driven.class, TrainDrive.of(train, Set.of(applied)));
    }

    private static NotDriven notDriven(GearTrain train, String... applied) {
        return assertInstanceOf(NotDriven.class, TrainDrive.of(train, Set.of(applied)));
    }

    @Test
    void theOneWayClutchHoldsTheCarrierInFirst() {
        Driven first = driven(TRAIN, "forward");
        assertEquals(2.8, first.ratio(), 1e-12);
        assertEquals(1.8, first.loads().get("one-way").torque(), 1e-12);
        assertFalse(first.loads().get("one-way").shared());
        assertEquals(-1 / 2.8 * 84 / 36, first.speed("large").orElseThrow(), 1e-12);
    }

    @Test
    void theOneWayClutchOverrunsInSecond() {
        Driven second = driven(TRAIN, "forward", "second");
        // (a + b)/(1 + b) with a = 84/30 and b = 84/36
        assertEquals((2.8 + 7.0 / 3) / (1 + 7.0 / 3), second.ratio(), 1e-12);
        assertFalse(second.loads().containsKey("one-way"));
        assertTrue(second.slips().get("one-way") > 0.1);
        assertEquals(-1, second.loads().get("forward").torque(), 1e-12);
    }

    @Test
    void aBrakeBesideAOneWayClutchIsToldAloneAndThatTheyShare() {
        Driven manual = driven(TRAIN, "forward", "low");
        assertTrue(manual.loads().get("low").shared());
        assertTrue(manual.loads().get("one-way").shared());
        assertEquals(1.8, manual.loads().get("low").torque(), 1e-12);
        assertEquals(1.8, manual.loads().get("one-way").torque(), 1e-12);
        assertFalse(manual.loads().get("forward").shared());
        assertEquals(2.8, manual.torqueRatio(), 1e-12);
    }

    @Test
    void inReverseTheBrakeHoldsAloneForTheOneWayClutchIsPushedTheOtherWay() {
        Driven reverse = driven(TRAIN, "direct", "low");
        assertEquals(-84.0 / 36, reverse.ratio(), 1e-12);
        assertEquals(-1 - 84.0 / 36, reverse.loads().get("low").torque(), 1e-12);
        assertFalse(reverse.loads().get("low").shared());
        assertEquals(0, reverse.loads().get("one-way").torque(), 1e-12);
    }

    @Test
    void twoSunsDrivenShareByTheTeeth() {
        Driven third = driven(TRAIN, "forward", "direct");
        assertEquals(1, third.ratio(), 1e-12);
        assertEquals(
                0.54,
                third.loads().get("direct").torque()
                        / third.loads().get("forward").torque(),
                1e-12);
        assertEquals(0, third.meshLoss(), 1e-15);
    }

    @Test
    void nothingAppliedLeavesTheOutputFree() {
        NotDriven neutral = notDriven(TRAIN);
        assertEquals(DriveFault.OUTPUT_FREE, neutral.why());
        assertTrue(neutral.names().containsAll(List.of("output", "carrier", "small", "large")));
    }

    @Test
    void brakesOnBothSunsAndADriveContradict() {
        NotDriven tied = notDriven(TRAIN, "direct", "second");
        assertEquals(DriveFault.CONTRADICTION, tied.why());
        assertEquals(Set.of("direct", "second"), Set.copyOf(tied.names()));
    }

    @Test
    void anOutputThatIsHeldByTheSetsDoesNotDrive() {
        List<Coupling> couplings = new ArrayList<>(TRAIN.couplings());
        couplings.add(clutch("park", "output", Coupling.CASE));
        assertEquals(
                DriveFault.OUTPUT_STANDS,
                notDriven(train(1, couplings), "forward", "park").why());
    }

    @Test
    void aMeshLossFollowsThePowerSeenFromTheCarrier() {
        Driven first = driven(train(0.99, TRAIN.couplings()), "forward");
        // small sun, short planet, long planet, ring: three meshes in a row with the carrier held
        assertEquals(2.8 * Math.pow(0.99, 3), first.torqueRatio(), 1e-12);
        assertEquals(1 - Math.pow(0.99, 3), first.meshLoss(), 1e-12);
    }

    @Test
    void aTrainWithAHugeRatioDrivenBackwardsLocksItself() {
        PlanetarySet paradox = new PlanetarySet(
                "set",
                "arm",
                List.of(Wheel.sun("a", 100, Coupling.CASE), Wheel.sun("c", 101, "c"), Wheel.planet("p", 20)),
                List.of(new Mesh("a", "p", 0.98), new Mesh("c", "p", 0.98)));
        assertInstanceOf(Driven.class, TrainDrive.of(new GearTrain("arm", "c", List.of(paradox), List.of()), Set.of()));
        assertEquals(
                DriveFault.SELF_LOCKING,
                notDriven(new GearTrain("c", "arm", List.of(paradox), List.of()))
                        .why());
    }

    @Test
    void aClutchThatIsNotInTheTrainIsNamed() {
        String message = assertThrows(IllegalArgumentException.class, () -> TrainDrive.of(TRAIN, Set.of("fifth")))
                .getMessage();
        assertTrue(message.contains("fifth"), message);
    }

    @Test
    void aShaftInThePathCarriesItsTorque() {
        List<Coupling> couplings = new ArrayList<>(TRAIN.couplings());
        couplings.set(0, clutch("forward", "hub", "small"));
        couplings.add(new Coupling("input-shaft", Kind.SHAFT, "turbine", "hub"));
        Driven second = driven(train(1, couplings), "forward", "second");
        assertEquals(-1, second.loads().get("input-shaft").torque(), 1e-12);
        assertEquals(1, second.speed("hub").orElseThrow(), 1e-12);
    }
}

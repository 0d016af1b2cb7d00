package hotidle.geartrain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.geartrain.Drive.Driven;
import hotidle.geartrain.Drive.Load;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Trains drawn at random, with and without losses. */
final class GearTrainPropertyTest {

    /** Share of the largest torque or power in the train: rounding of some dozen equations. */
    private static final double ROUNDING = 1e-12;

    /** Enough of what is drawn must drive, or these properties would be true of nothing. */
    @Test
    void oneInTenRandomTrainsDrivesWithLosses() {
        long driven = LongStream.range(0, 500)
                .mapToObj(seed -> RandomTrain.of(seed, 0.97))
                .filter(drawn -> TrainDrive.of(drawn.train(), drawn.applied()) instanceof Driven)
                .count();
        assertTrue(driven > 50, driven + " of 500");
    }

    @Property(tries = 300, seed = "1")
    void powerInIsPowerOutAndMeshLoss(@ForAll long seed, @ForAll @DoubleRange(min = 0.95, max = 1) double least) {
        RandomTrain drawn = RandomTrain.of(seed, least);
        if (TrainDrive.of(drawn.train(), drawn.applied()) instanceof Driven driven) {
            double out = driven.torqueRatio() / driven.ratio();
            assertEquals(1, out + driven.meshLoss(), ROUNDING * largest(driven));
            assertTrue(driven.meshLoss() > -ROUNDING * largest(driven), "loss " + driven.meshLoss());
            assertTrue(out <= 1 + ROUNDING * largest(driven), "efficiency " + out);
        }
    }

    @Property(tries = 300, seed = "1")
    void torquesOnEachSetAndEachMemberSumToNil(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.95, max = 1) double least) {
        RandomTrain drawn = RandomTrain.of(seed, least);
        if (TrainDrive.of(drawn.train(), drawn.applied()) instanceof Driven driven
                && driven.loads().values().stream().noneMatch(Load::shared)) {
            Map<String, Double> left = new HashMap<>();
            for (PlanetarySet set : drawn.train().sets()) {
                double sum = driven.wheelTorques().get(set.name() + ".carrier");
                left.merge(set.carrier(), sum, Double::sum);
                for (Wheel wheel : set.wheels()) {
                    if (!wheel.isPlanet()) {
                        double torque = driven.wheelTorques().get(set.name() + "." + wheel.name());
                        left.merge(wheel.member().orElseThrow(), torque, Double::sum);
                        sum += torque;
                    }
                }
                assertEquals(0, sum, ROUNDING * largest(driven), set.name());
            }
            for (Coupling one : drawn.train().couplings()) {
                if (driven.loads().containsKey(one.name())) {
                    double torque = driven.loads().get(one.name()).torque();
                    left.merge(one.first(), torque, Double::sum);
                    left.merge(one.second(), -torque, Double::sum);
                }
            }
            left.merge(drawn.train().input(), 1.0, Double::sum);
            left.merge(drawn.train().output(), -driven.torqueRatio(), Double::sum);
            assertEquals(-driven.caseTorque(), left.getOrDefault(Coupling.CASE, 0.0), 1e-11 * largest(driven), "case");
            left.remove(Coupling.CASE);
            left.forEach((member, torque) -> assertEquals(0, torque, 1e-11 * largest(driven), member));
        }
    }

    @Property(tries = 300, seed = "1")
    void namesAndOrderChangeNothing(@ForAll long seed, @ForAll @DoubleRange(min = 0.95, max = 1) double least) {
        RandomTrain drawn = RandomTrain.of(seed, least);
        RandomTrain other = drawn.renumbered(seed + 1);
        Drive first = TrainDrive.of(drawn.train(), drawn.applied());
        Drive second = TrainDrive.of(other.train(), other.applied());
        assertEquals(first.getClass(), second.getClass());
        if (first instanceof Driven one && second instanceof Driven two) {
            double size = largest(one);
            assertEquals(one.ratio(), two.ratio(), 1e-10 * Math.abs(one.ratio()));
            assertEquals(one.torqueRatio(), two.torqueRatio(), 1e-10 * size);
            one.loads().forEach((name, load) -> {
                assertEquals(load.shared(), two.loads().get(name).shared(), name);
                assertEquals(load.torque(), two.loads().get(name).torque(), 1e-9 * size, name);
            });
        }
    }

    /** All members joined to the input: nothing can roll, so the whole turns as one and loses nothing. */
    @Property(tries = 300, seed = "1")
    void aLockedTrainHasRatioOneAndLosesNothing(@ForAll long seed) {
        GearTrain drawn = RandomTrain.of(seed, 0.9).train();
        List<Coupling> locks = drawn.members().stream()
                .filter(member -> !member.equals(drawn.input()))
                .map(member -> new Coupling("to-" + member, Coupling.Kind.SHAFT, drawn.input(), member))
                .toList();
        GearTrain train = new GearTrain(drawn.input(), drawn.output(), drawn.sets(), locks);
        Driven driven = assertInstanceOf(Driven.class, TrainDrive.of(train, Set.of()));
        assertEquals(1, driven.ratio(), ROUNDING);
        assertEquals(1, driven.torqueRatio(), ROUNDING * 10);
        assertEquals(0, driven.meshLoss(), ROUNDING);
        assertEquals(0, driven.caseTorque(), ROUNDING * 10);
    }

    /** Two members of one set joined: the third one turns with them. */
    @Property(tries = 300, seed = "1")
    void twoMembersOfASetJoinedCarryTheThirdWithThem(@ForAll @IntRange(min = 0, max = 2) int open) {
        List<String> members = List.of("sun", "ring", "carrier");
        GearTrain train = new GearTrain(
                members.get((open + 1) % 3),
                members.get(open),
                List.of(PlanetarySet.single(
                        "set",
                        new PlanetarySet.Central("sun", 30),
                        new PlanetarySet.Central("ring", 70),
                        "carrier",
                        0.98)),
                List.of(new Coupling(
                        "lock", Coupling.Kind.CLUTCH, members.get((open + 1) % 3), members.get((open + 2) % 3))));
        Driven driven = assertInstanceOf(Driven.class, TrainDrive.of(train, Set.of("lock")));
        assertEquals(1, driven.ratio(), ROUNDING);
        assertEquals(1, driven.torqueRatio(), ROUNDING);
    }

    private static double largest(Driven driven) {
        double largest = Math.max(1, Math.abs(driven.torqueRatio()));
        for (double torque : driven.wheelTorques().values()) {
            largest = Math.max(largest, Math.abs(torque));
        }
        double fastest = 1;
        for (double speed : driven.speeds().values()) {
            fastest = Math.max(fastest, Math.abs(speed));
        }
        return largest * fastest;
    }
}

package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Margin;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A ready circuit with a gear train and ratings put in here: what it holds, and that its margins turn there. */
class TorqueHeldTest {

    private static final double SPEED = 2000 / 60.0;

    private static final String GEARS = """
            gearsets:
              input: turbine
              output: output
              sets:
                front: {sun: case, sun-teeth: 28, ring: input-hub, ring-teeth: 80, carrier: front-carrier}
                rear: {pinions: ravigneaux, sun: large-sun, sun-teeth: 36, short-sun: small-sun, short-sun-teeth: 30, ring: output, ring-teeth: 84, carrier: rear-carrier}
              clutches:
                low-clutch: {joins: [front-carrier, small-sun]}
                direct-clutch: {joins: [front-carrier, large-sun]}
                overdrive-clutch: {joins: [input-hub, rear-carrier]}
                second-brake: {joins: [large-sun, case]}
                reverse-brake: {joins: [rear-carrier, case]}
              one-way-clutches:
                low-one-way: {joins: [rear-carrier, case], rated-torque: 9000 N.m}
              shafts:
                input-shaft: {joins: [turbine, input-hub], rated-torque: SHAFT}
            """;

    private static Transmission unit;
    private static Map<String, TorqueHeld> found;

    /** The ready circuit with this gear train in place of its own, and shares computed. */
    private static Transmission withShaft(String rating) {
        String text = Library.text("shuttle-five").orElseThrow();
        int own = text.indexOf("\ngearsets:\n");
        int ranges = text.indexOf("\nranges:\n");
        String train = GEARS.replace("SHAFT", rating);
        String made = text.substring(0, own < 0 || own > ranges ? ranges : own)
                + "\n"
                + train
                + text.substring(ranges).replaceAll("torque-share: [0-9.]+(, speed-ratio: [0-9.]+)?", "");
        return CircuitReader.read(made, "x.yaml").circuit().orElseThrow().unit("restored");
    }

    private static Map<String, TorqueHeld> found(Transmission of) {
        return TorqueHeld.of(of, SPEED).stream().collect(Collectors.toMap(TorqueHeld::range, one -> one));
    }

    private static Held held(Map<String, TorqueHeld> of, String range) {
        return of.get(range).held().orElseThrow();
    }

    @BeforeAll
    static void find() {
        unit = withShaft("15000 N.m");
        found = found(unit);
    }

    /** The judgement of margins knows nothing of this search. */
    @Test
    void theMarginOfTheFirstClutchTurnsAtTheTorqueThatIsHeld() {
        for (String range : List.of("reverse", "first", "fourth")) {
            Held held = held(found, range);
            assertTrue(apply(range, 0.99 * held.torque()).headroom() > 0, range);
            assertTrue(apply(range, 1.01 * held.torque()).headroom() < 0, range);
        }
    }

    private static Margin apply(String range, double torque) {
        Judgement judged = Judgement.of(unit, found.get(range).at().duty(torque, SPEED), List.of(SPEED));
        String first = held(found, range).links().get(0).name();
        return judged.margins().stream()
                .filter(margin ->
                        margin.kind() == Margin.Kind.APPLY && margin.part().equals(first))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aShaftOfLessStrengthGivesFirstAndHoldsWhatItsRatingSays() {
        Map<String, TorqueHeld> weak = found(withShaft("300 N.m"));
        Carrier first = held(weak, "third").links().get(0);
        assertEquals("input-shaft", first.name());
        assertFalse(first.clutch());
        assertEquals(300, held(weak, "third").torque(), 1e-9);
        double converter = weak.get("first").at().torqueRatio();
        assertTrue(converter > 1.5, "the converter multiplies in first");
        assertEquals(300 / converter, held(weak, "first").torque(), 1e-9);
    }

    @Test
    void theMarginOfAShaftTurnsAtItsRating() {
        Transmission weak = withShaft("300 N.m");
        for (String range : List.of("first", "third")) {
            TorqueHeld held = found(weak).get(range);
            double torque = held.held().orElseThrow().torque();
            assertTrue(shaft(weak, held, 0.99 * torque).headroom() > 0, range);
            assertTrue(shaft(weak, held, 1.01 * torque).headroom() < 0, range);
        }
    }

    private static Margin shaft(Transmission of, TorqueHeld held, double torque) {
        return Judgement.of(of, held.at().duty(torque, SPEED), List.of(SPEED)).margins().stream()
                .filter(margin -> margin.kind() == Margin.Kind.RATED_TORQUE
                        && margin.part().equals("input-shaft"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theFirstToGiveCarriesWhatIsHeldAndAllOthersCarryMore() {
        found.keySet().forEach(range -> {
            Held held = held(found, range);
            assertEquals(held.torque(), held.links().get(0).torque(), 1e-3 * held.torque(), range);
            held.links().forEach(one -> assertTrue(one.torque() >= held.torque() * (1 - 1e-3), range + one.name()));
        });
    }

    @Test
    void theOneWayClutchCarriesInFirstAlone() {
        List<String> carrying = found.keySet().stream()
                .filter(range -> held(found, range).links().stream()
                        .anyMatch(one -> one.name().equals("low-one-way")))
                .toList();
        assertEquals(List.of("first"), carrying);
    }

    @Test
    void morePressureHoldsMoreWhereAClutchGivesFirst() {
        Map<String, TorqueHeld> raised = found(SetPressure.of(unit, 1.2 * unit.highestSet()));
        assertTrue(held(raised, "fourth").torque() > 1.1 * held(found, "fourth").torque());
    }
}

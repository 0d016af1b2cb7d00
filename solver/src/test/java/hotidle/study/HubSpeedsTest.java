package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Roles;
import hotidle.newton.Series;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Speeds that are passed over decide nothing: the film is thinnest and the load largest where they are when all are solved. */
class HubSpeedsTest {

    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(4, 27).mapToObj(i -> 150.0 * i / 60).toList();

    /** Two solves of one state, from different starts, agree to this [-]. */
    private static final double SAME_STATE = 1e-6;

    private static HubSpeeds asked(Transmission unit, Map<Double, HubAlike> known) {
        DutyPoint duty = unit.duties().get(0);
        HubSpeeds asked = new HubSpeeds(
                new Series(unit.network()), unit.network(), Roles.of(unit), unit.conditions(duty), SPEEDS, known);
        asked.solve();
        return asked;
    }

    private static HubState thinnest(HubSpeeds asked) {
        return asked.solved().stream()
                .min(Comparator.comparingDouble(HubState::film))
                .orElseThrow();
    }

    private static HubState heaviest(HubSpeeds asked) {
        return asked.solved().stream()
                .max(Comparator.comparingDouble(HubState::unitLoad))
                .orElseThrow();
    }

    private static int sameAsAll(Transmission unit, Map<Double, HubAlike> known, String where) {
        HubSpeeds all = asked(unit, new HashMap<>());
        HubSpeeds some = asked(unit, known);
        assertEquals(SPEEDS.size(), all.solved().size(), where);
        assertEquals(thinnest(all).speed(), thinnest(some).speed(), where);
        assertEquals(
                thinnest(all).film(),
                thinnest(some).film(),
                SAME_STATE * thinnest(all).film(),
                where);
        assertEquals(
                heaviest(all).unitLoad(),
                heaviest(some).unitLoad(),
                SAME_STATE * heaviest(all).unitLoad(),
                where);
        return some.solved().size();
    }

    @Test
    void asTheUnitWearsFewSpeedsDecideFilmAndLoad() {
        Map<Double, HubAlike> known = new HashMap<>();
        int solved = 0;
        int units = 0;
        for (double wear = 1; wear <= 4; wear += 0.05) {
            int some = sameAsAll(TenNodes.worn(wear), known, "wear " + wear);
            solved += units > 0 ? some : 0;
            units++;
        }
        assertTrue(solved < 0.7 * SPEEDS.size() * (units - 1), solved + " states of " + units + " units");
    }

    @Test
    void whereTheNextUnitIsFarFromAlikeWhatIsFoundIsTheSame() {
        Map<Double, HubAlike> known = new HashMap<>();
        for (double share : new double[] {1, 0.3, 2, 0.9, 1.5}) {
            for (double wear : new double[] {1, 3, 1.5, 6}) {
                Transmission unit = TenNodes.worn(wear);
                sameAsAll(SetPressure.of(unit, share * unit.highestSet()), known, "wear " + wear + " set " + share);
            }
        }
    }

    @Test
    void theVeryUnitAskedTwiceIsSolvedWhereFilmAndLoadDecideAlone() {
        Map<Double, HubAlike> known = new HashMap<>();
        Transmission unit = TenNodes.worn(2);
        assertEquals(SPEEDS.size(), asked(unit, known).solved().size());
        assertTrue(asked(unit, known).solved().size() <= SPEEDS.size() / 2);
        assertTrue(known.keySet().containsAll(SPEEDS));
    }
}

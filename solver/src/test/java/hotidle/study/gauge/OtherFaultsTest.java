package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.study.ToldApart;
import hotidle.transmission.Adjustable;
import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Faults that are named beside the one of a handout of the ten nodes. */
class OtherFaultsTest {

    private static final Adjustable BUILD = Tapped.build();
    private static final List<UnitFault> POSSIBLE = UnitFaults.of(BUILD);
    private static final UnitFault WEAK = POSSIBLE.stream()
            .filter(fault -> fault.name().equals("spring-weak@regulator"))
            .findFirst()
            .orElseThrow();
    private static final ToldApart SHOWN = ToldApart.of(
            List.of(BUILD.unit(), WEAK.in(BUILD, 0.3).orElseThrow()),
            List.of(650 / 60.0, 1000 / 60.0, 1500 / 60.0, 3000 / 60.0),
            1);

    private static List<UnitFault> others(int count, long seed) {
        return OtherFaults.of(BUILD, SHOWN, List.of(WEAK), POSSIBLE, count, seed);
    }

    @Test
    void theUnitsOwnFaultIsNotAmongThemAndNoneTwice() {
        List<UnitFault> found = others(4, 1);
        assertFalse(found.isEmpty());
        assertFalse(found.contains(WEAK));
        assertEquals(found.size(), new HashSet<>(found).size());
        assertTrue(others(1, 1).size() <= 1);
    }

    @Test
    void aFaultThatCanReadAsTheUnitDoesIsNotAmongThem() {
        List<UnitFault> same = List.of(
                new UnitFault(WEAK.kind(), "another spring", WEAK.wears(), WEAK.least(), WEAK.most(), WEAK.change()));
        assertEquals(List.of(), OtherFaults.of(BUILD, SHOWN, List.of(WEAK), same, 4, 1));
    }

    /** The same spring by another name reads as the unit with it; a fault chosen to be another does not, nor does any as the sound unit. */
    @Test
    void aFaultThatCanReadAsAUnitIsToldToBeAlike() {
        UnitFault same =
                new UnitFault(WEAK.kind(), "another spring", WEAK.wears(), WEAK.least(), WEAK.most(), WEAK.change());
        UnitFault other = others(1, 1).get(0);
        assertEquals(
                List.of(List.of(), List.of(WEAK, same)), OtherFaults.alike(BUILD, SHOWN, List.of(WEAK, same, other)));
    }

    @Test
    void aFaultThatNoGaugeShowsIsNotAmongThem() {
        List<UnitFault> nothing =
                List.of(new UnitFault(WEAK.kind(), "nowhere", WEAK.wears(), 0, 1, (unit, size) -> unit));
        assertEquals(List.of(), OtherFaults.of(BUILD, SHOWN, List.of(WEAK), nothing, 4, 1));
    }

    @Test
    void anotherSeedNamesOthersInAnotherOrder() {
        assertEquals(others(4, 1), others(4, 1));
        assertTrue(IntStream.range(2, 8).anyMatch(seed -> !others(4, seed).equals(others(4, 1))));
    }
}

package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.assess.Roles;
import hotidle.newton.Series;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The line held in one unit after the other: what was found of the one before is where the search in the next begins. */
class HeldLineNearTest {

    private static HeldLineSearch search(Transmission unit, Optional<HeldLine.HeldStates> before) {
        DutyPoint duty = unit.duties().get(0);
        return new HeldLineSearch(unit, duty, Roles.of(unit), before, Optional.empty(), Optional.empty());
    }

    private static void same(HeldLine alone, HeldLine next, String where) {
        HeldLine.LineBalance one = alone.balance().orElseThrow();
        HeldLine.LineBalance other = next.balance().orElseThrow();
        assertEquals(one.supply(), other.supply(), 1e-8 * one.supply(), where + " supply");
        assertEquals(one.demand(), other.demand(), 1e-8 * one.demand(), where + " demand");
        assertEquals(one.hungry(), other.hungry(), where + " hungry");
    }

    @Test
    void theRegulatorIsFoundWhereASearchFromItsEndsFindsItWithFewerStates() {
        Optional<HeldLine.HeldStates> before = Optional.empty();
        int alone = 0;
        int after = 0;
        for (double wear = 1; wear <= 4; wear += 0.25) {
            Transmission unit = TenNodes.worn(wear);
            HeldLineSearch whole = search(unit, Optional.empty());
            HeldLineSearch next = search(unit, before);
            HeldLine line = next.run();
            same(whole.run(), line, "wear " + wear);
            before = next.found(line);
            alone += whole.solves();
            after += next.solves();
        }
        assertTrue(after < 0.75 * alone, after + " states after another, " + alone + " alone");
    }

    /** Where no unit alike was asked, the unit's own state with its line free is where the search begins. */
    @Test
    void aSearchThatStartsFromTheLineFreeFindsWhatOneFromColdFinds() {
        for (double wear : new double[] {1, 2, 4, 6}) {
            Transmission unit = TenNodes.worn(wear);
            DutyPoint duty = unit.duties().get(0);
            Series series = new Series(unit.network());
            assertTrue(series.solve(unit.conditions(duty)));
            HeldLine free = new HeldLineSearch(
                            unit, duty, Roles.of(unit), Optional.empty(), Optional.of(series.state()), Optional.empty())
                    .run();
            same(search(unit, Optional.empty()).run(), free, "wear " + wear);
        }
    }

    /** From a unit that is far from alike, with its line much higher: the guess leads nowhere and the ends are asked after all. */
    @Test
    void aUnitThatIsNotAlikeMisleadsNoSearch() {
        for (double wear : new double[] {1, 2, 6}) {
            Transmission unit = TenNodes.worn(wear);
            for (double share : new double[] {0.4, 1.8}) {
                HeldLineSearch far =
                        search(SetPressure.of(TenNodes.worn(3), share * unit.highestSet()), Optional.empty());
                HeldLine line = search(unit, far.found(far.run())).run();
                same(search(unit, Optional.empty()).run(), line, "wear " + wear + " after " + share);
            }
        }
    }
}

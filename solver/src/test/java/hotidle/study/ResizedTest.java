package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A unit whose sizes were changed for good, and duty points at other speeds and temperatures. */
class ResizedTest {

    private static final Adjustable WORN = Fits.worn(3);

    private static double line(Transmission unit) {
        return AtDuty.solved(unit, unit.duties().get(0)).state().orElseThrow().pressure("line");
    }

    @Test
    void aSecondChangeComesOnTopOfTheFirst() {
        WearSize one = WORN.dimensions().get(0);
        WearSize other = WORN.dimensions().get(1);
        Transmission both = WORN.with(Map.of(one.name(), one.fresh(), other.name(), other.fresh()))
                .orElseThrow();
        Adjustable first = WORN.resized(Map.of(one.name(), one.fresh()));
        assertEquals(line(both), line(first.with(other, other.fresh()).orElseThrow()));
        assertEquals(line(WORN.with(one, one.fresh()).orElseThrow()), line(first.unit()));
    }

    @Test
    void whatWasChangedIsNoLongerWorn() {
        WearSize one = WORN.dimensions().get(0);
        Adjustable first = WORN.resized(Map.of(one.name(), one.fresh()));
        assertEquals(one.fresh(), first.dimension(one.name()).orElseThrow().value());
        assertEquals(false, first.dimension(one.name()).orElseThrow().worn());
        assertSame(WORN, WORN.resized(Map.of()));
    }

    @Test
    void aHotterSumpWarmsEveryRegionAsMuchAndAnotherSpeedLeavesThemAlone() {
        DutyPoint idle = WORN.unit().duties().get(0);
        double sump = idle.temperatures().get("sump");
        DutyPoint hot = idle.withSump(sump + 20);
        idle.temperatures()
                .forEach((region, kelvin) ->
                        assertEquals(kelvin + 20, hot.temperatures().get(region), 1e-9));
        assertEquals(idle.speed(), hot.speed());
        assertEquals(idle.temperatures(), idle.atSpeed(25).temperatures());
        assertEquals(25, idle.atSpeed(25).speed());
    }
}

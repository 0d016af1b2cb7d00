package hotidle.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.Warming;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A tank that meshes warm and air cools, against the exponential that it follows by hand. */
class HeatBalanceTest {

    private static final double TIME_CONSTANT = WarmTank.MASS / WarmTank.LOSS;
    private static final DutyPoint LIGHT = WarmTank.duty("light", 50, new Warming.ToBalance());
    private static final DutyPoint HEAVY = WarmTank.duty("heavy", 200, new Warming.ToBalance());

    @Test
    void oilSettlesWhereTheCaseGivesOffWhatTheMeshesMake() {
        Warmed warmed = HeatBalance.of(WarmTank.unit(420, HEAVY), HEAVY);
        assertEquals(Warmed.WarmingEnd.SETTLED, warmed.verdict());
        assertEquals(WarmTank.rest(200), warmed.settled().get().at().sump(), 1e-6);
        assertEquals(0, warmed.settled().get().flows().imbalance(), 1e-9);
    }

    @Test
    void afterOneTimeConstantAThirdOfTheWayIsLeft() {
        DutyPoint after = WarmTank.duty("after", 200, new Warming.After("light", TIME_CONSTANT));
        Warmed warmed = HeatBalance.of(WarmTank.unit(420, LIGHT, after), after);
        double left = (WarmTank.rest(50) - WarmTank.rest(200)) * Math.exp(-1);
        assertEquals(WarmTank.rest(200) + left, warmed.settled().get().at().sump(), 0.1);
        assertEquals("light", warmed.from().get());
    }

    @Test
    void oilThatWouldSettleAboveItsLimitReachesItInTheTimeOfTheExponential() {
        double limit = WarmTank.rest(200) - 10;
        Warmed warmed = HeatBalance.of(WarmTank.unit(limit, HEAVY), HEAVY);
        assertEquals(Warmed.WarmingEnd.SUMP_RUNS_AWAY, warmed.verdict());
        double wanted = TIME_CONSTANT * Math.log((WarmTank.rest(200) - WarmTank.AIR) / 10);
        assertEquals(wanted, warmed.seconds().get(), 0.02 * wanted);
        assertTrue(warmed.settled().isEmpty());
    }

    @Test
    void whatBeginsAtNoTemperatureIsNotKnown() {
        DutyPoint after = WarmTank.duty("after", 50, new Warming.After("heavy", 60));
        Transmission unit = WarmTank.unit(WarmTank.rest(200) - 10, HEAVY, after);
        assertEquals(
                Warmed.WarmingEnd.START_NOT_KNOWN, HeatBalance.of(unit, after).verdict());
    }

    @Test
    void whatLastsTooLongForItsHeatReachesTheLimitBeforeItsEnd() {
        DutyPoint after = WarmTank.duty("after", 200, new Warming.After("light", 100 * TIME_CONSTANT));
        double limit = WarmTank.rest(200) - 10;
        Warmed warmed = HeatBalance.of(WarmTank.unit(limit, LIGHT, after), after);
        assertEquals(Warmed.WarmingEnd.SUMP_RUNS_AWAY, warmed.verdict());
        double wanted = TIME_CONSTANT * Math.log((WarmTank.rest(200) - WarmTank.rest(50)) / 10);
        assertEquals(wanted, warmed.seconds().get(), 0.02 * wanted);
    }

    /** A point that comes to rest early lasts as long as it says all the same. */
    @Test
    void aLongTimeIsToldAsAsked() {
        DutyPoint after = WarmTank.duty("after", 200, new Warming.After("light", 30 * TIME_CONSTANT));
        Warmed warmed = HeatBalance.of(WarmTank.unit(420, LIGHT, after), after);
        assertEquals(30 * TIME_CONSTANT, warmed.seconds().get());
        assertEquals(WarmTank.rest(200), warmed.settled().get().at().sump(), 0.05);
    }

    @Test
    void aUnitIsJudgedWhereItsHeatBringsItAndNotWhereItFindsNoTemperature() {
        double limit = WarmTank.rest(200) - 10;
        DutyPoint given = LIGHT.at(Map.of("sump", 350.0));
        DutyPoint held = WarmTank.duty("held", 50, new Warming.ToBalance()).at(Map.of("sump", 350.0));
        Transmission unit = WarmTank.unit(limit, given.warmedBy(new Warming.ToBalance()), HEAVY, held);
        SettledUnit settled = SettledUnit.of(unit);
        assertEquals(
                List.of("light", "held"),
                settled.unit().judgedDuties().stream().map(DutyPoint::name).toList());
        assertEquals(WarmTank.rest(50), sump(settled, "light"), 1e-6);
        assertTrue(settled.unit().duty("light").orElseThrow().settled());
        assertEquals(350, sump(settled, "held"), "no heat moves a temperature that is given alone");
        assertEquals("heavy", settled.none().get(0).duty().name());
    }

    private static double sump(SettledUnit settled, String duty) {
        return settled.unit().duty(duty).orElseThrow().temperatures().get("sump");
    }
}

package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The unit of ten nodes, whose only duty point runs at 650 rpm. */
class SweepCaveatTest {

    private static DutyPoint duty(double sump) {
        DutyPoint idle = TenNodes.worn(1).duties().get(0);
        Map<String, Double> temperatures = new HashMap<>(idle.temperatures());
        temperatures.put("sump", sump + TenNodes.CELSIUS);
        return new DutyPoint(
                idle.name(),
                idle.about(),
                idle.speed(),
                idle.range(),
                idle.lockup(),
                idle.engineTorque(),
                idle.torqueRatio(),
                idle.turbineSpeed(),
                idle.lubeNeed(),
                temperatures,
                idle.commands());
    }

    private static List<SweepCaveat> caveats(Transmission unit, double sump, double... rpm) {
        List<Double> speeds =
                java.util.Arrays.stream(rpm).mapToObj(one -> one / 60).toList();
        return SpeedSweep.rising(unit, duty(sump), speeds, java.util.Optional.empty())
                .caveats();
    }

    private static List<SweepCaveat.Excess> why(double sump, double... rpm) {
        return caveats(TenNodes.worn(1), sump, rpm).stream()
                .map(SweepCaveat::why)
                .toList();
    }

    @Test
    void anOilOfUpTo160DegreesIsAsGoodAsItsViscosityLine() {
        assertEquals(List.of(), why(110, 650));
        assertEquals(List.of(), why(160, 650));
        assertEquals(List.of(SweepCaveat.Excess.OIL_OUT_OF_RANGE), why(161, 650));
    }

    @Test
    void speedsUpToTwoAndAHalfTimesTheFastestDutyPointAreOrdinary() {
        assertEquals(List.of(), why(110, 650, 1625));
        List<SweepCaveat> fast = caveats(TenNodes.worn(1), 110, 650, 1626);
        assertEquals(1, fast.size());
        assertEquals(SweepCaveat.Excess.FAR_TOO_FAST, fast.get(0).why());
        assertEquals(1626 / 60.0, fast.get(0).value().orElseThrow());
        assertEquals(650 / 60.0, fast.get(0).high().orElseThrow());
    }

    /** The relief valve cracks at 196 N on 10 mm, 25 bar; 400 psi are 27.6. */
    @Test
    void aReliefValveThatOpensBeforeTheRegulatorIsTold() {
        List<SweepCaveat> lifted = caveats(SetPressure.of(TenNodes.worn(1), 400 * TenNodes.PSI), 110, 1200, 1500);
        assertEquals(
                List.of(SweepCaveat.Excess.RELIEF_OPENS),
                lifted.stream().map(SweepCaveat::why).toList());
        assertEquals("wear 1.0", lifted.get(0).build());
    }

    @Test
    void whatIsTooHotAndTooFastIsToldForBoth() {
        assertEquals(
                List.of(SweepCaveat.Excess.OIL_OUT_OF_RANGE, SweepCaveat.Excess.FAR_TOO_FAST), why(165, 650, 2000));
    }
}

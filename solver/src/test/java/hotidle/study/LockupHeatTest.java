package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.law.RatedPoint;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.part.Converter;
import hotidle.part.Setting.Lockup;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Heat of a lockup at four duty points, by hand. */
class LockupHeatTest {

    private static final RatedPoint LOSS = new RatedPoint(2e-4, 1e5, 5e-3, 790, 0.7);

    private static DutyPoint duty(String name, Lockup lockup, OptionalDouble speedRatio) {
        return new DutyPoint(name, "", 30, "first", lockup, 80, 1, speedRatio, 1, Map.of("sump", 363.15), Map.of());
    }

    private static Transmission unit(double radius) {
        Transmission ten = TenNodes.worn(1);
        List<Placed> parts = new ArrayList<>(ten.network().parts());
        Converter converter = new Converter(
                LOSS, 1e5, Optional.of(new Converter.LockupClutch(LOSS, LOSS, 0.03, radius, 1, 0.12, 1.2)));
        parts.add(Placed.of("converter", converter, "sump", Group.CONVERTER, "converter", "cooler-in"));
        return ten.with(new Network(ten.network().nodes(), parts), ten.command())
                .at(List.of(
                        duty("stall", Lockup.OFF, OptionalDouble.of(0)),
                        duty("unknown", Lockup.OFF, OptionalDouble.empty()),
                        duty("climb", Lockup.OFF, OptionalDouble.of(0.9)),
                        duty("cruise", Lockup.SLIPPING, OptionalDouble.of(0.98)),
                        duty("overrun", Lockup.OFF, OptionalDouble.of(1.05)),
                        duty("locked", Lockup.ON, OptionalDouble.of(0.99))));
    }

    /** 80 N·m at 30 rev/s with a turbine at 0.9 of it: 80·2π·3 W held, over 2 s half of that twice when it is applied. */
    @Test
    void onlyATurbineThatTurnsSlowerThanTheEngineHeatsALockupThatIsNotOnYet() {
        List<LockupHeat> heats = LockupHeat.of(unit(0.1), 2);
        assertEquals(
                List.of("climb", "cruise"), heats.stream().map(LockupHeat::duty).toList());
        double climb = 80 * 2 * Math.PI * 3;
        assertEquals(climb, heats.get(0).held(), 1e-9 * climb);
        assertEquals(climb, heats.get(0).applied(), 1e-9 * climb);
        assertEquals(List.of(false, true), heats.stream().map(LockupHeat::slips).toList());
        assertEquals(2 * Math.PI * 0.6, heats.get(1).slip(), 1e-9);
    }

    @Test
    void appliedInHalfTheTimeItTakesHalfTheHeatAndHeldItTakesTheSamePower() {
        List<LockupHeat> slow = LockupHeat.of(unit(0.1), 2);
        List<LockupHeat> fast = LockupHeat.of(unit(0.1), 1);
        for (int i = 0; i < slow.size(); i++) {
            assertEquals(slow.get(i).applied() / 2, fast.get(i).applied(), 1e-9);
            assertEquals(slow.get(i).held(), fast.get(i).held());
        }
    }

    @Test
    void whatLocksNothingUpIsNotHeated() {
        assertEquals(List.of(), LockupHeat.of(unit(0), 2), "a lockup whose radius is not given");
        assertEquals(List.of(), LockupHeat.of(TenNodesByRatio.worn(1), 2), "a unit without a converter that locks");
    }
}

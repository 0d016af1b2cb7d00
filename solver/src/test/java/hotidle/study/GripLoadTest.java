package hotidle.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.part.Clutch;
import hotidle.part.Lining;
import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class GripLoadTest {

    private static final Clutch CLUTCH = new Clutch(
            new Clutch.Piston(0.002, 300, Optional.empty(), Optional.empty()),
            new Lining(4, 0.05, 0.07, 0.12, 0.10, true),
            1.2,
            new Clutch.Seal(0.08, 1e-6, 1e-3, 0));

    private static DutyPoint duty(double torque) {
        return new DutyPoint(
                "stall",
                "",
                30,
                "first",
                Setting.Lockup.OFF,
                torque,
                1.8,
                OptionalDouble.empty(),
                1,
                Map.of("sump", 373.15),
                Map.of());
    }

    /** 40 N·m at the engine, 1.8 times that at the turbine, of which the clutch carries 0.9. */
    @Test
    void aClutchCarriesItsShareOfTheTurbinesTorqueWhicheverWayItTurns() {
        Range.Applied applied = new Range.Applied(0.9, 1);
        assertEquals(new GripLoad(40 * 1.8 * 0.9, 1.2), GripLoad.of(duty(40), applied, CLUTCH));
        assertEquals(
                GripLoad.of(duty(40), applied, CLUTCH).torque(),
                GripLoad.of(duty(-40), applied, CLUTCH).torque(),
                "overrun presses as hard as drive");
    }

    @Test
    void aClutchThatDragsIsShortOfWhatItsSpringWouldHold() {
        DraggingClutch clutch = new DraggingClutch("hot-idle", "first", "overdrive", 4e5, 1e5);
        assertEquals(-0.75, clutch.headroom(), 1e-15);
    }
}

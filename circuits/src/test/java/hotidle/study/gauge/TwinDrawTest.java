package hotidle.study.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.Library;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Units that differ from their build have its faults. */
class TwinDrawTest {

    /** The scores of a pump differ from unit to unit, yet no limit is written for them, and worn faces do not make them larger. */
    @Test
    void aFaultWearsTheSameSizesByAsMuchInEachUnitOfABuild() {
        for (String name : List.of("fresh", "worn")) {
            Adjustable build = CircuitReader.read(Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
                    .circuit()
                    .orElseThrow()
                    .adjustable(name);
            Map<String, Double> sizes = new HashMap<>();
            for (WearSize size : build.dimensions()) {
                sizes.put(
                        size.name(), size.value() + Tolerances.of(build).sizes().getOrDefault(size.name(), 0.0) / 2);
            }
            Adjustable unit = new Tolerances.Twin(build, sizes, Map.of(), 1).adjustable();
            assertNotEquals(
                    build.dimension("primary.orifice-slip-area").orElseThrow().value(),
                    unit.dimension("primary.orifice-slip-area").orElseThrow().value());
            assertEquals(worn(UnitFaults.of(build)), worn(UnitFaults.of(unit)));
        }
    }

    /** Of each fault, what each size wears by it [m] or [m²]. */
    private static Map<String, Map<String, Double>> worn(List<UnitFault> faults) {
        Map<String, Map<String, Double>> worn = new HashMap<>();
        for (UnitFault fault : faults) {
            Map<String, Double> own = new HashMap<>();
            fault.wears().forEach(size -> own.put(size.name(), size.allowance()));
            worn.put(fault.name(), own);
        }
        return worn;
    }
}

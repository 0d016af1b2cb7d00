package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.part.AnnularGap;
import hotidle.part.Clutch;
import hotidle.part.PumpChamber;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Builds made anew with other sizes. */
class RemadeTest {

    private static final DescribedCircuit CIRCUIT = CircuitReader.read(
                    Library.text("shuttle-five").orElseThrow(), "shuttle-five.yaml")
            .circuit()
            .orElseThrow();

    @Test
    void everySizeOfEveryBuildMadeAnewAsItIsGivesTheSameUnit() {
        for (DescribedCircuit.Build build : CIRCUIT.builds()) {
            Adjustable unit = CIRCUIT.adjustable(build.name());
            Map<String, Double> all = new HashMap<>();
            unit.dimensions().forEach(dimension -> all.put(dimension.name(), dimension.value()));
            assertTrue(all.size() > 80, all.size() + " sizes");
            assertEquals(unit.unit(), unit.remake().with(all), build.name());
        }
    }

    @Test
    void aWornBuildRestoredByHandIsTheFreshOne() {
        Adjustable worn = CIRCUIT.adjustable("worn");
        Map<String, Double> fresh = new HashMap<>();
        worn.dimensions().stream()
                .filter(dimension -> !dimension.isNew())
                .forEach(dimension -> fresh.put(dimension.name(), dimension.fresh()));
        assertEquals(CIRCUIT.unit("fresh").network(), worn.remake().with(fresh).network());
    }

    @Test
    void aChangedBoreChangesItsPartAloneAndTheSetPressureIsKept() {
        Adjustable raised = CIRCUIT.adjustable("worn-raised");
        WearSize bore = raised.dimension("manual-valve-front.bore").orElseThrow();
        Transmission changed = raised.with(bore, bore.value() + 1e-5).orElseThrow();
        AnnularGap gap = (AnnularGap)
                changed.network().part("manual-valve-front").orElseThrow().part();
        assertEquals(bore.value() + 1e-5, gap.fit().outer());
        List<String> different = changed.network().parts().stream()
                .filter(placed -> !raised.unit().network().parts().contains(placed))
                .map(placed -> placed.name())
                .toList();
        assertEquals(List.of("manual-valve-front"), different);
        WearSize area = raised.dimension("primary.orifice-slip-area").orElseThrow();
        assertEquals(WearSize.SizeKind.AREA, area.kind());
        assertEquals(0.6e-6, area.fresh());
        assertEquals(1.2e-6, area.value());
        PumpChamber primary = (PumpChamber) raised.with(area, 0.7e-6)
                .orElseThrow()
                .network()
                .part("primary")
                .orElseThrow()
                .part();
        assertEquals(0.7e-6, primary.slip().orificeArea());
    }

    @Test
    void aBoreNarrowerThanItsValveIsRefusedWithTheReasonOfTheFile() {
        Adjustable worn = CIRCUIT.adjustable("worn");
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> worn.remake().with(Map.of("manual-valve-front.bore", 0.009)));
        assertTrue(refused.getMessage().contains("manual-valve-front"), refused.getMessage());
    }

    /** What a builder chooses and what does not wear: no study tries it of its own accord, a map may. */
    @Test
    void aPistonsAreaCanBeVariedThoughItDoesNotWear() {
        Adjustable worn = CIRCUIT.adjustable("worn");
        WearSize area = worn.remake().others().stream()
                .filter(size -> size.name().equals("low-clutch.piston-area"))
                .findFirst()
                .orElseThrow();
        assertEquals(WearSize.SizeKind.AREA, area.kind());
        Transmission larger = worn.with(area, 1.1 * area.value()).orElseThrow();
        Clutch clutch =
                (Clutch) larger.network().part("low-clutch").orElseThrow().part();
        assertEquals(1.1 * area.value(), clutch.piston().area(), 1e-15);
        assertTrue(worn.dimension(area.name()).isEmpty());
    }
}

package hotidle.study.spread;

import static org.junit.jupiter.api.Assertions.assertEquals;

import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What nobody has measured. */
class UnmeasuredTest {

    private static final OptionalDouble LIMIT = OptionalDouble.of(0.020060);

    private static final WearSize BLANK = size("blank", 0.020026, LIMIT, OptionalDouble.empty());
    private static final WearSize READ = size("read", 0.020050, LIMIT, OptionalDouble.of(0.020050));
    private static final WearSize SLEEVED = size("sleeved", 0.020030, LIMIT, OptionalDouble.of(0.020050));
    private static final WearSize UNLIMITED = size("plain", 0.020026, OptionalDouble.empty(), OptionalDouble.empty());

    private static WearSize size(String key, double value, OptionalDouble limit, OptionalDouble measured) {
        return new WearSize("valve", key, WearSize.SizeKind.LENGTH, value, 0.020026, limit, measured);
    }

    private static Adjustable build(WearSize... sizes) {
        return new Adjustable(null, List.of(sizes), with -> null);
    }

    private static List<String> taken(List<SizePrior> priors) {
        return priors.stream()
                .map(prior -> prior.size().key() + " " + prior.basis().word())
                .toList();
    }

    @Test
    void whereOneFitIsWornThoseNotLookedAtAreToo() {
        Adjustable used = build(BLANK, READ, UNLIMITED);
        assertEquals(List.of("blank worn"), taken(Unmeasured.of(used)));
        assertEquals(List.of("blank sound"), taken(Unmeasured.of(used, Unmeasured.FitState.SOUND)));
    }

    @Test
    void aNewUnitLiesWithinItsTolerances() {
        assertEquals(List.of("blank sound"), taken(Unmeasured.of(build(BLANK, UNLIMITED))));
        assertEquals(List.of("blank worn"), taken(Unmeasured.of(build(BLANK), Unmeasured.FitState.WORN)));
    }

    @Test
    void whatAShopMadeIsAsSoundAsItsMachine() {
        assertEquals(List.of("blank sound", "sleeved sound"), taken(Unmeasured.of(build(BLANK, SLEEVED))));
        WearSize newAgain = new WearSize(
                "valve",
                "new-again",
                WearSize.SizeKind.LENGTH,
                0.020026,
                0.020026,
                LIMIT,
                OptionalDouble.empty(),
                WearSize.Origin.MADE);
        assertEquals(List.of("new-again sound"), taken(Unmeasured.of(build(newAgain, READ))));
    }

    @Test
    void whatWasMeasuredIsKnownToItsGauge() {
        assertEquals(
                SizePrior.Basis.MEASURED,
                Unmeasured.prior(READ, Unmeasured.FitState.WORN).orElseThrow().basis());
    }
}

package hotidle.circuits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes put into read parts against sizes written into the file and read anew: the same unit, or refused in the same words. */
class RemadePropertyTest {

    private static final double[] OUTSIDE = {
        0, -0.001, 1e-9, 5, 1e6, Double.NaN, Double.POSITIVE_INFINITY, -0.0, 0.0299, 1e-4
    };

    private int made;
    private int refused;

    static List<String> circuits() {
        return Library.names();
    }

    @ParameterizedTest
    @MethodSource("circuits")
    void aChangedSizeMakesTheUnitThatItsFileWouldMake(String name) {
        DescribedCircuit circuit = CircuitReader.read(Library.text(name).orElseThrow(), name)
                .circuit()
                .orElseThrow();
        Random random = new Random(name.hashCode());
        for (DescribedCircuit.Build build : circuit.builds()) {
            Adjustable unit = circuit.adjustable(build.name());
            Remade fast = (Remade) unit.remake();
            RemadeFromText slow = RemadeFromText.of(name, build.name(), fast.unit());
            assertEquals(slow.with(Map.of()), unit.unit(), build.name());
            Map<String, Double> all = new HashMap<>();
            for (WearSize size : unit.dimensions()) {
                double near = size.value() * (1 + 0.02 * random.nextGaussian());
                same(fast, slow, Map.of(size.name(), near));
                same(fast, slow, Map.of(size.name(), OUTSIDE[random.nextInt(OUTSIDE.length)]));
                all.put(size.name(), size.value() * (1 + 1e-4 * random.nextDouble() * (size.allowance() < 0 ? -1 : 1)));
            }
            same(fast, slow, all);
            for (int several = 0; several < 30 && !all.isEmpty(); several++) {
                same(fast, slow, several(unit.dimensions(), random));
            }
        }
        assertTrue(made > 20 && refused > 20, made + " made, " + refused + " refused");
    }

    /** Some sizes, most of them possible. */
    private static Map<String, Double> several(List<WearSize> sizes, Random random) {
        Map<String, Double> several = new HashMap<>();
        int count = 1 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
            WearSize size = sizes.get(random.nextInt(sizes.size()));
            boolean outside = random.nextInt(6) == 0;
            several.put(
                    size.name(),
                    outside
                            ? OUTSIDE[random.nextInt(OUTSIDE.length)]
                            : size.value() * (1 + 0.002 * random.nextGaussian()));
        }
        return several;
    }

    private void same(Adjustable.Remake fast, Adjustable.Remake slow, Map<String, Double> sizes) {
        Object expected = outcome(slow, sizes);
        assertEquals(expected, outcome(fast, sizes), sizes::toString);
        made += expected instanceof String ? 0 : 1;
        refused += expected instanceof String ? 1 : 0;
    }

    private static Object outcome(Adjustable.Remake remake, Map<String, Double> sizes) {
        try {
            return remake.with(sizes);
        } catch (IllegalArgumentException impossible) {
            return impossible.getMessage();
        }
    }
}

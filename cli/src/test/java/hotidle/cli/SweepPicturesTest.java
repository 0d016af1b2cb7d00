package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.ReadyCircuits;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.single.LibraryMaterials;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures are looked at before anything is solved; so are a part's oil, what it holds, and stages. */
class SweepPicturesTest {

    private static final List<Double> SPEEDS = List.of(10.0, 20.0);
    private static final DescribedCircuit CIRCUIT = ReadyCircuits.read("crescent-four");

    @TempDir
    Path folder;

    private String refused(SweepPictures pictures, List<Double> speeds) {
        return assertThrows(WrongInputException.class, () -> pictures.check(speeds))
                .getMessage();
    }

    private SweepPictures pictures(String... words) {
        return Options.of(new SweepPictures(), words);
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void withoutAPictureOneSpeedIsEnough() {
        assertDoesNotThrow(() -> pictures().check(List.of(10.0)));
    }

    @Test
    void aPictureNeedsASeriesOfSpeeds() {
        String wrong = refused(pictures("--plot", file("a.svg")), List.of(10.0));
        assertTrue(wrong.startsWith("hotidle: --plot needs a series of speeds"), wrong);
        assertTrue(refused(pictures("--plot-film", file("a.png")), List.of(10.0))
                .startsWith("hotidle: --plot-film needs"));
        assertDoesNotThrow(() -> pictures("--plot", file("a.svg")).check(SPEEDS));
    }

    @Test
    void aSizeThatIsNoneIsRefusedBeforeTheFileIsLookedAt() {
        assertTrue(refused(pictures("--plot", file("a.txt"), "--size", "big"), SPEEDS)
                .contains("--size big is no size"));
        assertTrue(refused(pictures("--plot", file("a.svg"), "--size", "10x10"), SPEEDS)
                .contains("px each way"));
        assertTrue(refused(pictures("--plot", file("a.txt")), SPEEDS).contains("names no kind of picture"));
    }

    @Test
    void stagesStartFromTheNearestBuildThatWasNotAskedFor() {
        TorqueRun run = new TorqueRun(
                new PrintWriter(Writer.nullWriter()),
                UnitSystem.SHOP,
                SetPressure.By.SPRING,
                List.of(8e5, 16e5),
                30,
                OptionalDouble.empty());
        List<Adjustable> restored = List.of(CIRCUIT.adjustable("restored"));
        assertEquals(Optional.empty(), Options.of(new StageOptions()).of(run, CIRCUIT, restored, restored));
        StageRun named = Options.of(new StageOptions(), "--stages", "--from", "fresh")
                .of(run, CIRCUIT, restored, restored)
                .orElseThrow();
        assertEquals("fresh", named.before());
        StageRun nearest = Options.of(new StageOptions(), "--stages")
                .of(run, CIRCUIT, restored, restored)
                .orElseThrow();
        assertEquals(CIRCUIT.standsOn("restored", List.of("fresh", "worn")).orElse(""), nearest.before());
        StageOptions wrong = Options.of(new StageOptions(), "--stages", "--from", "nosuch");
        assertThrows(WrongInputException.class, () -> wrong.of(run, CIRCUIT, restored, restored));
    }

    @Test
    void aPartsOilIsNamedOrGivenWhole() {
        LibraryMaterials stock =
                new LibraryMaterials(Map.of("shuttle-atf", CIRCUIT.unit().oil()), Map.of(), Map.of());
        PartOil usual = PartOil.of(Options.of(new PartOptions()), 300, stock);
        assertTrue(usual.byDefault() && usual.temperatureByDefault());
        assertEquals(373.15, usual.temperature(), 1e-9);
        PartOil given =
                PartOil.of(Options.of(new PartOptions(), "--viscosity", "8mPa.s", "--density", "800kg/m3"), 300, stock);
        assertFalse(given.byDefault());
        assertEquals(300, given.temperature(), 1e-9, "that at which it was measured");
        assertEquals(8e-3, given.oil().at(300, 101_325).viscosity(0), 1e-9);
        for (List<String> wrong : List.of(
                List.of("--viscosity", "8mPa.s"),
                List.of("--oil", "shuttle-atf", "--viscosity", "8mPa.s", "--density", "800kg/m3"),
                List.of("--oil", "nosuch"),
                List.of("--temperature", "300degC"))) {
            PartOptions options = Options.of(new PartOptions(), wrong.toArray(String[]::new));
            assertThrows(WrongInputException.class, () -> PartOil.of(options, 300, stock), wrong.toString());
        }
    }
}

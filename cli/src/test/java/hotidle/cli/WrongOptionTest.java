package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What is said of a command line that is none, and in which units a screen speaks. */
class WrongOptionTest {

    private static String refused(String... words) {
        Run run = Run.of(words);
        assertEquals(HotIdle.WRONG_INPUT, run.code(), run.err());
        assertEquals("", run.out());
        assertFalse(run.err().contains("Exception"), run.err());
        return run.err();
    }

    @AfterEach
    void forget() {
        System.clearProperty(UnitsOption.PROPERTY);
    }

    @Test
    void aCommandThatIsNoneIsRefusedWithTheNearest() {
        String wrong = refused("comparre", "shuttle-five");
        assertTrue(wrong.startsWith("hotidle: comparre is no command\nmend: "), wrong);
        assertTrue(wrong.contains("compare"), wrong);
    }

    @Test
    void anOptionThatIsNoneIsRefusedWithTheNearest() {
        String wrong = refused("compare", "shuttle-five", "--bild=worn");
        assertTrue(wrong.startsWith("hotidle: --bild is no option of hotidle compare\nmend: "), wrong);
        assertTrue(wrong.contains("--build"), wrong);
    }

    @Test
    void optionsThatAreHiddenAreNotOffered() {
        String wrong = refused("window", "shuttle-five", "--vari");
        assertFalse(wrong.contains("--vary"), wrong);
    }

    @Test
    void aWordTooManyIsNotTakenForAnOption() {
        String wrong = refused("compare", "shuttle-five", "worn");
        assertTrue(wrong.contains("has no place for 'worn'"), wrong);
        assertTrue(wrong.contains("--build"), wrong);
    }

    @Test
    void aWordForUnitsThatOthersUseIsUnderstoodAndSaid() {
        assertTrue(refused("compare", "shuttle-five", "--units", "imperial")
                .contains("hotidle: --units imperial is none of its words\nmend: write shop; valid: shop, metric, si"));
        assertTrue(refused("compare", "shuttle-five", "--units", "metrik").contains("metric"));
        assertTrue(refused("report", "shuttle-five", "--out", "a.html", "--for", "shpo")
                .contains("shop"));
    }

    @Test
    void aNumberThatIsNoneIsRefusedByItsOption() {
        assertTrue(refused("spread", "training-rig", "--samples", "many").contains("--samples"));
        assertTrue(refused("shift", "shuttle-five").contains("--inertia"));
    }

    @Test
    void anOptionOverrulesTheSettingTheSettingTheFileAndTheFileTheUsual() {
        UnitsOption none = Options.of(new UnitsOption());
        assertEquals(UnitSystem.SHOP, none.shown());
        none.ofFile(Optional.of("metric"));
        assertEquals(UnitSystem.METRIC, none.shown());
        System.setProperty(UnitsOption.PROPERTY, "si");
        assertEquals(UnitSystem.SI, none.shown());
        UnitsOption asked = Options.of(new UnitsOption(), "--units", "SHOP");
        asked.ofFile(Optional.of("metric"));
        assertEquals(UnitSystem.SHOP, asked.shown());
    }

    @Test
    void dataIsInShopUnitsWhateverTheSettingAndTheFile() {
        System.setProperty(UnitsOption.PROPERTY, "metric");
        UnitsOption none = Options.of(new UnitsOption());
        none.ofFile(Optional.of("si"));
        assertEquals(UnitSystem.SHOP, none.read());
        assertEquals(
                UnitSystem.METRIC,
                Options.of(new UnitsOption(), "--units", "metric").read());
    }

    @Test
    void aSettingThatIsNoneIsRefused() {
        System.setProperty(UnitsOption.PROPERTY, "furlongs");
        String wrong = assertThrows(
                        WrongInputException.class,
                        () -> Options.of(new UnitsOption()).shown())
                .getMessage();
        assertTrue(wrong.contains("HOTIDLE_UNITS is furlongs, which is no system of units"), wrong);
    }
}

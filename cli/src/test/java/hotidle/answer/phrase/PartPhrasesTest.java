package hotidle.answer.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is said of one part on its own: over its chart, and in the help of its kind. */
class PartPhrasesTest {

    @Test
    void aBushingIsDrawnByItsFilmAllElseByItsFlow() {
        assertEquals("Least film of a bushing against speed", PartChartPhrase.title(true, "bushing", "speed"));
        assertEquals("Flow of an orifice against drop", PartChartPhrase.title(false, "orifice", "drop"));
        assertEquals(
                "Flow of an orifice: 0.64 gpm at drop 1 psi, 1.10 gpm at 3 psi",
                PartChartPhrase.finding(false, "orifice", "drop", "0.64 gpm", "1 psi", "1.10 gpm", "3 psi"));
        assertEquals("least film [thou]", PartChartPhrase.axis(true, "thou"));
        assertEquals("flow [gpm]", PartChartPhrase.axis(false, "gpm"));
        assertEquals("metal contact", PartChartPhrase.gap(true));
        assertEquals("unsolved", PartChartPhrase.gap(false));
        assertEquals("pressure drop 150 psi", PartChartPhrase.drop("150 psi"));
    }

    @Test
    void onlyAPartWithTwoPortsThatIsNoPumpTakesADrop() {
        assertEquals(
                "Ports, held with --at PORT=PRESSURE or with --drop PRESSURE from the first to the second",
                KindHelpPhrase.ports(true));
        assertEquals("Ports, held with --at PORT=PRESSURE", KindHelpPhrase.ports(false));
        assertEquals("No keys.", KindHelpPhrase.keys(false));
        assertEquals("Keys", KindHelpPhrase.keys(true));
    }

    @Test
    void aKeySaysItsUnitsItsBoundsAndWhatIsTakenForIt() {
        assertEquals("a length in mm, in", KindHelpPhrase.in("a length", List.of("mm", "in")));
        assertEquals("a share, bare or in %", KindHelpPhrase.bare("a share"));
        assertEquals("two of a length", KindHelpPhrase.two("a length"));
        assertEquals(
                "left out: 1, a valve lies against its bore",
                KindHelpPhrase.leftOut("1", "a valve lies against its bore"));
        assertEquals("needed", KindHelpPhrase.needed(true));
        assertEquals("may be left out", KindHelpPhrase.needed(false));
        assertEquals("needed where the valve has a spring", KindHelpPhrase.neededWhere("the valve has a spring"));
        assertEquals("allowed: 1 mm to 300 mm", KindHelpPhrase.allowed("1 mm to 300 mm", ""));
        assertEquals(
                "allowed: 1 mm to 300 mm; usual: 4 mm to 120 mm",
                KindHelpPhrase.allowed("1 mm to 300 mm", "4 mm to 120 mm"));
        assertEquals("measure: micrometer on the land", KindHelpPhrase.measure("micrometer on the land"));
    }
}

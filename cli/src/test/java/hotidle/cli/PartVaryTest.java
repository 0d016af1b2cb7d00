package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a chart of a part on its own goes over. */
class PartVaryTest {

    private static final Kind GAP = Kinds.of("annular-gap").orElseThrow();
    private static final List<String> GIVEN = List.of("bore=14.06mm", "valve=14mm", "length=8mm");

    private static String refused(String text) {
        return assertThrows(WrongInputException.class, () -> PartVary.of(GAP, text))
                .getMessage();
    }

    @Test
    void aLengthGoesFromOneEndToTheOtherWithBoth() {
        PartVary vary = PartVary.of(GAP, "length=1..12mm");
        assertEquals(PartVary.POINTS, vary.values().size());
        assertEquals(0, BigDecimal.ONE.compareTo(vary.values().get(0)));
        assertEquals(new BigDecimal("12"), vary.values().get(PartVary.POINTS - 1));
    }

    @Test
    void itsValueStandsInThePlaceOfTheOneThatWasWritten() {
        PartVary vary = PartVary.of(GAP, "length=1..12mm");
        assertEquals(List.of("bore=14.06mm", "valve=14mm", "length=3.5mm"), vary.words(GIVEN, new BigDecimal("3.5")));
    }

    @Test
    void aClearanceWidensTheBoreAndKeepsTheValve() {
        PartVary vary = PartVary.of(GAP, "clearance=0.02..0.1mm");
        List<String> words = vary.words(GIVEN, new BigDecimal("0.05"));
        assertTrue(words.contains("valve=14mm"), words.toString());
        assertTrue(words.contains("bore=0.01405m"), words.toString());
        String wrong = assertThrows(
                        WrongInputException.class, () -> vary.words(List.of("length=8mm"), new BigDecimal("0.05")))
                .getMessage();
        assertTrue(wrong.endsWith("mend: add valve=14.00mm"), wrong);
    }

    @Test
    void aDropOrATemperatureIsNoKeyAndLeavesTheWordsAlone() {
        PartVary drop = PartVary.of(GAP, "drop=10..200psi");
        assertEquals(GIVEN, drop.words(GIVEN, BigDecimal.TEN));
        PartOptions none = Options.of(new PartOptions());
        assertEquals("10psi", drop.duty(none, BigDecimal.TEN).drop);
        PartOptions warm = PartVary.of(GAP, "temperature=20..120degC").duty(none, new BigDecimal("80"));
        assertEquals("80degC", warm.temperature);
    }

    @Test
    void besideTheChartStandsTheLastValueWhereNoneWasGiven() {
        PartVary length = PartVary.of(GAP, "length=1..12mm");
        assertEquals(GIVEN, length.completed(GIVEN));
        assertEquals(
                List.of("bore=14.06mm", "valve=14mm", "length=12mm"),
                length.completed(List.of("bore=14.06mm", "valve=14mm")));
        PartVary drop = PartVary.of(GAP, "drop=10..200psi");
        assertEquals("200psi", drop.completed(Options.of(new PartOptions())).drop);
        assertEquals("50psi", drop.completed(Options.of(new PartOptions(), "--drop", "50psi")).drop);
    }

    @Test
    void aCountGoesInWholeStepsAndReachesItsEndHoweverFarThatIs() {
        List<BigDecimal> few = PartVary.of(GAP, "count=1..5").values();
        assertEquals(
                List.of("1", "2", "3", "4", "5"),
                few.stream().map(BigDecimal::toString).toList());
        List<BigDecimal> many = PartVary.of(GAP, "count=1..200").values();
        assertTrue(many.size() <= PartVary.POINTS, many.size() + " values");
        assertEquals(new BigDecimal("200"), many.get(many.size() - 1));
        assertTrue(many.stream().allMatch(value -> value.scale() == 0), many.toString());
    }

    @Test
    void aCountIsNoFraction() {
        assertTrue(refused("count=1.5..4").contains("count is a whole number\nmend: write two whole ends"));
    }

    @Test
    void whatIsNoKeyWithTwoEndsIsRefused() {
        for (String text : List.of("length", "length=5mm", "=1..2mm", "length=a..bmm")) {
            assertTrue(refused(text).contains("is no key with its two ends"), text);
        }
        assertTrue(refused("length=12..1mm").endsWith("does not rise\nmend: exchange the two ends"));
        assertTrue(refused("length=5..5mm").contains("does not rise"));
    }

    @Test
    void aKeyThatTheKindDoesNotHaveIsRefusedWithTheNearest() {
        String wrong = refused("lenght=1..12mm");
        assertTrue(wrong.contains("annular-gap has no number 'lenght'") && wrong.contains("length"), wrong);
        assertTrue(refused("length=1..12psi").startsWith("hotidle: --vary length 1psi"));
    }
}

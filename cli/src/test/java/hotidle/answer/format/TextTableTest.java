package hotidle.answer.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {

    private static TextTable flows() {
        return new TextTable(List.of("fit", "oil leak, gap as tested"))
                .add(List.of("bore", "12.0"))
                .add(List.of("land-2", "-"));
    }

    @Test
    void theFirstColumnStandsLeftAndNumbersRight() {
        assertEquals("""
                fit     oil leak, gap as tested
                -------------------------------
                bore                       12.0
                land-2                        -
                """, flows().aligned());
    }

    @Test
    void inANarrowWidthHeadsAreBrokenAtBlanksAndStandAboveTheRule() {
        String narrow = flows().fitted(20);
        List<String> lines = narrow.lines().toList();
        assertTrue(lines.stream().allMatch(line -> line.length() <= 20), narrow);
        assertTrue(lines.get(0).endsWith("oil leak,") || lines.get(0).endsWith("oil"), narrow);
        assertEquals(1, lines.stream().filter(line -> line.matches("-+")).count(), narrow);
        assertTrue(narrow.contains("land-2"), narrow);
    }

    @Test
    void aHeadOfOneLineStandsAtTheRuleBesideOneOfSeveral() {
        List<String> lines = flows().fitted(20).lines().toList();
        int rule = lines.indexOf(
                lines.stream().filter(line -> line.matches("-+")).findFirst().orElseThrow());
        assertTrue(lines.get(rule - 1).startsWith("fit"), String.join("\n", lines));
    }

    @Test
    void cellsAreNeverCutHoweverNarrowTheScreen() {
        String text = new TextTable(List.of("a", "b"))
                .add(List.of("x".repeat(50), "y".repeat(50)))
                .fitted(60);
        assertTrue(text.contains("x".repeat(50)) && text.contains("y".repeat(50)), text);
    }

    @Test
    void wideCellsAreFoldedAtBlanksAndNoWordIsLost() {
        String said = "all its sizes at 68 % of their wear allowance; within wear";
        String text = new TextTable(List.of("fault", "share", "best size", "hidden up to"))
                .add(List.of("pump-slipping@pump", "52 %", said, said))
                .add(List.of("oil-aerated", "48 %", "21 % air", "12 % air"))
                .folded(60);
        assertTrue(text.lines().allMatch(line -> line.length() <= 60), text);
        assertEquals(
                1,
                text.lines()
                        .filter(line -> line.startsWith("pump-slipping@pump"))
                        .count(),
                text);
        assertTrue(
                text.contains("48 %")
                        && text.lines()
                                        .filter(line -> line.contains("allowance"))
                                        .count()
                                > 0,
                text);
        for (String word : said.split(" ", -1)) {
            assertTrue(text.split(java.util.regex.Pattern.quote(word), -1).length > 2, word + " twice in\n" + text);
        }
    }

    @Test
    void aSpreadsheetGetsQuotesWhereACellHasACommaOrAQuote() {
        assertEquals(
                "a,b\n\"1,5\",\"3\"\" tube\"\n",
                new TextTable(List.of("a", "b")).add(List.of("1,5", "3\" tube")).csv());
    }

    @Test
    void twoTablesSideBySideKeepTheirLines() {
        String both = TextTable.beside(
                new TextTable(List.of("fit")).add(List.of("bore")).add(List.of("land")),
                new TextTable(List.of("oil")).add(List.of("hot")));
        List<String> lines = both.lines().toList();
        assertEquals(4, lines.size());
        assertEquals("bore    hot", lines.get(2));
        assertEquals("land", lines.get(3));
    }
}

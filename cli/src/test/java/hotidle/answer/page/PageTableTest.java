package hotidle.answer.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.TextTable;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A table of a page shows the cells of the screen, and only how they stand is told beside them. */
class PageTableTest {

    private static final PageTable BUDGET = PageTable.of(
            "where the oil goes",
            new TextTable(List.of("", "gpm", "verdict"))
                    .add(List.of("lost", "6.28", "FAILS"))
                    .add(List.of("  pump", "-3.36", "ok"))
                    .add(List.of("    primary", "-", "107 LOW")));

    @Test
    void theCellsAreThoseOfTheScreen() {
        assertEquals("lost", BUDGET.rows().get(0).heading().text());
        assertEquals("6.28", BUDGET.rows().get(0).cells().get(0).text());
        assertEquals(3, BUDGET.head().size());
        assertEquals("where the oil goes", BUDGET.caption());
    }

    @Test
    void flowsStandRightAndWordsLeft() {
        assertEquals("number", BUDGET.head().get(1).looks());
        assertEquals("", BUDGET.head().get(2).looks());
        assertEquals("number", BUDGET.rows().get(1).cells().get(0).looks());
    }

    /** A check sum begins with a digit, and is cut where it may not go on in the next line. */
    @Test
    void aLongTextThatBeginsWithADigitIsNoNumber() {
        PageTable files = PageTable.of(
                "files", new TextTable(List.of("file", "SHA-256")).add(List.of("a.yaml", "3f40b404".repeat(8))));
        assertEquals("", files.head().get(1).looks());
        assertEquals("", files.rows().get(0).cells().get(0).looks());
    }

    @Test
    void aPathStandsUnderItsGroup() {
        assertEquals("pump", BUDGET.rows().get(1).heading().text());
        assertEquals("in1", BUDGET.rows().get(1).heading().looks());
        assertEquals("in2", BUDGET.rows().get(2).heading().looks());
    }

    @Test
    void whatFailsIsMarked() {
        assertEquals("alarm", BUDGET.rows().get(0).cells().get(1).looks());
        assertEquals("", BUDGET.rows().get(1).cells().get(1).looks());
        assertEquals("alarm", BUDGET.rows().get(2).cells().get(1).looks());
    }

    @Test
    void eachCellNamesItsColumnForWhereColumnsHaveNoRoom() {
        assertEquals("gpm", BUDGET.rows().get(0).cells().get(0).of());
        assertEquals("", BUDGET.rows().get(0).heading().of());
    }

    @Test
    void aTableOfManyBuildsIsWiderThanATelephoneAndOneOfTwoNumbersIsNot() {
        assertFalse(BUDGET.cards());
        PageTable builds = PageTable.of(
                "builds",
                new TextTable(List.of("", "fresh", "worn", "worn-raised", "restored-raised"))
                        .add(List.of("gauge reads [psi]", "154 ok", "111 LOW", "112 LOW", "244 ok")));
        assertTrue(builds.cards());
        assertFalse(builds.many());
        assertTrue(PageTable.of(
                        "limits",
                        new TextTable(List.of("a", "b", "c", "d", "e", "f")).add(List.of("1", "2", "3", "4", "5", "6")))
                .many());
    }

    @Test
    void aSentenceThatAScreenIndentsBelongsToTheOneBefore() {
        Block said = Block.said(List.of("worn: not held.", "  Holds from 891 rpm up.", ""));
        assertEquals(
                List.of(
                        new Block.Line("worn: not held.", ""),
                        new Block.Line("Holds from 891 rpm up.", Block.Line.BELOW)),
                said.lines());
    }
}

package hotidle.answer.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SheetAnswerTest {

    private static final SheetAnswer SHEET = new SheetAnswer("\uFEFFpart,size\nregulator,bore\npump,face-clearance\n");

    @Test
    void theMarkForASpreadsheetIsNotShownOnTheScreen() {
        assertEquals("part,size\nregulator,bore\npump,face-clearance\n", SHEET.screen());
        assertEquals('\uFEFF', SHEET.file().charAt(0));
    }

    @Test
    void theHeadIsNoRowToFillIn() {
        assertEquals(2, SHEET.rows());
    }
}

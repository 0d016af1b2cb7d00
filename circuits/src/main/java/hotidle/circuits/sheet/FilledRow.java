package hotidle.circuits.sheet;

import hotidle.circuits.text.Place;
import java.util.function.Function;

/**
 * A row of a sheet as it was filled in.
 *
 * @param text  of the cell in a column; empty where there is none
 * @param place of that cell
 */
record FilledRow(Function<SheetColumn, String> text, Function<SheetColumn, Place> place) {

    String text(SheetColumn column) {
        return text.apply(column);
    }

    Place place(SheetColumn column) {
        return place.apply(column);
    }

    /** The same with another text in a column. */
    FilledRow with(SheetColumn column, String other) {
        return new FilledRow(one -> one == column ? other : text.apply(one), place);
    }

    /** Who measured it with what, and what was noted. */
    String because() {
        String by = text(SheetColumn.BY);
        String gauge = text(SheetColumn.GAUGE);
        String note = text(SheetColumn.NOTE);
        return "measured" + (by.isEmpty() ? "" : " by " + by) + (gauge.isEmpty() ? "" : " with " + gauge)
                + (note.isEmpty() ? "" : ": " + note);
    }
}

package hotidle.circuits.sheet;

import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A hub whose bushing is missing, written {@code missing 46.02}: what is measured then is the bare bore in which the bushing sat, round
 * which the hub leaks.
 *
 * @param fit the row of hub and bushing
 */
record MissingBushing(Problems problems, SheetRow fit) {

    private static final Pattern WORDS = Pattern.compile("(?i)(missing|gone|lost|none|no bushing)\\b[,;:]?\\s*(.*)");

    /** A bore in which a bushing sat is wider than the bushing's by two walls of it, and by no more than this (assumed) [-]. */
    private static final double WIDEST = 1.4;

    /** Whether a row says so of a bushing. */
    boolean said(FilledRow row) {
        return fit.inner().equals(Optional.of("hub"))
                && WORDS.matcher(row.text(SheetColumn.BORE)).matches();
    }

    /** The row with the bare bore alone; empty where none is written, which is told. */
    Optional<FilledRow> bareBore(FilledRow row) {
        String text = row.text(SheetColumn.BORE);
        Matcher said = WORDS.matcher(text);
        if (said.matches() && !said.group(2).isEmpty()) {
            String note = row.text(SheetColumn.NOTE);
            return Optional.of(row.with(SheetColumn.BORE, said.group(2))
                    .with(SheetColumn.NOTE, "its bushing is missing" + (note.isEmpty() ? "" : "; " + note)));
        }
        tell(
                row.place(SheetColumn.BORE),
                "the sheet has '" + text + "' for " + name() + " and not what is there in its place");
        return Optional.empty();
    }

    /** Whether a bushing of the new size fits a bare bore; else that is told. */
    boolean sound(Measured bare, SizeAsNew bushing) {
        double bore = bare.readings().mean();
        boolean sound = !bushing.known() || (bore > bushing.fresh() && bore < WIDEST * bushing.fresh());
        if (!sound) {
            tell(
                    bare.place(),
                    "the sheet has a bare bore of " + bare.alike(bore) + " where the bushing of " + name()
                            + " is missing, whose own bore is " + bare.alike(bushing.fresh()) + " new");
        }
        return sound;
    }

    private String name() {
        return fit.part() + "." + fit.outer();
    }

    private void tell(Place place, String what) {
        problems.error(
                place,
                ProblemCode.MISSING_BUSHING_WITHOUT_BORE,
                what,
                "without its bushing the hub leaks round the bare bore in which the bushing sat",
                "write missing and what that bore measures, for example missing 46.02 mm");
    }
}

package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.oil.OilAt;
import java.util.Locale;
import java.util.Optional;

/**
 * What a test stand reads: a vacuum, {@code 18 inHg}, or the pressure of a stand that presses air, {@code 30 psi pressure}.
 *
 * @param written as on the sheet
 * @param pressed whether it is a pressure above the room's, and no vacuum below it
 * @param si      how far from the room's pressure [Pa]
 */
record AirReading(String written, boolean pressed, double si) {

    /** Absolute pressure of the room: the standard atmosphere (assumed) [Pa]. */
    static final double ROOM = OilAt.STANDARD_ATMOSPHERE;

    /** No air is pressed into a bore at more (chosen) [Pa]. */
    private static final double MOST = 2e6;

    /** The reading of a row; empty where it is none, which is told. */
    static Optional<AirReading> of(FilledRow row, String of, Problems problems) {
        String written = row.text(SheetColumn.AIR);
        String text = written.toLowerCase(Locale.ROOT);
        boolean pressed = text.endsWith("pressure");
        String number = written.substring(
                        0, written.length() - (pressed ? "pressure" : text.endsWith("vacuum") ? "vacuum" : "").length())
                .strip();
        Units.Amount amount = Units.read(decimal(number), Dimension.PRESSURE);
        String wrong = amount.good()
                ? amount.si() >= 0 && amount.si() < (pressed ? MOST : ROOM)
                        ? ""
                        : "which no stand reads: "
                                + (pressed ? "allowed is 0 to 290 psi" : "a vacuum is 0 to 29.9 inHg")
                : amount.wrong();
        if (!wrong.isEmpty()) {
            problems.error(
                    row.place(SheetColumn.AIR),
                    ProblemCode.AIR_READING_IMPOSSIBLE,
                    "the sheet has the reading '" + written + "' of " + of + ", " + wrong,
                    "a stand reads a vacuum below the room's pressure, or a pressure above it",
                    "write 18 inHg for a vacuum, or 30 psi pressure where the stand presses air, for example");
            return Optional.empty();
        }
        return Optional.of(new AirReading(written, pressed, amount.si()));
    }

    /** A decimal comma as a point: a spreadsheet has either. */
    private static String decimal(String number) {
        return number.matches("\\d+,\\d+.*") ? number.replaceFirst(",", ".") : number;
    }

    /** Absolute [Pa]. */
    double absolute() {
        return pressed ? ROOM + si : ROOM - si;
    }
}

package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.law.AirOrifice;
import hotidle.part.Fit;
import hotidle.study.AirStand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rows of a sheet that calibrate the stand on which bores were tested with air: what it reads with its port blocked, and through holes
 * whose diameter stands under 'measured bore'. The room has the standard atmosphere and 20 °C (assumed).
 */
final class StandRows {

    /** In place of a size. */
    static final String BLOCKED = "blocked port";

    static final String HOLE = "hole";

    /** Temperature of room, stand and part [K]. */
    static final double ROOM = Fit.REFERENCE_TEMPERATURE;

    private record HolePoint(AirReading reading, AirStand.Calibration hole, Place place) {}

    private final Problems problems;
    private final List<HolePoint> points = new ArrayList<>();
    private boolean wrong;

    StandRows(Problems problems) {
        this.problems = problems;
    }

    /** Takes a row of the stand; one without a reading is not filled in. */
    void read(FilledRow row) {
        String size = row.text(SheetColumn.SIZE);
        if (row.text(SheetColumn.AIR).isEmpty()) {
            return;
        }
        int before = points.size();
        hole(row, size)
                .ifPresent(diameter -> AirReading.of(row, SheetWriter.STAND + ", " + size, problems)
                        .ifPresent(reading -> points.add(new HolePoint(
                                reading,
                                new AirStand.Calibration(diameter, reading.absolute()),
                                row.place(SheetColumn.AIR)))));
        wrong |= points.size() == before;
    }

    /** Its diameter [m], 0 of a blocked port; empty where it has none, which is told. */
    private Optional<Double> hole(FilledRow row, String size) {
        if (size.equals(BLOCKED)) {
            return Optional.of(0.0);
        }
        String text = row.text(SheetColumn.BORE).replace(',', '.');
        String unit =
                row.text(SheetColumn.UNIT).isEmpty() ? row.text(SheetColumn.GIVEN_IN) : row.text(SheetColumn.UNIT);
        Units.Amount bare = Units.read(text, Dimension.LENGTH);
        Units.Amount diameter = bare.good() ? bare : Units.read(text + " " + unit, Dimension.LENGTH);
        if (size.equals(HOLE) && diameter.good() && diameter.si() > 0 && diameter.si() < LARGEST) {
            return Optional.of(diameter.si());
        }
        problems.error(
                row.place(size.equals(HOLE) ? SheetColumn.BORE : SheetColumn.SIZE),
                ProblemCode.STAND_ROW_NOT_KNOWN,
                size.equals(HOLE)
                        ? "the sheet has a hole of the stand of '" + text + "', which is no diameter"
                        : "the sheet has '" + size + "' of the stand, which is neither a " + BLOCKED + " nor a " + HOLE,
                "a stand is calibrated by what it reads blocked and through known holes",
                "write size '" + HOLE + "', its diameter with its unit under '" + SheetColumn.BORE.title()
                        + "', above zero and below 50 mm, and its reading under '" + SheetColumn.AIR.title() + "'");
        return Optional.empty();
    }

    /** No stand has a larger hole to be calibrated with (chosen) [m]. */
    private static final double LARGEST = 0.05;

    /**
     * The stand as its rows calibrate it; empty where they do not, which is told at the reading that needs it.
     *
     * @param of the reading
     */
    Optional<AirStand> stand(AirReading reading, String of, Place place) {
        if (wrong) {
            return Optional.empty();
        }
        Optional<HolePoint> other = points.stream()
                .filter(point -> point.reading().pressed() != reading.pressed())
                .findFirst();
        if (other.isPresent()) {
            problems.error(
                    place,
                    ProblemCode.STAND_OF_TWO_KINDS,
                    "the sheet has the reading " + reading.written() + " of " + of + " and the stand's reading "
                            + other.get().reading().written() + ", a vacuum and a pressure",
                    "a stand that draws is not calibrated by one that presses",
                    "write 'pressure' behind every reading of a stand that presses air, behind none of one that draws");
            wrong = true;
            return Optional.empty();
        }
        try {
            return Optional.of(AirStand.of(
                    AirReading.ROOM,
                    ROOM,
                    AirOrifice.SHARP_EDGE,
                    points.stream().map(HolePoint::hole).toList()));
        } catch (IllegalArgumentException not) {
            problems.error(
                    points.isEmpty() ? place : points.get(0).place(),
                    ProblemCode.STAND_NOT_CALIBRATED,
                    "the sheet has air readings, but its rows of the " + SheetWriter.STAND
                            + " do not calibrate the stand",
                    not.getMessage(),
                    "fill in at least two rows '" + SheetWriter.STAND
                            + "': what it reads with its port blocked, and through a known hole");
            wrong = true; // told once
            return Optional.empty();
        }
    }
}

package hotidle.circuits.sheet;

import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Fault;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import hotidle.study.AirStand;
import hotidle.study.AirTest;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Bores of which a stand's air or vacuum reading is on the sheet: each becomes the bore that leaks as much, at the eccentricity of its
 * land in the file, which then cancels ({@link hotidle.law.AirLeak}).
 *
 * @param parts of the file
 * @param sizes of every part, by part and key
 * @param stand rows that calibrate it, all read before the first bore is asked for
 */
record AirBores(Problems problems, Value.Entries parts, Map<String, Map<String, SizeAsNew>> sizes, StandRows stand) {

    /** Digits of a bore that follows from a reading: a tenth of a micrometre of 14 mm. */
    private static final MathContext DIGITS = new MathContext(6);

    private static final String GAP = "annular-gap";
    private static final String ECCENTRICITY = "eccentricity";

    private record BoreLand(double length, double eccentricity) {}

    /** The bore of a row; empty where its reading says nothing, which is told. */
    Optional<Measured> of(FilledRow row, SheetRow fit, Optional<Measured> inner) {
        String target = fit.part() + "." + fit.outer();
        Place place = row.place(SheetColumn.AIR);
        Optional<BoreLand> land = land(fit);
        OptionalDouble valve = inner.map(one -> OptionalDouble.of(one.readings().mean()))
                .orElseGet(() -> fit.inner()
                        .map(key -> sizes.get(fit.part()).get(key).asNew())
                        .orElse(OptionalDouble.empty()));
        if (!row.text(SheetColumn.BORE).isEmpty()) {
            problems.error(
                    row.place(SheetColumn.BORE),
                    ProblemCode.AIR_READING_BESIDE_BORE,
                    "the sheet has a measured bore and an air reading for " + target,
                    "one bore has one size",
                    "leave one of the two cells empty");
            return Optional.empty();
        }
        if (land.isEmpty() || valve.isEmpty()) {
            problems.error(
                    place,
                    ProblemCode.AIR_READING_OF_NO_LAND,
                    "the sheet has an air reading for " + target + ", of which no one land is known",
                    "a reading becomes a bore by the valve, the length and the eccentricity of the land that was tested: an annular-gap, or the"
                            + " end lands of a valve where all are alike",
                    "measure this one with a gauge, or ask hotidle air of the land");
            return Optional.empty();
        }
        return AirReading.of(row, target, problems)
                .flatMap(reading -> stand.stand(reading, target, place)
                        .flatMap(calibrated -> bore(row, fit, reading, calibrated, land.get(), valve.getAsDouble())));
    }

    private Optional<Measured> bore(
            FilledRow row, SheetRow fit, AirReading reading, AirStand calibrated, BoreLand land, double valve) {
        String target = fit.part() + "." + fit.outer();
        Place place = row.place(SheetColumn.AIR);
        Optional<AirTest> test = AirTest.of(
                calibrated, reading.absolute(), new AirTest.TestedLand(valve, land.length(), land.eccentricity()));
        if (test.isEmpty()) {
            problems.error(
                    place,
                    ProblemCode.AIR_READING_BEYOND_STAND,
                    "the sheet has the reading " + reading.written() + " of " + target
                            + ", which lies beyond what the stand was calibrated with",
                    "what it reads for more or less air than that is not known",
                    "calibrate with a hole on either side of it; a blocked port is a hole of none");
            return Optional.empty();
        }
        test.get().doubts().forEach(doubt -> problems.warning(place, doubted(doubt, target, reading)));
        String unit = MeasuredCell.unit(row.text(SheetColumn.UNIT))
                .or(() -> MeasuredCell.unit(row.text(SheetColumn.GIVEN_IN)))
                .orElse("mm");
        double bore = valve + 2 * test.get().asInTheFile();
        String number = BigDecimal.valueOf(bore / Units.parse("1 " + unit, Dimension.LENGTH))
                .round(DIGITS)
                .toPlainString();
        return Optional.of(new Measured(
                target,
                fit.outer(),
                MeasuredCell.one(number, unit),
                unit,
                new Readings(List.of(List.of(bore))),
                place,
                false,
                Optional.of(reading.written())));
    }

    private static Fault doubted(AirTest.AirDoubt doubt, String target, AirReading reading) {
        String why =
                switch (doubt) {
                    case SLIPS ->
                        "air slips along the walls of a gap under 10 um, so that the leak comes out too large";
                    case CHOKES ->
                        "the air runs fast at the end of the gap, near choking, so that the leak comes out too small";
                    case TURBULENT -> "the air's flow may be turbulent, so that the leak comes out too small";
                };
        return Fault.of(
                ProblemCode.AIR_READING_DOUBTFUL,
                "the reading " + reading.written() + " of " + target + " says less than it seems to",
                why,
                "measure that bore with a gauge");
    }

    /** The land that a bore's part is, or that all end lands of a valve are; empty where there is none, or they differ. */
    private Optional<BoreLand> land(SheetRow fit) {
        if (!fit.outer().equals("bore")) {
            return Optional.empty();
        }
        List<BoreLand> lands = parts.entries().stream()
                .filter(part -> part.value() instanceof Value.Entries keys
                        && text(keys, "kind").equals(GAP)
                        && (part.key().equals(fit.part())
                                || text(keys, "land-of").equals(fit.part())))
                .flatMap(part -> land((Value.Entries) part.value()).stream())
                .distinct()
                .toList();
        return lands.size() == 1 ? Optional.of(lands.get(0)) : Optional.empty();
    }

    private static Optional<BoreLand> land(Value.Entries keys) {
        Units.Amount length = Units.read(AssumedMark.without(text(keys, "length")), Dimension.LENGTH);
        Units.Amount eccentricity = Units.read(AssumedMark.without(eccentricity(keys)), Dimension.RATIO);
        return length.good() && length.si() > 0 && eccentricity.good()
                ? Optional.of(new BoreLand(length.si(), eccentricity.si()))
                : Optional.empty();
    }

    private static String eccentricity(Value.Entries land) {
        String written = text(land, ECCENTRICITY);
        return written.isEmpty()
                ? Kinds.of(GAP)
                        .flatMap(kind -> kind.shape().key(ECCENTRICITY))
                        .flatMap(Key::fallback)
                        .orElseThrow()
                        .text()
                : written;
    }

    private static String text(Value.Entries keys, String key) {
        return keys.entry(key).map(Value.Entry::value).orElse(null) instanceof Value.Text text ? text.text() : "";
    }
}

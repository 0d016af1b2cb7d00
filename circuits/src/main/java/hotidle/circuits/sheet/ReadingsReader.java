package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.TestPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a filled sheet of gauge readings. Columns are told by their heads and may stand in any order; they are parted by commas,
 * semicolons or tabs; numbers have a point or a comma; a unit stands in its column, or behind the number. Rows without a reading are
 * not taken yet. Past 300 lines, since each way to fill in a cell stands with what is said of it where it is wrong.
 */
public final class ReadingsReader {

    private static final Pattern BOUND = Pattern.compile("(?i)(below|under|<|above|over|>)\\s*(.+)");
    private static final Pattern PLAIN = Pattern.compile("[+-]?\\d+(?:[.,]\\d+)?");

    /** Columns without which a reading says nothing. */
    private static final List<ReadingColumn> NEEDED = List.of(
            ReadingColumn.TAP,
            ReadingColumn.RANGE,
            ReadingColumn.SPEED,
            ReadingColumn.TEMPERATURE,
            ReadingColumn.READING,
            ReadingColumn.ACCURACY);

    /** An accuracy is what a gauge is off by at most: two standard deviations (assumed). */
    private static final double DEVIATIONS = 2;

    private final Transmission unit;
    private final Problems problems;
    private final Map<ReadingColumn, Integer> columns = new EnumMap<>(ReadingColumn.class);
    private final List<GaugeReading> readings = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private ReadingsReader(Transmission unit, Problems problems) {
        this.unit = unit;
        this.problems = problems;
    }

    /** The readings of a sheet, taken on a unit. */
    public static GaugeReadings read(MeasurementSheet sheet, Transmission unit) {
        boolean tooLong = sheet.text().length() > MeasurementSheet.LONGEST;
        Problems problems = new Problems(sheet.fileName(), tooLong ? "" : sheet.text());
        ReadingsReader reader = new ReadingsReader(unit, problems);
        if (tooLong) {
            problems.error(
                    Place.START,
                    ProblemCode.READINGS_TOO_LONG,
                    "the sheet of readings is too long",
                    "at most 1 MB",
                    "");
        } else {
            Cells.each(sheet.text(), 0, problems, reader::row);
        }
        if (!problems.anyError() && reader.readings.isEmpty()) {
            problems.error(
                    Place.START,
                    ProblemCode.NO_READINGS,
                    "the sheet has no reading",
                    "a row counts once its column 'reading' is filled in",
                    "write one with hotidle sheet CIRCUIT --readings --out FILE.csv, and fill in what the gauges show");
        }
        return new GaugeReadings(reader.readings, reader.notes, problems.inOrder());
    }

    private void row(CSVRecord row, Cells cells) {
        if (row.stream().allMatch(String::isBlank)) {
            return;
        }
        if (columns.isEmpty()) {
            head(row, cells);
        } else if (!text(row, ReadingColumn.READING).isEmpty() && !tooLong(row, cells)) {
            int before = problems.count();
            reading(row, cells).filter(read -> problems.count() == before).ifPresent(read -> {
                readings.add(read);
                notes.add(text(row, ReadingColumn.NOTE));
            });
        }
    }

    private boolean tooLong(CSVRecord row, Cells cells) {
        int most = columns.values().stream().mapToInt(Integer::intValue).max().orElse(0) + 1;
        if (row.size() > most && row.stream().skip(most).anyMatch(cell -> !cell.isBlank())) {
            problems.error(
                    cells.place(most),
                    ProblemCode.READINGS_TOO_MANY_CELLS,
                    "this row has more cells than the sheet has columns",
                    "",
                    "put numbers with a decimal comma in quotes, or part the columns with semicolons");
            return true;
        }
        return false;
    }

    private void head(CSVRecord row, Cells cells) {
        for (int i = 0; i < row.size(); i++) {
            String title = row.get(i);
            int at = i;
            ReadingColumn.of(title)
                    .ifPresentOrElse(column -> columns.put(column, at), () -> unknownColumn(title, cells.place(at)));
        }
        NEEDED.stream()
                .filter(column -> !columns.containsKey(column))
                .forEach(column -> problems.error(
                        cells.place(0),
                        ProblemCode.READINGS_WITHOUT_COLUMN,
                        "the sheet of readings has no column '" + column.title() + "'",
                        "its first line names the columns",
                        "write a new sheet with hotidle sheet CIRCUIT --readings, and fill that in"));
        columns.putIfAbsent(ReadingColumn.READING, Integer.MAX_VALUE);
    }

    private void unknownColumn(String title, Place place) {
        if (!title.isBlank()) {
            problems.error(
                    place,
                    ProblemCode.READINGS_UNKNOWN_COLUMN,
                    "the sheet of readings has the unknown column '" + title + "'",
                    "",
                    Nearest.mend(title, ReadingColumn.titles()));
        }
    }

    private String text(CSVRecord row, ReadingColumn column) {
        int index = columns.getOrDefault(column, Integer.MAX_VALUE);
        String cell = index < row.size() ? row.get(index).strip() : "";
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }

    private Place place(Cells cells, ReadingColumn column) {
        return cells.place(columns.getOrDefault(column, 0));
    }

    private Optional<GaugeReading> reading(CSVRecord row, Cells cells) {
        String name = text(row, ReadingColumn.TAP);
        Optional<Meter> meter = Meter.of(unit, name);
        if (meter.isEmpty()) {
            problems.error(
                    place(cells, ReadingColumn.TAP),
                    ProblemCode.NO_SUCH_TAP,
                    name.isEmpty() ? "this reading names no tap" : "there is no tap '" + name + "'",
                    "pressures are read at the taps of the circuit, flows through cooler, passages and lubrication branches",
                    Nearest.mend(name, Meter.of(unit).stream().map(Meter::name).toList()));
            return Optional.empty();
        }
        Optional<TestPoint> at = point(row, cells);
        Matcher bound = BOUND.matcher(text(row, ReadingColumn.READING));
        boolean bounded = bound.matches();
        GaugeReading.Sense sense = !bounded
                ? GaugeReading.Sense.EXACT
                : "below,under,<".contains(bound.group(1).toLowerCase(java.util.Locale.ROOT))
                        ? GaugeReading.Sense.BELOW
                        : GaugeReading.Sense.ABOVE;
        boolean pressure = meter.get().reads() == Meter.Reads.PRESSURE;
        Dimension dimension = pressure ? Dimension.PRESSURE : Dimension.FLOW;
        String own = text(row, ReadingColumn.UNIT);
        OptionalDouble value = quantity(
                bounded ? bound.group(2) : text(row, ReadingColumn.READING),
                own,
                dimension,
                cells,
                ReadingColumn.READING);
        if (at.isEmpty() || value.isEmpty()) {
            return Optional.empty();
        }
        ReadingLimits.of(pressure).check(value.getAsDouble(), place(cells, ReadingColumn.READING), problems);
        OptionalDouble deviation = deviation(row, cells, value.getAsDouble(), own, dimension);
        return deviation.isPresent()
                ? Optional.of(new GaugeReading(
                        meter.get(), at.get(), sense, value.getAsDouble(), deviation.getAsDouble() / DEVIATIONS))
                : Optional.empty();
    }

    private Optional<TestPoint> point(CSVRecord row, Cells cells) {
        String range = text(row, ReadingColumn.RANGE);
        if (unit.range(range).isEmpty()) {
            problems.error(
                    place(cells, ReadingColumn.RANGE),
                    ProblemCode.NO_SUCH_RANGE,
                    range.isEmpty() ? "this reading names no range" : "there is no range '" + range + "'",
                    "",
                    Nearest.mend(range, unit.ranges().stream().map(Range::name).toList()));
            return Optional.empty();
        }
        String pressureUnit = text(row, ReadingColumn.UNIT);
        boolean known = Units.read("1 " + pressureUnit, Dimension.PRESSURE).good();
        OptionalDouble speed = needed(row, cells, ReadingColumn.SPEED, "rpm", Dimension.SPEED, ReadingLimits.SPEED);
        OptionalDouble temperature = needed(
                row,
                cells,
                ReadingColumn.TEMPERATURE,
                text(row, ReadingColumn.TEMPERATURE_UNIT),
                Dimension.TEMPERATURE,
                ReadingLimits.TEMPERATURE);
        OptionalDouble commanded = optional(
                row,
                cells,
                ReadingColumn.COMMANDED,
                known ? pressureUnit : "",
                Dimension.PRESSURE,
                ReadingLimits.PRESSURE);
        OptionalDouble torque = optional(row, cells, ReadingColumn.TORQUE, "", Dimension.TORQUE, ReadingLimits.TORQUE);
        if (commanded.isPresent() && torque.isPresent()) {
            problems.error(
                    place(cells, ReadingColumn.TORQUE),
                    ProblemCode.COMMANDED_TWICE,
                    "this reading has both a commanded pressure and an engine torque",
                    "the torque stands for the pressure that is commanded for it",
                    "leave one of the two empty");
        }
        return speed.isPresent() && temperature.isPresent()
                ? Optional.of(new TestPoint(speed.getAsDouble(), temperature.getAsDouble(), range, commanded, torque))
                : Optional.empty();
    }

    private OptionalDouble needed(
            CSVRecord row,
            Cells cells,
            ReadingColumn column,
            String unitOf,
            Dimension dimension,
            ReadingLimits limits) {
        if (text(row, column).isEmpty()) {
            problems.error(
                    place(cells, column),
                    ProblemCode.READ_AT_NOTHING,
                    "this reading has no " + column.title(),
                    "what a gauge should show depends on it",
                    "fill it in, or leave the reading empty");
            return OptionalDouble.empty();
        }
        return optional(row, cells, column, unitOf, dimension, limits);
    }

    private OptionalDouble optional(
            CSVRecord row,
            Cells cells,
            ReadingColumn column,
            String unitOf,
            Dimension dimension,
            ReadingLimits limits) {
        String cell = text(row, column);
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble value = quantity(cell, unitOf, dimension, cells, column);
        value.ifPresent(si -> limits.check(si, place(cells, column), problems));
        return value;
    }

    /** Half the band that the gauge's accuracy leaves, in the unit of the reading [SI]. */
    private OptionalDouble deviation(CSVRecord row, Cells cells, double value, String unitOf, Dimension dimension) {
        String accuracy = text(row, ReadingColumn.ACCURACY).replace(',', '.');
        String scale = text(row, ReadingColumn.FULL_SCALE);
        OptionalDouble whole = scale.isEmpty()
                ? OptionalDouble.of(value)
                : quantity(scale, unitOf, dimension, cells, ReadingColumn.FULL_SCALE);
        Units.Amount share = Units.read(accuracy, Dimension.RATIO);
        boolean isShare = accuracy.endsWith("%") && share.good();
        double off = isShare
                ? share.si() * Math.abs(whole.orElse(0))
                : accuracy.isEmpty() ? 0 : difference(accuracy, unitOf, dimension);
        if (whole.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (!(off > 0)) {
            problems.error(
                    place(cells, ReadingColumn.ACCURACY),
                    ProblemCode.READING_WITHOUT_ACCURACY,
                    accuracy.isEmpty()
                            ? "this reading has no gauge accuracy"
                            : "'" + accuracy + "' is no accuracy of this reading",
                    "how far a gauge may be off decides what its reading tells",
                    "write 2 % with the gauge's full scale beside it, 2 % alone for that of the reading, or 3 psi");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(off);
    }

    private static double difference(String text, String unitOf, Dimension dimension) {
        Units.Amount amount = Units.read(PLAIN.matcher(text).matches() ? text + " " + unitOf : text, dimension);
        return amount.good() ? amount.si() : 0;
    }

    private OptionalDouble quantity(
            String cell, String unitOf, Dimension dimension, Cells cells, ReadingColumn column) {
        String number = cell.matches("[+-]?\\d+,\\d+.*") ? cell.replaceFirst(",", ".") : cell;
        Units.Amount amount = Units.read(PLAIN.matcher(number).matches() ? number + " " + unitOf : number, dimension);
        if (!amount.good()) {
            problems.error(
                    place(cells, column),
                    ProblemCode.READING_IS_NO_QUANTITY,
                    column.title() + " '" + cell + "', " + amount.wrong(),
                    amount.why(),
                    "write a number with its unit: " + String.join(", ", Units.of(dimension)));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(amount.si());
    }
}

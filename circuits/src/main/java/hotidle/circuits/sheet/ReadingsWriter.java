package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.study.gauge.AcceptanceSheet;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.TestPoint;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes a sheet of gauge readings to fill in: taps, ranges, speeds and temperatures filled in, readings empty. */
public final class ReadingsWriter {

    /**
     * In which units a sheet is written.
     *
     * @param pressure    word of a unit
     * @param flow        word of a unit
     * @param temperature word of a unit
     * @param torque      word of a unit
     */
    public record SheetUnits(String pressure, String flow, String temperature, String torque) {
        public static final SheetUnits SHOP = new SheetUnits("psi", "gpm", "degF", "lbf.ft");
        public static final SheetUnits METRIC = new SheetUnits("bar", "L/min", "degC", "N.m");
    }

    private static final double MINUTE = 60;

    private ReadingsWriter() {}

    /**
     * The sheet, with a byte order mark, so that every spreadsheet takes it for UTF-8.
     *
     * @param sheet    what to read
     * @param ports    where each tap is, by its name
     * @param units    in which it is written
     * @param expected whether to write beside each reading what a sound unit reads
     */
    public static String write(AcceptanceSheet sheet, Map<String, String> ports, SheetUnits units, boolean expected) {
        StringBuilder text = new StringBuilder("\uFEFF");
        CSVFormat format = CSVFormat.RFC4180.builder().get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            printer.printRecord(columns(expected).map(ReadingColumn::title).toList());
            for (AcceptanceSheet.Line line : sheet.lines()) {
                Map<ReadingColumn, String> cells = cells(line, ports, units, expected);
                printer.printRecord(columns(expected)
                        .map(column -> SheetWriter.safe(cells.getOrDefault(column, "")))
                        .toList());
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static Stream<ReadingColumn> columns(boolean expected) {
        List<ReadingColumn> own = List.of(ReadingColumn.EXPECTED, ReadingColumn.EXPECTED_TO);
        return Stream.of(ReadingColumn.values()).filter(column -> expected || !own.contains(column));
    }

    private static Map<ReadingColumn, String> cells(
            AcceptanceSheet.Line line, Map<String, String> ports, SheetUnits units, boolean expected) {
        Map<ReadingColumn, String> cells = new EnumMap<>(ReadingColumn.class);
        Meter meter = line.meter();
        TestPoint at = line.at();
        boolean pressure = meter.reads() == Meter.Reads.PRESSURE;
        String unit = pressure ? units.pressure() : units.flow();
        Dimension dimension = pressure ? Dimension.PRESSURE : Dimension.FLOW;
        cells.put(ReadingColumn.TAP, meter.name());
        cells.put(ReadingColumn.WHERE, ports.getOrDefault(meter.name(), pressure ? "" : "flow in the open line"));
        cells.put(ReadingColumn.RANGE, at.range());
        cells.put(ReadingColumn.SPEED, String.format(Locale.ROOT, "%.0f", at.speed() * MINUTE));
        cells.put(
                ReadingColumn.TEMPERATURE,
                String.format(Locale.ROOT, "%.0f", in(at.temperature(), units.temperature(), Dimension.TEMPERATURE)));
        cells.put(ReadingColumn.TEMPERATURE_UNIT, units.temperature());
        at.torque()
                .ifPresent(torque -> cells.put(
                        ReadingColumn.TORQUE,
                        String.format(Locale.ROOT, "%.0f ", in(torque, units.torque(), Dimension.TORQUE))
                                + units.torque()));
        cells.put(ReadingColumn.UNIT, unit);
        if (expected) {
            double low = in(Math.max(line.low(), 0), unit, dimension);
            double high = in(line.high(), unit, dimension);
            int own = unit.equals("psi") ? 0 : 2;
            int decimals = number(low, own).equals(number(high, own)) ? own + 1 : own;
            cells.put(ReadingColumn.EXPECTED, number(low, decimals));
            cells.put(ReadingColumn.EXPECTED_TO, number(high, decimals));
        }
        return cells;
    }

    /** An SI value in a unit. */
    private static double in(double si, String unit, Dimension dimension) {
        double zero = Units.parse("0 " + unit, dimension);
        double one = Units.parse("1 " + unit, dimension) - zero;
        return (si - zero) / one;
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}

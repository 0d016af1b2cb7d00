package hotidle.circuits.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes the sheet of a circuit to fill in: a row for each fit, with its new size and wear limit. */
public final class SheetWriter {

    /** How new sizes and limits are written. */
    public enum LengthUnit {
        MM("mm", "1000", 4),
        INCH("in", "39.370078740157480315", 5);

        /** As many as are read. */
        private static final int MOST_DECIMALS = 9;

        private final String word;
        private final BigDecimal perMetre;
        private final int decimals;

        LengthUnit(String word, String perMetre, int decimals) {
            this.word = word;
            this.perMetre = new BigDecimal(perMetre);
            this.decimals = decimals;
        }

        private String write(double metres) {
            return write(metres, decimals);
        }

        /** With more digits than any gauge shows, so that what is read back is what was written. */
        private String writeAll(double metres) {
            return write(metres, MOST_DECIMALS);
        }

        private String write(double metres, int places) {
            BigDecimal value = BigDecimal.valueOf(metres).multiply(perMetre).setScale(places, RoundingMode.HALF_EVEN);
            return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
        }
    }

    /**
     * A size that wears [m].
     *
     * @param part  the part
     * @param key   path of its key
     * @param fresh new
     * @param limit wear limit, where one is written
     * @param how   where and with what it is measured; may be empty
     * @param alike equal bores, gaps or rings that it stands for
     */
    public record SheetSize(String part, String key, double fresh, OptionalDouble limit, String how, int alike) {}

    /** In place of a part in the rows that calibrate a stand for air tests. */
    public static final String STAND = "air-stand";

    private static final String HOLE =
            "what it reads through a known sharp-edged hole, whose diameter is the measured bore";

    /** Signs with which a spreadsheet would take a cell for a formula. */
    private static final String FORMULA = "=+-@\t\r";

    private SheetWriter() {}

    /**
     * The sheet, with a byte order mark, so that every spreadsheet takes it for UTF-8.
     *
     * @param sizes all sizes that wear, in the order of the file
     * @param about what each part is
     * @param unit  in which new sizes and limits are written
     */
    public static String write(List<SheetSize> sizes, Map<String, String> about, LengthUnit unit) {
        return write(sizes, about, unit, Map.of());
    }

    /**
     * The same, some of it filled in.
     *
     * @param measured sizes by part and key [m]
     */
    public static String write(
            List<SheetSize> sizes, Map<String, String> about, LengthUnit unit, Map<String, Double> measured) {
        StringBuilder text = new StringBuilder("\uFEFF");
        CSVFormat format = CSVFormat.RFC4180.builder().get();
        try (CSVPrinter printer = new CSVPrinter(text, format)) {
            printer.printRecord(SheetColumn.titles());
            for (SheetRow fit : fits(sizes)) {
                printer.printRecord(row(sizes, fit, about.getOrDefault(fit.part(), ""), unit, measured));
            }
            if (fits(sizes).stream().anyMatch(SheetRow::isBore)) {
                printer.printRecord(
                        stand(StandRows.BLOCKED, "what an air or vacuum test reads with its port blocked", unit));
                printer.printRecord(stand(StandRows.HOLE, HOLE, unit));
                printer.printRecord(stand(StandRows.HOLE, HOLE, unit));
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    /** A row that calibrates the stand of air readings. */
    private static List<String> stand(String size, String what, LengthUnit unit) {
        Map<SheetColumn, String> cells = new EnumMap<>(SheetColumn.class);
        cells.put(SheetColumn.PART, STAND);
        cells.put(SheetColumn.SIZE, size);
        cells.put(SheetColumn.WHAT, what);
        cells.put(SheetColumn.GIVEN_IN, unit.word);
        return row(cells);
    }

    private static Set<SheetRow> fits(List<SheetSize> sizes) {
        Set<SheetRow> fits = new LinkedHashSet<>();
        for (SheetSize size : sizes) {
            List<String> keys = sizes.stream()
                    .filter(other -> other.part().equals(size.part()))
                    .map(SheetSize::key)
                    .toList();
            fits.add(SheetRow.of(size.part(), size.key(), keys));
        }
        return fits;
    }

    private static List<String> row(
            List<SheetSize> sizes, SheetRow fit, String about, LengthUnit unit, Map<String, Double> measured) {
        Map<SheetColumn, String> cells = new EnumMap<>(SheetColumn.class);
        cells.put(SheetColumn.PART, fit.part());
        cells.put(SheetColumn.SIZE, fit.outer());
        cells.put(SheetColumn.WHAT, about);
        cells.put(SheetColumn.GIVEN_IN, unit.word);
        SheetSize outer = size(sizes, fit.part(), fit.outer());
        cells.put(SheetColumn.HOW, how(sizes, fit, outer));
        cells.put(fit.isBore() ? SheetColumn.NEW_BORE : SheetColumn.NEW_GAP, unit.write(outer.fresh()));
        cells.put(fit.isBore() ? SheetColumn.BORE_LIMIT : SheetColumn.GAP_LIMIT, limit(outer.limit(), unit));
        filled(
                cells,
                fit.isBore() ? SheetColumn.BORE : SheetColumn.GAP,
                fit.part() + "." + fit.outer(),
                measured,
                unit);
        fit.inner().ifPresent(inner -> {
            filled(cells, SheetColumn.VALVE, fit.part() + "." + inner, measured, unit);
            SheetSize size = size(sizes, fit.part(), inner);
            cells.put(SheetColumn.NEW_VALVE, unit.write(size.fresh()));
            cells.put(SheetColumn.VALVE_LIMIT, limit(size.limit(), unit));
        });
        return row(cells);
    }

    private static List<String> row(Map<SheetColumn, String> cells) {
        List<String> row = new ArrayList<>();
        Stream.of(SheetColumn.values()).forEach(column -> row.add(safe(cells.getOrDefault(column, ""))));
        return row;
    }

    private static void filled(
            Map<SheetColumn, String> cells,
            SheetColumn column,
            String name,
            Map<String, Double> measured,
            LengthUnit unit) {
        if (measured.containsKey(name)) {
            cells.put(column, unit.writeAll(measured.get(name)));
            cells.put(SheetColumn.UNIT, unit.word);
        }
    }

    /** Of a bore and what runs in it both, each by its name. */
    private static String how(List<SheetSize> sizes, SheetRow fit, SheetSize outer) {
        String how = fit.inner()
                .map(inner -> size(sizes, fit.part(), inner))
                .filter(inner -> !inner.how().isEmpty())
                .map(inner -> name(outer) + ": " + outer.how() + "; " + name(inner) + ": " + inner.how())
                .orElse(outer.how());
        return HowMeasured.ofEach(how, outer.alike());
    }

    private static String name(SheetSize size) {
        return size.key().substring(size.key().lastIndexOf('.') + 1);
    }

    private static String limit(OptionalDouble limit, LengthUnit unit) {
        return limit.isPresent() ? unit.write(limit.getAsDouble()) : "";
    }

    private static SheetSize size(List<SheetSize> sizes, String part, String key) {
        return sizes.stream()
                .filter(size -> size.part().equals(part) && size.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /** A text that no spreadsheet takes for a formula. */
    static String safe(String cell) {
        return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
    }
}

package hotidle.circuits.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The columns of a measurement sheet, in the order in which they are written. */
enum SheetColumn {
    PART("part"),
    SIZE("size"),
    WHAT("what it is"),
    HOW("where to measure"),
    NEW_BORE("new bore"),
    BORE_LIMIT("bore limit"),
    NEW_VALVE("new valve"),
    VALVE_LIMIT("valve limit"),
    NEW_GAP("new gap"),
    GAP_LIMIT("gap limit"),
    GIVEN_IN("given in"),
    BORE("measured bore"),
    VALVE("measured valve"),
    GAP("measured gap or flatness"),
    AIR("air or vacuum reading"),
    UNIT("unit"),
    GAUGE("gauge used"),
    BY("measured by"),
    NOTE("note");

    private final String title;

    SheetColumn(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    static List<String> titles() {
        return Stream.of(values()).map(SheetColumn::title).toList();
    }

    /** Those in which something is measured. */
    static List<SheetColumn> measured() {
        return List.of(BORE, VALVE, GAP, AIR);
    }

    /** The column of a title, whatever its case. */
    static Optional<SheetColumn> of(String title) {
        String plain = title.strip().toLowerCase(Locale.ROOT);
        return Stream.of(values()).filter(column -> column.title.equals(plain)).findFirst();
    }
}

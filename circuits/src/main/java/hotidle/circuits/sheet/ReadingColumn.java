package hotidle.circuits.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The columns of a sheet of gauge readings, in the order in which they are written. */
enum ReadingColumn {
    TAP("tap"),
    WHERE("where"),
    RANGE("range"),
    SPEED("engine speed"),
    TEMPERATURE("oil temperature"),
    TEMPERATURE_UNIT("temperature unit"),
    COMMANDED("commanded pressure"),
    TORQUE("engine torque"),
    READING("reading"),
    UNIT("unit"),
    ACCURACY("gauge accuracy"),
    FULL_SCALE("gauge full scale"),
    NOTE("note"),
    EXPECTED("sound from"),
    EXPECTED_TO("sound to");

    private final String title;

    ReadingColumn(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    /** Titles of the columns of a sheet to fill in. */
    static List<String> titles() {
        return Stream.of(values()).map(ReadingColumn::title).toList();
    }

    /** The column of a title, whatever its case. */
    static Optional<ReadingColumn> of(String title) {
        String plain = title.strip().toLowerCase(Locale.ROOT);
        return Stream.of(values()).filter(column -> column.title.equals(plain)).findFirst();
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;

/** What a handout for learners says. Nothing of it names a build, or what is wrong with one; the key does. */
public final class LessonPhrase {

    private LessonPhrase() {}

    /** What a unit is called by its number from 0 on. */
    public static String unit(int number) {
        return "unit " + (char) ('A' + number);
    }

    /** Heading of the handout. */
    public static String question(int units) {
        return units == 1 ? "What is wrong with this unit?" : "What is wrong with each of these " + units + " units?";
    }

    /** Of the document. */
    public static String title(String circuit) {
        return circuit + ": what the gauges tell";
    }

    public static final String TASK = "The task";
    public static final String CIRCUIT = "The circuit and its gauge ports";
    public static final String PRESSURES = "What the gauges read";
    public static final String FINDINGS = "Your findings";
    public static final String KEY = "Key";

    /** What is to be done. */
    public static List<String> task(int units) {
        return List.of(
                (units == 1 ? "One unit" : units + " units")
                        + " of one kind came in. The drawing shows the circuit as it"
                        + " should be, and where gauges can be fitted; charts and table show what they read.",
                "For each unit say what is wrong, which reading tells it, and which measurement would make sure. One of them may"
                        + " have nothing wrong.");
    }

    /** Caption of the drawing. */
    public static String drawing(String circuit, String paper) {
        return circuit + " with its gauge ports (dials); drawn for " + paper + ".";
    }

    /** Title of a chart; it tells nothing that the curves do not. */
    public static String chart(String gauge, Quantity.UnitSystem units, String range, double sump) {
        return "Gauge " + gauge + ": " + range + ", sump " + Quantity.TEMPERATURE.with(units, sump);
    }

    /** Its upright axis. */
    public static String axis(Quantity.UnitSystem units) {
        return "pressure [" + Quantity.PRESSURE.in(units).unit() + "]";
    }

    /** Caption of a chart. */
    public static final String CHART = "Pressure against engine speed";

    /** In place of a pressure. */
    public static final String NOT_KNOWN = "not known";

    /** Where gauges are fitted. */
    public static final String PORTS = "Gauge ports";

    public static final List<String> PORT_HEAD = List.of("gauge", "where", "between it and the oil");

    /** Over the readings. */
    public static String readings(Quantity.UnitSystem units) {
        return "Readings [" + Quantity.PRESSURE.in(units).unit() + "]";
    }

    public static final String GAUGE = "gauge";
    public static final String RPM = "rpm";

    /** Over the empty table. */
    public static final String FILL_IN = "To be filled in";

    public static final List<String> FILL_IN_HEAD =
            List.of("unit", "what you see", "what it could be", "what to measure next");

    /** On the page of the key. */
    public static final String KEY_NOTE = "The key is the last page: hand out without it.";

    public static final String KEY_TABLE = "Which unit is which";

    public static final List<String> KEY_HEAD =
            List.of("unit", "build", "fault laid over it", "what its build is", "holds from");
}

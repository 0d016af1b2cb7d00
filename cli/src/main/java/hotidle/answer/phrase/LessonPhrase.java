package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.OptionalDouble;

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

    /** What stands between a gauge and the oil. */
    public static final String BETWEEN =
            "Through a drilling without flow a gauge shows the pressure at its far end: where nothing flows, nothing is lost. A T-piece is"
                    + " set into a line and shows the pressure of the oil that flows by.";

    /**
     * Over the readings.
     *
     * @param set pressure to which the line of the unit as it should be is set there [Pa]; empty where nothing sets one
     */
    public static String readings(Quantity.UnitSystem units, String range, OptionalDouble set) {
        return "Readings in " + range + " [" + Quantity.PRESSURE.in(units).unit() + "]"
                + (set.isPresent()
                        ? "; as it should be, the line is set to " + Quantity.PRESSURE.with(units, set.getAsDouble())
                        : "");
    }

    public static final String GAUGE = "gauge";
    public static final String RPM = "rpm";

    /** Over the empty table. */
    public static final String FILL_IN = "To be filled in";

    public static final List<String> FILL_IN_HEAD =
            List.of("unit", "what you see", "what it could be", "what to measure next");

    /** On the page of the key. */
    public static final String KEY_NOTE = "The key is the last page: hand out without it.";

    /** On the screen, where the key is closed. */
    public static final String SHOW_KEY = "Show the key";

    public static final String KEY_TABLE = "Which unit is which";

    public static final List<String> KEY_HEAD = List.of(
            "unit", "build", "fault laid over it", "what it is", "what tells it", "what to read next", "holds from");

    /** Of a unit that reads as a sound one. */
    public static final String NOTHING_TELLS = "nothing: it reads as it would without";

    /** A fault with its size. */
    public static String wrong(String named, String size) {
        return size.isEmpty() ? named : named + ", " + size;
    }

    /** A reading that tells a unit. */
    public static String told(
            Quantity.UnitSystem units, String gauge, double speed, String range, double value, double without) {
        return gauge + " at " + Quantity.SPEED.with(units, speed) + " in " + range + ": "
                + Quantity.PRESSURE.with(units, value) + ", without it " + Quantity.PRESSURE.with(units, without);
    }

    /** Ranges that are shown besides the first one, and why. */
    public static String moreRanges(String first, List<String> others) {
        return "hotidle: in " + first + " some of these units read alike; the handout shows "
                + String.join(" and ", others) + " too, to tell them apart";
    }

    /** A fault that no reading of the handout tells. */
    public static String notSeen(String fault) {
        return "hotidle: warning: " + fault
                + " moves no gauge by more than two gauges may be off, so that nobody can find it"
                + "\nmend: give it another size, or leave it out";
    }

    /** Two units that nobody can tell apart. */
    public static String alike(String one, String other, boolean allTried) {
        return "hotidle: warning: " + one + " and " + other + " read alike at every gauge, "
                + (allTried ? "in every range" : "in the ranges shown")
                + ", so that nobody can tell them apart\nmend: give one of them another size, or leave it out";
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
                "For each unit say what is wrong, which reading tells it, and which measurement would make sure.");
    }

    /** Where the units have no faults laid over them, but are builds. */
    public static final String MAYBE_SOUND = "One of them may have nothing wrong.";

    /** How many of the units have one of the faults that are listed; {@code others} have none. */
    public static String someAreFaulty(int faulty, int others) {
        return CountPhrase.of(faulty, "unit") + (faulty == 1 ? " has" : " have") + " one of the faults listed below"
                + (faulty == 1 ? "" : ", each its own")
                + (others == 0
                        ? "."
                        : "; " + CountPhrase.of(others, "unit") + (others == 1 ? " has" : " have") + " none.");
    }

    public static final String CANDIDATES = "What it may be";

    public static final List<String> CANDIDATES_HEAD =
            List.of("part", "what is wrong with it", "what that does to the oil");

    /** In place of a part, where a fault concerns the whole unit. */
    public static final String WHOLE_UNIT = "whole unit";

    /**
     * How the gauges are read, of what the circuit has.
     *
     * @param regulated whether a regulator sets the line; else what else sets it is looked for
     * @param fedLast   whether converter or lubrication are fed behind the line
     * @param clutches  whether a selector feeds any
     */
    public static List<String> howToRead(boolean regulated, boolean fedLast, boolean clutches) {
        String line =
                "How to read it: begin with the line. Off by about the same share at all speeds, look at what sets it"
                        + (regulated ? ": the regulator and its pilot pressure." : ".")
                        + " Low at idle and right from some speed up, look at the pump and at what leaks from the line at all times"
                        + (fedLast
                                ? "; converter and lubrication, which are fed last, then go first, and may be gone at idle while the line"
                                        + " still holds."
                                : ".");
        String right = "With the line right and "
                + (clutches
                        ? "one clutch low, look between the selector and that clutch's piston."
                        : "another gauge off, look at what lies between the two.")
                + (fedLast
                        ? " With the line right and converter or lubrication off at all speeds, look at their own valves, orifices"
                                + " and cooler."
                        : "");
        return List.of(line, right);
    }

    /** Where all units read the same, and what [Pa]. */
    public static String alikeAt(String range, List<String> gauges) {
        return "In " + range + " all units read alike, within what can be told off a chart, at "
                + String.join(", ", gauges) + ": not drawn.";
    }

    /** A gauge that reads as another does in each unit. */
    public static String sameAs(String range, String gauge, String other) {
        return "In " + range + " gauge " + gauge + " reads as gauge " + other + " does in each unit: not drawn.";
    }

    /** A gauge with the least and the most that it reads, as numbers and once with the unit. */
    public static String between(String gauge, String low, String high, String unit) {
        return gauge + " (" + (low.equals(high) ? low : low + " to " + high) + " " + unit + ")";
    }

    /** Heading of a reading in the table to be filled in. */
    public static String readAt(Quantity.UnitSystem units, String gauge, String range, double speed) {
        return gauge + ", " + range + ", " + Quantity.SPEED.with(units, speed) + " ["
                + Quantity.PRESSURE.in(units).unit() + "]";
    }

    /**
     * Caption of the drawing.
     *
     * @param paper as {@link ReportPhrase#paper} says it; may be empty
     */
    public static String drawing(String circuit, String paper) {
        return circuit + " with its gauge ports (dials)" + paper + ".";
    }

    /** Title of a chart; it tells nothing that the curves do not. */
    public static String chart(String gauge, Quantity.UnitSystem units, String range, double sump) {
        return "Gauge " + gauge + ": " + range + ", sump " + Quantity.TEMPERATURE.with(units, sump);
    }

    /** Its upright axis. */
    public static String axis(Quantity.UnitSystem units) {
        return "pressure [" + Quantity.PRESSURE.in(units).unit() + "]";
    }

    /** The same of an axis that does not begin at zero, but at a number of that unit. */
    public static String axisFrom(Quantity.UnitSystem units, double low) {
        return axis(units) + ", from "
                + new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT)).format(low);
    }

    /** Caption of a chart. */
    public static final String CHART = "Pressure against engine speed";

    /** Of one that leaves out speeds. */
    public static final String CHART_CUT = "Pressure against engine speed; above, the units hardly differ";

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

    /** Over the readings of each unit. */
    public static final String READINGS = "What the gauges read";

    /** Over the empty table. */
    public static final String FILL_IN = "To be filled in";

    public static final String UNIT = "unit";

    /** Columns to write in, behind the unit. */
    public static final List<String> TO_WRITE =
            List.of("what I think it is", "what tells me", "what I would measure next");

    /** On the page of the key. */
    public static final String KEY_NOTE = "The key is the last page: hand out without it.";

    /** On the screen, where the key is closed. */
    public static final String SHOW_KEY = "Show the key";

    public static final String KEY_TABLE = "Which unit is which";

    public static final List<String> KEY_HEAD =
            List.of("unit", "build", "fault laid over it", "what it is", "what tells it", "what to read next");

    /** One more, where a line is commanded that can be held. */
    public static final String HOLDS_FROM = "holds from";

    /** Of a unit that reads as a sound one. */
    public static final String NOTHING_TELLS = "nothing: it reads as it would without";

    /** Where the gauges of the handout tell all. */
    public static final String ALL_TOLD =
            "The gauges of this sheet tell each unit from every other, and from every fault listed.";

    /** The same where it names none. */
    public static final String UNITS_TOLD = "The gauges of this sheet tell each unit from every other.";

    /**
     * A unit that reads as other faults than its own can.
     *
     * @param measured what tells them apart, by {@link FaultMeasurePhrase}
     */
    public static String readsAs(String unit, List<String> faults, List<String> measured) {
        return cannot(unit + " reads as " + String.join(" or ", faults) + " can") + told(measured);
    }

    /** Two units that read alike; what is measured is none where they differ in no size. */
    public static String twoAlike(String one, String other, List<String> measured) {
        return cannot(one + " and " + other + " read alike")
                + (measured.isEmpty() ? " They differ in no size that is measured." : told(measured));
    }

    private static String cannot(String said) {
        return said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1)
                + ": no gauge of this sheet tells them apart, and either answer is right.";
    }

    private static String told(List<String> measured) {
        int shown = Math.min(MOST_MEASURED, measured.size());
        return " To make sure, measure " + String.join("; ", measured.subList(0, shown))
                + (shown < measured.size() ? "; and " + (measured.size() - shown) + " more" : "") + ".";
    }

    /** Of many sizes the first are named (chosen). */
    private static final int MOST_MEASURED = 4;

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

    /**
     * A fault that no reading of the handout tells.
     *
     * @param allTried whether it was looked for in every range
     * @param larger   the same with a size at which it shows, as it is written; empty where it shows at none
     * @param visible  faults of the handout that do show
     */
    public static String notSeen(String fault, boolean allTried, Optional<String> larger, List<String> visible) {
        return "hotidle: --fault " + fault + ": no gauge shows it, "
                + (allTried ? "in any range" : "in the ranges shown")
                + " at any speed, so that nobody could find it"
                + (visible.isEmpty() ? "" : "; gauges show " + String.join(", ", visible))
                + "\nmend: leave it out"
                + larger.map(more -> ", or write " + more + ", which shows")
                        .orElse(": no size of it that was tried shows");
    }

    /** Two units that nobody can tell apart. */
    public static String alike(String one, String other, boolean allTried) {
        return "hotidle: warning: " + one + " and " + other + " read alike at every gauge, "
                + (allTried ? "in every range" : "in the ranges shown")
                + ", so that nobody can tell them apart\nmend: give one of them another size, or leave it out";
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;

/** A build at a duty point and the line pressure that it has there, in one line. */
public final class DutyLinePhrase {

    private DutyLinePhrase() {}

    /**
     * Where nothing is commanded.
     *
     * @param speed engine speed [rev/s]
     * @param sump  temperature [K]
     * @param line  pressure, in words
     */
    public static String uncommanded(
            String build,
            String duty,
            double speed,
            String range,
            double sump,
            String line,
            Quantity.UnitSystem units) {
        return begun(build, duty, speed, range, sump, line, units) + ".";
    }

    /**
     * Where a set pressure is commanded.
     *
     * @param speed engine speed [rev/s]
     * @param sump  temperature [K]
     * @param line  pressure, in words
     * @param set   set pressure [Pa]
     * @param held  whether the regulator holds it
     */
    public static String commanded(
            String build,
            String duty,
            double speed,
            String range,
            double sump,
            String line,
            double set,
            boolean held,
            Quantity.UnitSystem units) {
        return begun(build, duty, speed, range, sump, line, units) + " of the " + Quantity.PRESSURE.with(units, set)
                + " commanded" + (held ? ", regulated" : ", NOT HELD") + ".";
    }

    private static String begun(
            String build,
            String duty,
            double speed,
            String range,
            double sump,
            String line,
            Quantity.UnitSystem units) {
        return build + " at " + duty + ": " + Quantity.SPEED.with(units, speed) + ", " + range + ", sump "
                + Quantity.TEMPERATURE.with(units, sump) + ", line " + line;
    }
}

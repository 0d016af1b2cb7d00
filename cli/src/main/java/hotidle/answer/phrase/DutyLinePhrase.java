package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.Figures;

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
     * @param does  what the regulator does
     * @param low   whether the line stands below the set pressure
     */
    public static String commanded(
            String build,
            String duty,
            double speed,
            String range,
            double sump,
            String line,
            double set,
            Figures.Regulator does,
            boolean low,
            Quantity.UnitSystem units) {
        return begun(build, duty, speed, range, sump, line, units) + " of the " + Quantity.PRESSURE.with(units, set)
                + " commanded" + (low ? ", NOT HELD" : "") + regulator(does, low) + ".";
    }

    private static String regulator(Figures.Regulator does, boolean low) {
        return switch (does) {
            case STUCK -> ", regulator STUCK";
            case RELIEF_OPEN -> ", relief valve open";
            case FAR_ABOVE -> ", FAR ABOVE it";
            case REGULATING -> ", regulated";
            case ON_ITS_SEAT, OFF_ITS_SEAT_BUT_LOW, NOT_COMMANDED -> low ? "" : ", NOT HELD";
        };
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

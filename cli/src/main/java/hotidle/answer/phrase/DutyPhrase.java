package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What a duty point asks of the unit, over a table. */
public final class DutyPhrase {

    /** In place of the lockup's state where builds differ in it; a line of the table says it. */
    public static final String LOCKUP_AS_BUILT = "as the build has it";

    /** In place of the engine's torque where builds differ in it, such as the torque of each [N·m]. */
    public static String torques(Quantity.UnitSystem units, Map<String, Double> builds) {
        return builds.entrySet().stream()
                .map(build -> Quantity.TORQUE.with(units, build.getValue()) + " in " + build.getKey())
                .collect(Collectors.joining(", "));
    }

    private DutyPhrase() {}

    /**
     * Where nothing is commanded.
     *
     * @param speed [rev/s]
     * @param sump  temperature [K]
     */
    public static String uncommanded(Quantity.UnitSystem units, String name, double speed, String range, double sump) {
        return name + ": " + Quantity.SPEED.with(units, speed) + ", " + range + ", sump "
                + Quantity.TEMPERATURE.with(units, sump);
    }

    /**
     * Where line pressure is commanded.
     *
     * @param speed  [rev/s]
     * @param sump   temperature [K]
     * @param torque of the engine, in words
     */
    public static String commanded(
            Quantity.UnitSystem units,
            String name,
            double speed,
            String range,
            String lockup,
            double sump,
            String torque) {
        return name + ": " + Quantity.SPEED.with(units, speed) + ", " + range + ", lockup " + lockup + ", sump "
                + Quantity.TEMPERATURE.with(units, sump) + ", engine torque " + torque;
    }

    /** Behind either: line pressure, and what is commanded where anything is [Pa]. */
    public static String line(Quantity.UnitSystem units, double line, OptionalDouble set) {
        return ", line " + Quantity.PRESSURE.with(units, line)
                + (set.isPresent() ? " of the " + Quantity.PRESSURE.with(units, set.getAsDouble()) + " commanded" : "");
    }

    /** In front of it the build, where there are several. */
    public static String ofBuild(String build, String duty) {
        return build + ", " + duty;
    }
}

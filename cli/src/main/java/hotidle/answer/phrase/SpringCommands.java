package hotidle.answer.phrase;

import hotidle.transmission.SetPressure;

/** Commands that go on where {@code spring} ends, such as they run; set pressures in [Pa], told in psi as the options take them. */
public final class SpringCommands {

    /** The set pressures that window tries where none are given, and their step [psi]. */
    private static final long LOWEST = 60;

    private static final long HIGHEST = 400;
    private static final long STEP = 20;

    private SpringCommands() {}

    /**
     * Whether every limit holds with another spring.
     *
     * @param circuit with its sheet
     * @param least   that a spring gives
     * @param wanted  that is asked for
     */
    public static String window(String circuit, String build, double least, double wanted) {
        long low = Math.max(LOWEST, STEP * (long) Math.ceil(least / SetPressure.PSI / STEP));
        long high = Math.max(HIGHEST, STEP * (long) Math.ceil(wanted / SetPressure.PSI / STEP));
        String tried = low == LOWEST && high == HIGHEST ? "" : " --try " + low + ".." + high + "/" + STEP + "psi";
        return "hotidle window " + circuit + " --build " + build + " --set-by spring" + tried;
    }

    /** Which jobs are needed first. */
    public static String leaks(String circuit, String build, double wanted) {
        return "hotidle leaks " + circuit + " --build " + build + " --by job --set "
                + Math.round(wanted / SetPressure.PSI) + "psi";
    }
}

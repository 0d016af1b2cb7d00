package hotidle.answer.phrase;

/** The oil leak of a land by its vacuum or air test. */
public final class AirPhrase {

    /** Beyond what was calibrated. */
    public static final String BEYOND =
            "A dash: the reading lies beyond what the stand was calibrated with, so that nothing is known; calibrate with a hole on"
                    + " either side of it (a blocked port is a hole of none).";

    /** In a narrow gap. */
    public static final String SLIPS =
            "Gap under 10 um: air slips along its walls, so that the leak told is too large, by 4 to 10 % at 10 um and more below.";

    /** In a wide gap. */
    public static final String CHOKES =
            "The air runs fast at the end of the gap, near choking: the gap passes less air than a slow flow would, so that the leak told is"
                    + " too small.";

    /** In a very wide gap. */
    public static final String TURBULENT =
            "The air's flow may be turbulent: the leak told is too small. Measure such a gap with a gauge.";

    /** With the least that can be calibrated. */
    public static final String TWO_POINTS =
            "Straight between two calibration points, which no pump's curve is: a third hole near the reading is worth its time.";

    /** What was taken for granted. */
    public static final String ASSUMED =
            "Holes are clean and square, coefficient 0.72 (assumed). The land is dry and clean, alone on the port, its valve where it works:"
                    + " oil left in it or a side load in service change what it leaks.";

    private AirPhrase() {}

    /**
     * What was asked.
     *
     * @param viscosity of the oil [mPa·s]
     * @param holes     that calibrated the stand
     */
    public static String asked(String land, String circuit, String drop, String viscosity, String duty, int holes) {
        return land + " of " + circuit + ", tested with air on a stand that "
                + CountPhrase.of(holes, "hole") + " calibrated; oil leak under " + drop + " at " + viscosity
                + " mPa.s (" + duty
                + "). Of the gap as tested it needs neither clearance nor eccentricity: the same gap passes air and oil.";
    }

    /** What the hot gap is; its growth is given. */
    public static String hot(String growth) {
        return "Gap hot: at the oil's temperature bore and valve of the file's materials stand " + growth
                + " further apart than at the test; that step takes the file's eccentricity.";
    }

    /** How it becomes a measurement. */
    public static String onTheSheet(String land, String valve) {
        return "To use it, write 'bore to write' as the measured bore of " + land
                + " on the sheet, and its valve, " + valve
                + ", if you measured that: with the eccentricity of the file the part then leaks what was tested.";
    }

    /** What the star means. */
    public static String past(String limit) {
        return "* past its wear limit of " + limit + ".";
    }
}

package hotidle.answer.phrase;

/** What a picture leaves out; behind the name of its file. */
public final class LeftOutPhrase {

    private LeftOutPhrase() {}

    /** Where pressures and oil of only some sweeps are shown. */
    public static String pressuresAndOil(int pressures, int oils, int sweeps) {
        return sweeps <= oils
                ? ""
                : "; it shows the pressure of the first " + pressures + " and the oil of the first " + oils + " of "
                        + sweeps + " sweeps";
    }

    /** Where only some gauge ports are shown. */
    public static String taps(int shown, int taps) {
        return taps <= shown ? "" : "; it shows the first " + shown + " of " + taps + " gauge ports";
    }

    /** Where readings were taken at something else than what is drawn. */
    public static String readings(int others) {
        return others == 0
                ? ""
                : "; " + CountPhrase.of(others, "reading")
                        + " left out: taken in another range, or with other oil temperature" + " or set pressure";
    }

    /** Where a page is too small for all charts. */
    public static String charts(int shown, int charts) {
        return charts <= shown
                ? ""
                : "; of its " + charts + " charts this size has room for the first" + (shown == 1 ? "" : " " + shown)
                        + ": a larger --size, for example 1200x800, has room for more";
    }

    /** Where only some sweeps are shown. */
    public static String sweeps(int shown, int sweeps) {
        return sweeps <= shown ? "" : "; it shows the first " + shown + " of " + sweeps + " sweeps";
    }
}

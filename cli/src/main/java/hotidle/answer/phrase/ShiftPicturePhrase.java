package hotidle.answer.phrase;

/** Words in the picture of shifts; heat over area in [J/m²], power over area in [W/m²]. */
public final class ShiftPicturePhrase {

    public static final String HEAT_ACROSS = "heat of one shift over rubbing area [J/mm2]";
    public static final String POWER_ACROSS = "power at its start over rubbing area [W/mm2]";
    public static final String HEAT_LIMIT = "1 J/mm2: oiled paper linings bear it (common practice)";
    public static final String POWER_LIMIT = "3 W/mm2: oiled paper linings bear it (common practice)";

    private ShiftPicturePhrase() {}

    /** Under each title. */
    public static String under(String circuit) {
        return circuit + ": an estimate from your own figures, not an approval";
    }

    /** A shift and what closes in it. */
    public static String shift(String from, String to, String clutch) {
        return from + "-" + to + (clutch.isEmpty() ? "" : ": " + clutch);
    }

    /** The shift that makes most heat. */
    public static String heat(String build, String shift, double heat) {
        return build + ": most heat over its area in " + shift + ", " + figure(ShiftPhrase.overArea(heat)) + " J/mm2"
                + over(heat > ShiftPhrase.LIMIT);
    }

    /** The shift that begins with most power. */
    public static String power(String build, String shift, double power) {
        return build + ": most power over its area in " + shift + ", " + figure(ShiftPhrase.powerOverArea(power))
                + " W/mm2" + over(power > ShiftPhrase.POWER_LIMIT);
    }

    private static String over(boolean over) {
        return over ? ", ABOVE what linings bear" : ", which linings bear";
    }

    /** The mark of a figure above its limit is a word in a title. */
    private static String figure(String text) {
        return text.replace(ShiftPhrase.OVER, "");
    }
}

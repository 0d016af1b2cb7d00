package hotidle.plots.scheme;

import java.awt.Color;

/** One hue from light to dark: the darker a line, the higher its pressure. */
final class PressureScale {
    private static final Color LOW = new Color(0xc3, 0xb1, 0xdd);
    private static final Color HIGH = new Color(0x2b, 0x08, 0x57);

    private PressureScale() {}

    /** Colour of a share of the scale; plain ink where it is not known. */
    static Color of(double share) {
        if (Double.isNaN(share)) {
            return Pen.INK;
        }
        double s = Math.min(1, Math.max(0, share));
        return new Color(
                mix(LOW.getRed(), HIGH.getRed(), s),
                mix(LOW.getGreen(), HIGH.getGreen(), s),
                mix(LOW.getBlue(), HIGH.getBlue(), s));
    }

    private static int mix(int low, int high, double share) {
        return (int) Math.round(low + share * (high - low));
    }
}

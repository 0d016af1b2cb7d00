package hotidle.plots;

import java.awt.Color;

/**
 * Colours that colour-blind eyes can tell apart.
 *
 * <pre>
 * Source    M. Okabe, K. Ito, Color Universal Design: how to make figures and presentations that are friendly to
 *           colorblind people, 2002, revised 2008, section 10, "Set of colors that is unambiguous both to colorblinds
 *           and non-colorblinds" (jfly.uni-koeln.de/color)
 * Lightness L* of CIE 1976: 116·∛Y − 16 (903.3·Y below Y = 0.008856), Y from linear sRGB by IEC 61966-2-1
 * </pre>
 */
final class Palette {
    static final Color BLACK = new Color(0, 0, 0);
    static final Color ORANGE = new Color(230, 159, 0);
    static final Color SKY_BLUE = new Color(86, 180, 233);
    static final Color BLUISH_GREEN = new Color(0, 158, 115);
    static final Color YELLOW = new Color(240, 228, 66);
    static final Color BLUE = new Color(0, 114, 178);
    static final Color VERMILLION = new Color(213, 94, 0);
    static final Color REDDISH_PURPLE = new Color(204, 121, 167);

    private Palette() {}

    /** This colour with a share [0..1] of the other. */
    static Color mix(Color colour, double share, Color other) {
        return new Color(
                mix(colour.getRed(), share, other.getRed()),
                mix(colour.getGreen(), share, other.getGreen()),
                mix(colour.getBlue(), share, other.getBlue()));
    }

    /** Lightness L* as the eye sees it, 0 black to 100 white [-]. */
    static double lightness(Color colour) {
        double y = 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
        return y > 0.008856 ? 116 * Math.cbrt(y) - 16 : 903.3 * y;
    }

    private static int mix(int own, double share, int other) {
        return (int) Math.round(own + share * (other - own));
    }

    private static double linear(int channel) {
        double s = channel / 255.0;
        return s <= 0.04045 ? s / 12.92 : Math.pow((s + 0.055) / 1.055, 2.4);
    }
}

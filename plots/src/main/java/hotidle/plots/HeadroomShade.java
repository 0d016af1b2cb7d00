package hotidle.plots;

import java.awt.Color;
import java.util.List;

/**
 * A step of the colours of a map: all headroom below its upper end that no lower step has. The more headroom, the lighter, so that a
 * map printed in grey says the same; between what fails, what is narrow and what holds the lightness leaps ({@link #LEAST_LEAP}).
 *
 * @param below upper end [%]
 * @param fill  colour
 * @param text  in the legend
 */
record HeadroomShade(double below, Color fill, String text) {

    /** Least difference of lightness L* between fails, narrow and holds (chosen) [-]. */
    static final double LEAST_LEAP = 10;

    /** All steps, the darkest first, where headroom up to this is narrow [%]. */
    static List<HeadroomShade> all(double narrow) {
        String end = Style.number(narrow);
        return List.of(
                new HeadroomShade(-50, Palette.mix(Palette.VERMILLION, 0.08, Color.BLACK), "FAILS, below -50 %"),
                new HeadroomShade(-20, Palette.mix(Palette.VERMILLION, 0.08, Color.WHITE), "FAILS, -50 to -20 %"),
                new HeadroomShade(0, Palette.mix(Palette.VERMILLION, 0.24, Color.WHITE), "FAILS, -20 to 0 %"),
                new HeadroomShade(
                        narrow, Palette.mix(Palette.ORANGE, 0.46, Palette.YELLOW), "narrow, 0 to " + end + " %"),
                new HeadroomShade(50, Palette.mix(Palette.SKY_BLUE, 0.75, Color.WHITE), "holds, " + end + " to 50 %"),
                new HeadroomShade(
                        Double.POSITIVE_INFINITY,
                        Palette.mix(Palette.SKY_BLUE, 0.92, Color.WHITE),
                        "holds, above 50 %"));
    }

    /** The colour of a headroom [%]; white where it is not known. */
    static Color fill(double headroom, double narrow) {
        if (Double.isNaN(headroom)) {
            return Color.WHITE;
        }
        return all(narrow).stream()
                .filter(shade -> headroom < shade.below)
                .findFirst()
                .orElseThrow()
                .fill;
    }
}

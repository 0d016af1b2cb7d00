package hotidle.plots.scheme;

import java.awt.Font;
import java.awt.font.FontRenderContext;

/** Letters on the sheet, in millimetres. */
final class Lettering {
    /** Size of the smallest letters [mm]. */
    static final double SMALL = 2.5;

    /** From one line of text to the next [mm]. */
    static final double LINE = 3;

    /** Size of the sheet's heading [mm]. */
    static final double HEADING = 4.5;

    /** Size of a frame's name [mm]. */
    static final double FRAME = 3;

    static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 1);
    static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 1);

    private static final float MEASURED = 100;
    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

    private Lettering() {}

    /** Width of a text [mm]; measured large, since a font of a few units has no exact widths. */
    static double width(String text, Font font, double size) {
        return font.deriveFont(MEASURED).getStringBounds(text, EXACT).getWidth() * size / MEASURED;
    }
}

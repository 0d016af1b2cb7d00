package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How a band looks: light and dark by turns, so that neighbours lie at least {@link #LEAST_STEP} apart in lightness, and
 * each pair of colour and hatch only once.
 *
 * @param fill  ground colour
 * @param hatch drawn on it
 */
record BandLook(Color fill, Hatch hatch) {
    /** Least difference in lightness L* between neighbours [-]. */
    static final double LEAST_STEP = 20;

    private static final BasicStroke EDGE = new BasicStroke(0.4f);
    private static final double INKED = 0.4;
    private static final double HALF = 0.5;

    /** From the bottom up. */
    static final List<BandLook> ALL = List.of(
            new BandLook(Palette.YELLOW, Hatch.RISING),
            new BandLook(Palette.BLUE, Hatch.PLAIN),
            new BandLook(light(Palette.SKY_BLUE), Hatch.DOTS),
            new BandLook(Palette.VERMILLION, Hatch.FALLING),
            new BandLook(light(Palette.ORANGE), Hatch.UPRIGHT),
            new BandLook(Palette.BLUISH_GREEN, Hatch.PAIRS),
            new BandLook(light(Palette.REDDISH_PURPLE), Hatch.FALLING),
            new BandLook(light(Palette.BLACK), Hatch.RISING),
            new BandLook(Palette.mix(Palette.BLACK, 0.88, Color.WHITE), Hatch.PLAIN),
            new BandLook(Palette.REDDISH_PURPLE, Hatch.CROSSED),
            new BandLook(light(Palette.SKY_BLUE), Hatch.RISING),
            new BandLook(Palette.BLUE, Hatch.DOTS));

    /** Whether text on it must be white. */
    boolean dark() {
        return Palette.lightness(fill) < 56;
    }

    /** Colour of text on the band. */
    Color text() {
        return dark() ? Color.WHITE : Color.BLACK;
    }

    /** Fills the shape, hatches it and draws a thin edge. */
    void paint(Graphics2D g, Shape shape) {
        g.setPaint(fill);
        g.fill(shape);
        Shape before = g.getClip();
        g.clip(shape);
        // a band may go on far beyond the chart
        Rectangle2D bounds = g.getClip().getBounds2D();
        g.setPaint(Palette.mix(fill, INKED, text()));
        hatch.paint(g, bounds);
        g.setClip(before);
        g.setPaint(Style.INK);
        g.setStroke(EDGE);
        g.draw(shape);
    }

    private static Color light(Color colour) {
        return Palette.mix(colour, HALF, Color.WHITE);
    }
}

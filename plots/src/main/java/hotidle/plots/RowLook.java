package hotidle.plots;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;

/** How a piece of a bar looks; those that can lie beside each other differ in lightness and hatch, as on a map. */
public enum RowLook {
    /** A share, or what is there. */
    FULL(Palette.BLUE, Hatch.PLAIN),
    /** What fails. */
    FAILS(Palette.mix(Palette.VERMILLION, 0.08, Color.WHITE), Hatch.FALLING),
    /** What holds, or is as it should be. */
    HOLDS(Palette.mix(Palette.SKY_BLUE, 0.75, Color.WHITE), Hatch.PLAIN),
    /** What is not known. */
    OPEN(Color.WHITE, Hatch.CROSSED);

    private final Color fill;
    private final Hatch hatch;

    RowLook(Color fill, Hatch hatch) {
        this.fill = fill;
        this.hatch = hatch;
    }

    Color fill() {
        return fill;
    }

    void paint(Graphics2D g, Rectangle2D box) {
        g.setPaint(fill);
        g.fill(box);
        Shape before = g.getClip();
        g.clip(box);
        g.setPaint(Style.INK);
        hatch.paint(g, box);
        g.setClip(before);
        g.setPaint(Style.INK);
        g.setStroke(Style.HAIRLINE);
        g.draw(box);
    }
}

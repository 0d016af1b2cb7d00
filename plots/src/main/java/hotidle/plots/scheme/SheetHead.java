package hotidle.plots.scheme;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/** Heading, notes and key of a sheet. */
final class SheetHead {

    /** Height of the key [mm]. */
    static final double KEY = 9.6;

    /** Room is kept for so many notes, so that all states of a circuit are laid out alike. */
    private static final int NOTES = 2;

    private static final int STEPS = 16;
    private static final double STEP = 2;

    private SheetHead() {}

    /** Height that heading and notes take [mm]. */
    static double height(Scheme scheme) {
        return Lettering.HEADING + 3 + Math.max(NOTES, scheme.notes().size()) * Lettering.LINE + 2;
    }

    static void paint(Pen pen, Scheme scheme, Paper paper) {
        pen.fill(new Rectangle2D.Double(0, 0, paper.width(), paper.height()), Color.WHITE);
        double x = Paper.MARGIN;
        double y = Paper.MARGIN + Lettering.HEADING * 0.8;
        pen.text(scheme.title(), x, y, Lettering.BOLD, Lettering.HEADING, Pen.INK);
        for (String note : scheme.notes()) {
            y += Lettering.LINE + 0.6;
            pen.text(note, x, y, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        }
        if (scheme.scale().shown()) {
            key(pen, scheme.scale(), paper);
        }
        String signs = scheme.scale().signs();
        pen.text(signs, Paper.MARGIN, paper.height() - Paper.MARGIN - 0.6, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
    }

    private static void key(Pen pen, Scheme.ScaleKey key, Paper paper) {
        double y = paper.height() - Paper.MARGIN - KEY + 2.6;
        double x = Paper.MARGIN;
        pen.text(key.low(), x, y + 2.4, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        x += Lettering.width(key.low(), Lettering.PLAIN, Lettering.SMALL) + 2;
        for (int i = 0; i < STEPS; i++) {
            pen.fill(new Rectangle2D.Double(x + i * STEP, y, STEP + 0.3, 3), PressureScale.of(i / (STEPS - 1.0)));
        }
        x += STEPS * STEP + 2;
        pen.text(key.high(), x, y + 2.4, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        x += Lettering.width(key.high(), Lettering.PLAIN, Lettering.SMALL) + 10;
        pen.fill(new Rectangle2D.Double(x, y + 0.7, 10, SheetPaint.WIDEST), PressureScale.of(1));
        pen.text(key.widest(), x + 12, y + 2.4, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        if (!key.marked().isEmpty()) {
            x += 22 + Lettering.width(key.widest(), Lettering.PLAIN, Lettering.SMALL);
            RoundRectangle2D sample = new RoundRectangle2D.Double(x, y, 8, 3, 1.5, 1.5);
            pen.fill(sample, SheetPaint.MARK);
            pen.draw(sample, Pen.QUIET, 0.15);
            pen.text(key.marked(), x + 10, y + 2.4, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        }
    }
}

package hotidle.plots.scheme;

import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;

/**
 * The symbols, each in its body.
 *
 * <pre>
 * Source  ISO 1219-1:2012 (from memory) for pump, filter, cooler, check and relief valve, orifice, restriction, cylinder, spring-loaded
 *         accumulator; converter, band, bearing, bore, sealing ring and joint are our own, since it has none
 * </pre>
 */
final class SymbolPaint {

    /** Height of a small symbol in its own measure [mm]. */
    private static final double SMALL = 5;

    private final Pen pen;
    private final double x;
    private final double y;
    private final double w;
    private final double h;
    private final double cx;
    private final double cy;

    private SymbolPaint(Pen pen, Rectangle2D body) {
        this.pen = pen;
        x = body.getX();
        y = body.getY();
        w = body.getWidth();
        h = body.getHeight();
        cx = body.getCenterX();
        cy = body.getCenterY();
    }

    /** Draws the symbol of a box that is no valve with envelopes. */
    static void paint(Pen pen, SchemePart part, Rectangle2D body) {
        double factor = SymbolSize.SHOWN;
        pen.origin(body.getX(), body.getY());
        pen.scale(factor);
        new SymbolPaint(pen, new Rectangle2D.Double(0, 0, body.getWidth() / factor, body.getHeight() / factor))
                .paint(part);
        pen.scale(1 / factor);
        pen.origin(-body.getX(), -body.getY());
    }

    /** Draws the symbol of what leaks, lying, so small that it stands in a line of text. */
    static void small(Pen pen, Symbol symbol, Rectangle2D at) {
        double factor = at.getHeight() / SMALL;
        pen.origin(at.getX(), at.getY());
        pen.scale(factor);
        new SymbolPaint(pen, new Rectangle2D.Double(0, 0, at.getWidth() / factor, SMALL)).leak(symbol);
        pen.scale(1 / factor);
        pen.origin(-at.getX(), -at.getY());
    }

    /** Where oil leaks through: it comes from the left. */
    private void leak(Symbol symbol) {
        switch (symbol) {
            case SEALING_RING -> {
                pen.path(x, cy - 1.6, x + w, cy - 1.6);
                pen.path(
                        x, cy + 1.6, cx - 1.2, cy + 1.6, cx - 1.2, y + h, cx + 1.2, y + h, cx + 1.2, cy + 1.6, x + w,
                        cy + 1.6);
                pen.block(new Rectangle2D.Double(cx - 0.9, cy - 1.2, 1.8, y + h - cy + 0.6));
            }
            case JOINT -> {
                pen.body(new Rectangle2D.Double(x, cy - 2.4, w, 1.7));
                pen.body(new Rectangle2D.Double(x, cy + 0.7, w, 1.7));
                pen.block(new Rectangle2D.Double(x + 0.5, cy - 0.4, w - 1, 0.8));
            }
            case ACCUMULATOR -> {
                pen.body(new RoundRectangle2D.Double(x, cy - 2, w, 4, 4, 4));
                pen.line(cx - 0.9, cy - 2, cx - 0.9, cy + 2);
                pen.spring(cx - 0.9, x + w - 0.4, cy);
            }
            default -> {
                pen.line(x, cy - 2.2, x + w, cy - 2.2);
                pen.body(new Rectangle2D.Double(x + 0.8, cy - 1.5, w - 1.6, 3));
                pen.line(x, cy + 2.2, x + w, cy + 2.2);
            }
        }
    }

    private void paint(SchemePart part) {
        switch (part.symbol()) {
            case PUMP -> pump(false);
            case VARIABLE_PUMP -> pump(true);
            case FILTER -> filter();
            case COOLER -> cooler();
            case CONVERTER -> converter();
            case CLUTCH -> cylinder(false);
            case BAND -> cylinder(true);
            case CHECK_VALVE -> check();
            case RELIEF_VALVE -> relief();
            case ORIFICE -> orifice();
            case LUBRICATED -> lubricated();
            case ACCUMULATOR -> accumulator();
            case GAP -> gap();
            case SEALING_RING -> ring();
            case JOINT -> joint();
            case PASSAGE, RESTRICTION -> restriction();
            default -> throw new IllegalArgumentException(part.symbol() + " has envelopes");
        }
    }

    private void pump(boolean variable) {
        pen.body(new Ellipse2D.Double(x, y, w, h));
        pen.polygon(cx, y, cx - 1.8, y + 2.8, cx + 1.8, y + 2.8);
        if (variable) {
            pen.line(x - 1, y + h + 0.6, x + w + 0.6, y - 0.4);
            pen.head(x - 1, y + h + 0.6, x + w + 1, y - 0.8);
        }
    }

    private void diamond() {
        Path2D shape = Pen.track(cx, y, x + w, cy, cx, y + h, x, cy);
        shape.closePath();
        pen.body(shape);
    }

    private void filter() {
        diamond();
        pen.dashed(Pen.track(x, cy, x + w, cy), Pen.INK, Pen.LINE);
    }

    private void cooler() {
        diamond();
        pen.line(x + 2.2, cy, x + w - 2.2, cy);
        pen.head(cx, cy, x + 1, cy);
        pen.head(cx, cy, x + w - 1, cy);
    }

    private void converter() {
        pen.body(new RoundRectangle2D.Double(x, y, w, h, 3, 3));
        for (int side : new int[] {-1, 1}) {
            Path2D shell = new Path2D.Double();
            double at = cx + side * 0.7;
            shell.moveTo(at, y + 1.5);
            shell.curveTo(cx + side * 7.5, y + 1.5, cx + side * 7.5, y + h - 1.5, at, y + h - 1.5);
            shell.closePath();
            pen.draw(shell, Pen.INK, Pen.LINE);
            pen.path(at + side * 1.2, y + 3.2, at + side * 3.4, cy, at + side * 1.2, y + h - 3.2);
        }
    }

    private void cylinder(boolean band) {
        double wide = 9;
        pen.body(new Rectangle2D.Double(x, y + 1, wide, h - 1));
        double piston = x + 3.2;
        pen.body(new Rectangle2D.Double(piston, y + 1, 1.2, h - 1));
        double rod = y + 1 + (h - 1) / 2;
        pen.line(piston + 1.2, rod, x + w - 2.2, rod);
        pen.spring(piston + 1.2, x + wide, rod);
        if (band) {
            pen.draw(new Arc2D.Double(x + w - 3, y + 0.6, 6, h - 0.2, 120, 120, Arc2D.OPEN), Pen.INK, 2 * Pen.LINE);
        } else {
            for (int plate = 0; plate < 3; plate++) {
                double at = x + w - 2.2 + plate * 0.9;
                pen.line(at, y + 1.2, at, y + h - 0.2);
            }
        }
    }

    private void check() {
        pen.line(cx, y + h, cx, cy + 1.6);
        pen.path(cx - 1.9, cy - 0.3, cx, cy + 1.6, cx + 1.9, cy - 0.3);
        pen.body(new Ellipse2D.Double(cx - 1.2, cy - 1.5, 2.4, 2.4));
        pen.line(cx, y, cx, cy - 1.5);
    }

    private void relief() {
        pen.body(new Rectangle2D.Double(x, y, w, h));
        pen.line(cx + 1.4, y + h, cx + 1.4, y + 0.2);
        pen.head(cx + 1.4, y + h, cx + 1.4, y);
        pen.spring(x + w, x + w + SymbolSize.SPRING / SymbolSize.SHOWN - 1, cy);
        pen.dashed(Pen.track(cx, y + h + 0.7, x - 1.8, y + h + 0.7, x - 1.8, cy, x, cy), Pen.INK, Pen.LINE);
    }

    private void orifice() {
        pen.line(cx, y, cx, y + h);
        for (int side : new int[] {-1, 1}) {
            pen.path(cx + side * 2.4, cy - 1.7, cx + side * 0.6, cy, cx + side * 2.4, cy + 1.7);
        }
    }

    private void restriction() {
        pen.line(cx, y, cx, y + h);
        pen.draw(new Arc2D.Double(cx - 4.6, cy - 2.6, 4, 5.2, -60, 120, Arc2D.OPEN), Pen.INK, Pen.LINE);
        pen.draw(new Arc2D.Double(cx + 0.6, cy - 2.6, 4, 5.2, 120, 120, Arc2D.OPEN), Pen.INK, Pen.LINE);
    }

    private void lubricated() {
        pen.line(cx, y + 5.4, cx, y + h);
        for (int side : new int[] {-1, 1}) {
            pen.path(cx + side * 2.2, y + 6.2, cx + side * 0.6, y + 7.7, cx + side * 2.2, y + 9.2);
        }
        pen.body(new Ellipse2D.Double(cx - 2.7, y, 5.4, 5.4));
        pen.body(new Ellipse2D.Double(cx - 1.3, y + 1.4, 2.6, 2.6));
    }

    private void accumulator() {
        pen.body(new RoundRectangle2D.Double(x, y, w, h, w, w));
        double piston = y + 6.2;
        pen.line(x, piston, x + w, piston);
        pen.path(
                cx - 1.5, y + 0.8, cx + 1.5, y + 1.7, cx - 1.5, y + 2.8, cx + 1.5, y + 3.9, cx - 1.5, y + 5, cx,
                piston);
    }

    private void ring() {
        pen.line(cx - 1.8, y, cx - 1.8, y + h);
        pen.path(cx + 0.6, y, cx + 0.6, cy - 1.3, x + w, cy - 1.3);
        pen.path(cx + 0.6, y + h, cx + 0.6, cy + 1.3, x + w, cy + 1.3);
        pen.block(new Rectangle2D.Double(cx - 1.2, cy - 1, x + w - cx + 0.6, 2));
    }

    private void joint() {
        pen.body(new Rectangle2D.Double(x, y + 0.4, 2.2, h - 0.8));
        pen.body(new Rectangle2D.Double(x + w - 2.2, y + 0.4, 2.2, h - 0.8));
        pen.block(new Rectangle2D.Double(cx - 0.5, y + 1, 1, h - 2));
    }

    private void gap() {
        pen.line(cx, y, cx, y + h);
        for (int side : new int[] {-1, 1}) {
            pen.line(cx + side * 0.7, y + 1, cx + side * 0.7, y + h - 1);
            pen.path(cx + side * 2.2, y + 1, cx + side * 0.7, y + 1);
            pen.path(cx + side * 2.2, y + h - 1, cx + side * 0.7, y + h - 1);
        }
    }
}

package hotidle.plots.scheme;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;

/** Draws lines, marks and letters in millimetres. */
final class Pen {
    static final Color INK = new Color(0x22, 0x22, 0x22);
    static final Color QUIET = new Color(0x88, 0x88, 0x88);

    /** Width of the lines of a symbol [mm]. */
    static final double LINE = 0.25;

    private static final float[] DASHES = {1.4f, 0.9f};

    private final Graphics2D g;

    Pen(Graphics2D g) {
        this.g = g;
    }

    /** From now on places count from here. */
    void origin(double x, double y) {
        g.translate(x, y);
    }

    /** From now on places and widths are so many times as large. */
    void scale(double factor) {
        g.scale(factor, factor);
    }

    void draw(Shape shape, Color colour, double width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
        g.draw(shape);
    }

    void dashed(Shape shape, Color colour, double width) {
        g.setColor(colour);
        g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, DASHES, 0));
        g.draw(shape);
    }

    void fill(Shape shape, Color colour) {
        g.setColor(colour);
        g.fill(shape);
    }

    /** White inside, so that what lies below does not show, and an outline. */
    void body(Shape shape) {
        fill(shape, Color.WHITE);
        draw(shape, INK, LINE);
    }

    /** A piece that seals. */
    void block(Shape shape) {
        fill(shape, INK);
    }

    void line(double x1, double y1, double x2, double y2) {
        draw(new Line2D.Double(x1, y1, x2, y2), INK, LINE);
    }

    void path(double... corners) {
        draw(track(corners), INK, LINE);
    }

    void polygon(double... corners) {
        Path2D path = track(corners);
        path.closePath();
        fill(path, INK);
    }

    void text(String text, double x, double y, Font font, double size, Color colour) {
        g.setColor(colour);
        g.setFont(font.deriveFont((float) size));
        g.drawString(text, (float) x, (float) y);
    }

    /** A filled head of an arrow whose point lies at x, y. */
    void head(double fromX, double fromY, double x, double y) {
        double angle = Math.atan2(y - fromY, x - fromX);
        double length = 1.5;
        double half = 0.55;
        double bx = x - length * Math.cos(angle);
        double by = y - length * Math.sin(angle);
        polygon(
                x,
                y,
                bx + half * Math.sin(angle),
                by - half * Math.cos(angle),
                bx - half * Math.sin(angle),
                by + half * Math.cos(angle));
    }

    void dot(Point2D at, double radius, Color colour) {
        fill(new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius), colour);
    }

    /** A spring between two places at one height. */
    void spring(double x1, double x2, double y) {
        int coils = 6;
        double[] corners = new double[2 * (coils + 2)];
        corners[0] = x1;
        corners[1] = y;
        for (int i = 1; i <= coils; i++) {
            corners[2 * i] = x1 + (x2 - x1) * (i - 0.5) / coils;
            corners[2 * i + 1] = y + (i % 2 == 0 ? 1.4 : -1.4);
        }
        corners[2 * coils + 2] = x2;
        corners[2 * coils + 3] = y;
        path(corners);
    }

    /** A reservoir, open above, whose middle is given; the line ends in it. */
    void tank(double x, double y) {
        double w = BoxPlan.TANK_WIDTH / 2;
        double h = BoxPlan.TANK_HEIGHT / 2;
        path(x - w, y - h, x - w, y + h, x + w, y + h, x + w, y - h);
    }

    /** A drop of oil with its point at x, y. */
    void drop(double x, double y, Color colour) {
        Path2D drop = new Path2D.Double();
        drop.moveTo(x, y);
        drop.curveTo(x + 0.3, y + 0.9, x + 0.85, y + 1.2, x + 0.85, y + 1.75);
        drop.curveTo(x + 0.85, y + 2.9, x - 0.85, y + 2.9, x - 0.85, y + 1.75);
        drop.curveTo(x - 0.85, y + 1.2, x - 0.3, y + 0.9, x, y);
        drop.closePath();
        fill(drop, colour);
    }

    static Path2D track(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        return path;
    }
}

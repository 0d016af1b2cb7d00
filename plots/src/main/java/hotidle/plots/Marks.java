package hotidle.plots;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Marks that mean the same on every curve. All are drawn around the point at the origin [px]. */
final class Marks {
    private Marks() {}

    /** Regulation begins: a ring, wider than any marker. */
    static Shape onset() {
        return new Ellipse2D.Double(-7, -7, 14, 14);
    }

    /** The secondary unloads: a tick across the curve with a head above it. */
    static Shape unloads() {
        Path2D path = new Path2D.Double();
        path.append(new Rectangle2D.Double(-1, -9, 2, 18), false);
        path.moveTo(-5, -17);
        path.lineTo(5, -17);
        path.lineTo(0, -8);
        path.closePath();
        return path;
    }

    /** Unsolved: a cross above the speed axis, each curve in its own row. */
    static Shape unsolved(int row) {
        double y = -7 - 10.0 * row;
        Path2D path = new Path2D.Double();
        path.moveTo(-4, y - 4);
        path.lineTo(4, y + 4);
        path.moveTo(-4, y + 4);
        path.lineTo(4, y - 4);
        return path;
    }
}

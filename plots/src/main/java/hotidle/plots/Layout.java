package hotidle.plots;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Where charts lie on the page. Where the number leaves cells over, the first chart takes them. */
final class Layout {
    /** Most charts that stay readable on one page. */
    static final int MOST = 6;

    private Layout() {}

    /** Cells for so many charts [px], in reading order. */
    static List<Rectangle2D> cells(int charts, double width, double height) {
        int columns = charts <= 2 ? 1 : charts == 3 ? 2 : 3;
        int rows = (charts + columns - 1) / columns;
        double w = width / columns;
        double h = height / rows;
        int spare = rows * columns - charts;
        List<Rectangle2D> cells = new ArrayList<>();
        cells.add(new Rectangle2D.Double(0, 0, w * (1 + spare), h));
        for (int i = 1 + spare; i < rows * columns; i++) {
            int row = i / columns;
            cells.add(new Rectangle2D.Double(w * (i % columns), h * row, w, h));
        }
        return cells;
    }
}

package hotidle.plots;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * The line along which a field of solved points has a level.
 *
 * <pre>
 * Method    marching squares: where a side of a square of four neighbours crosses the level, straight between its two ends
 * Numerics  A square with a corner that is not known has no line: nothing is drawn across what was not solved. Between a corner
 *           that is short by an unknown amount (minus infinity) and one above the level the line stands half way.
 * </pre>
 */
final class Contour {

    private Contour() {}

    /**
     * Pieces of the line.
     *
     * @param xs     rising
     * @param ys     rising
     * @param values a row for each y; NaN where not known
     */
    static List<Line2D> pieces(List<Double> xs, List<Double> ys, List<List<Double>> values, double level) {
        List<Line2D> pieces = new ArrayList<>();
        for (int j = 0; j + 1 < ys.size(); j++) {
            for (int i = 0; i + 1 < xs.size(); i++) {
                Corner[] around = {
                    new Corner(xs.get(i), ys.get(j), values.get(j).get(i) - level),
                    new Corner(xs.get(i + 1), ys.get(j), values.get(j).get(i + 1) - level),
                    new Corner(xs.get(i + 1), ys.get(j + 1), values.get(j + 1).get(i + 1) - level),
                    new Corner(xs.get(i), ys.get(j + 1), values.get(j + 1).get(i) - level)
                };
                square(around, pieces);
            }
        }
        return pieces;
    }

    private record Corner(double x, double y, double value) {

        boolean above() {
            return value >= 0;
        }

        Point2D crossing(Corner other) {
            boolean finite = Double.isFinite(value) && Double.isFinite(other.value);
            double share = finite ? value / (value - other.value) : 0.5;
            return new Point2D.Double(x + share * (other.x - x), y + share * (other.y - y));
        }
    }

    private static void square(Corner[] around, List<Line2D> pieces) {
        double middle = 0;
        for (Corner corner : around) {
            middle += corner.value;
        }
        if (Double.isNaN(middle)) {
            return;
        }
        List<Point2D> crossings = new ArrayList<>();
        for (int side = 0; side < around.length; side++) {
            Corner next = around[(side + 1) % around.length];
            if (around[side].above() != next.above()) {
                crossings.add(around[side].crossing(next));
            }
        }
        if (crossings.size() == 2) {
            pieces.add(new Line2D.Double(crossings.get(0), crossings.get(1)));
        } else if (crossings.size() == 4) {
            // a saddle: the middle tells which two opposite corners hang together
            int first = middle >= 0 == around[0].above() ? 0 : 3;
            pieces.add(new Line2D.Double(crossings.get(first), crossings.get((first + 1) % 4)));
            pieces.add(new Line2D.Double(crossings.get((first + 2) % 4), crossings.get((first + 3) % 4)));
        }
    }
}

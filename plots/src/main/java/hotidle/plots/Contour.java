package hotidle.plots;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The line along which a field of solved points has a level.
 *
 * <pre>
 * Method    marching squares: where a side of a square of four neighbours crosses the level. Each limit is taken as straight between
 *           the two ends, and the line stands where the first of them crosses: the least of all has a kink where another limit
 *           decides, and straight between its own two values the line would stand beside it.
 * Numerics  A square with a corner that is not known has no line: nothing is drawn across what was not solved. Between a corner
 *           that is short by an unknown amount (minus infinity) and one above the level the line stands half way.
 * </pre>
 */
final class Contour {

    private Contour() {}

    /**
     * A solved point.
     *
     * @param least  of all limits; NaN where not known, minus infinity where short by an unknown amount
     * @param limits each limit by its name; may be empty, and then the least is straight itself
     */
    record Spot(double least, Map<String, Double> limits) {}

    /**
     * Pieces of the line.
     *
     * @param xs    rising
     * @param ys    rising
     * @param spots a row for each y
     */
    static List<Line2D> pieces(List<Double> xs, List<Double> ys, List<List<Spot>> spots, double level) {
        List<Line2D> pieces = new ArrayList<>();
        for (int j = 0; j + 1 < ys.size(); j++) {
            for (int i = 0; i + 1 < xs.size(); i++) {
                Corner[] around = {
                    new Corner(xs.get(i), ys.get(j), spots.get(j).get(i), level),
                    new Corner(xs.get(i + 1), ys.get(j), spots.get(j).get(i + 1), level),
                    new Corner(xs.get(i + 1), ys.get(j + 1), spots.get(j + 1).get(i + 1), level),
                    new Corner(xs.get(i), ys.get(j + 1), spots.get(j + 1).get(i), level)
                };
                square(around, pieces);
            }
        }
        return pieces;
    }

    private record Corner(double x, double y, Spot spot, double level) {

        double value() {
            return spot.least - level;
        }

        boolean above() {
            return value() >= 0;
        }

        Point2D crossing(Corner other) {
            double share = above() ? share(other) : 1 - other.share(this);
            return new Point2D.Double(x + share * (other.x - x), y + share * (other.y - y));
        }

        /** The way to a corner below the level at which the first limit crosses it. */
        private double share(Corner below) {
            return spot.limits.entrySet().stream()
                    .filter(limit -> below.spot.limits.containsKey(limit.getKey()))
                    .filter(limit -> !(limit.getValue() < level))
                    .mapToDouble(
                            limit -> share(limit.getValue() - level, below.spot.limits.get(limit.getKey()) - level))
                    .filter(share -> share <= 1)
                    .min()
                    .orElseGet(() -> share(value(), below.value()));
        }

        /** Half way to a value that is not known; beyond the other end where the level is not crossed. */
        private static double share(double here, double there) {
            if (there >= 0) {
                return Double.POSITIVE_INFINITY;
            }
            return Double.isFinite(here) && Double.isFinite(there) ? here / (here - there) : 0.5;
        }
    }

    private static void square(Corner[] around, List<Line2D> pieces) {
        double middle = 0;
        for (Corner corner : around) {
            middle += corner.value();
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

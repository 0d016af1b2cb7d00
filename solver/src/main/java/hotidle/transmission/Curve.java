package hotidle.transmission;

import java.util.List;

/**
 * A table read along straight lines, level beyond its ends.
 *
 * @param points in rising x
 */
public record Curve(List<Knot> points) {

    /** A row of the table. */
    public record Knot(double x, double y) {}

    public Curve {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a table needs at least one row");
        }
        for (int i = 1; i < points.size(); i++) {
            if (!(points.get(i).x() > points.get(i - 1).x())) {
                throw new IllegalArgumentException("the rows of a table must rise");
            }
        }
    }

    /** Value at x. */
    public double at(double x) {
        Knot before = points.get(0);
        for (Knot after : points) {
            if (x <= after.x()) {
                double span = after.x() - before.x();
                return span == 0 ? after.y() : before.y() + (after.y() - before.y()) * (x - before.x()) / span;
            }
            before = after;
        }
        return before.y();
    }

    /** Largest value of the table. */
    public double highest() {
        return points.stream().mapToDouble(Knot::y).max().orElseThrow();
    }

    /** The table with every value multiplied. */
    public Curve scaled(double factor) {
        return new Curve(
                points.stream().map(p -> new Knot(p.x(), p.y() * factor)).toList());
    }
}

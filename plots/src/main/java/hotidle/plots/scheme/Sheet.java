package hotidle.plots.scheme;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Where everything stands, from the upper left corner of the drawing [mm].
 *
 * @param width  of the drawing
 * @param height of the drawing
 * @param frames around what belongs together
 * @param boxes  parts
 * @param tags   nets
 * @param wires  lines between boxes and tags
 */
record Sheet(double width, double height, List<Frame> frames, List<Box> boxes, List<Tag> tags, List<Wire> wires) {

    /**
     * A quiet frame.
     *
     * @param text foot of its name, where no line runs
     */
    record Frame(String name, Rectangle2D area, Point2D text) {}

    /** A part in its place. */
    record Box(SchemePart part, BoxPlan plan, Rectangle2D area) {
        /** Where the line of a pin reaches the box's edge. */
        Point2D at(Pin pin) {
            Point2D on = plan.pins().get(pin);
            return new Point2D.Double(area.getX() + on.getX(), part.upwards(pin) ? area.getMinY() : area.getMaxY());
        }
    }

    /** A net's tag in its place. */
    record Tag(SchemeNet net, TagPlan plan, Rectangle2D area) {}

    /** A line from a pin's box to the tag of its net, corner by corner. */
    record Wire(String part, Pin pin, List<Point2D> corners) {
        /** Whether it ends at the lower edge of a tag. */
        boolean arrives(Rectangle2D tag) {
            return List.of(corners.get(0), corners.get(corners.size() - 1)).stream()
                    .anyMatch(end -> Math.abs(end.getY() - tag.getMaxY()) < 0.1
                            && end.getX() > tag.getMinX()
                            && end.getX() < tag.getMaxX());
        }

        /** How long it is [mm]. */
        double length() {
            double sum = 0;
            for (int i = 1; i < corners.size(); i++) {
                sum += corners.get(i - 1).distance(corners.get(i));
            }
            return sum;
        }

        /** Whether it runs through an area. */
        boolean meets(Rectangle2D area) {
            for (int i = 1; i < corners.size(); i++) {
                if (area.intersectsLine(new Line2D.Double(corners.get(i - 1), corners.get(i)))) {
                    return true;
                }
            }
            return false;
        }
    }

    /** How often lines of different nets cross. */
    long crossings() {
        return Crossings.of(wires);
    }

    /**
     * What is against it [-]: a larger sheet first, then crossings and long lines, then a pump that is not at the left.
     *
     * @param more height that heading and key take [mm]
     */
    double cost(double more) {
        double pump = frames.isEmpty() ? 0 : frames.get(0).area().getCenterX() / width;
        return 1000.0 * Paper.step(width, height + more) + 3 * crossings() + length() / 100 + 80 * pump;
    }

    private double length() {
        return wires.stream().mapToDouble(Wire::length).sum();
    }
}

package hotidle.plots.scheme;

import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Where lines of one net part, so that a dot tells a branch from a crossing. */
final class Junctions {

    private Junctions() {}

    /** Corners of one line from which, all lines of the net together, more than two ways lead off. */
    static List<Point2D> of(List<Sheet.Wire> net) {
        Set<Point2D> corners = new LinkedHashSet<>();
        net.forEach(wire -> wire.corners().forEach(corner -> corners.add(rounded(corner))));
        Map<Point2D, Set<String>> ways = new LinkedHashMap<>();
        for (Sheet.Wire wire : net) {
            for (int i = 1; i < wire.corners().size(); i++) {
                Point2D a = rounded(wire.corners().get(i - 1));
                Point2D b = rounded(wire.corners().get(i));
                for (Point2D corner : corners) {
                    if (on(a, b, corner)) {
                        lead(ways, corner, a);
                        lead(ways, corner, b);
                    }
                }
            }
        }
        List<Point2D> found = new ArrayList<>();
        ways.forEach((corner, leads) -> {
            if (leads.size() > 2) {
                found.add(corner);
            }
        });
        return found;
    }

    private static void lead(Map<Point2D, Set<String>> ways, Point2D from, Point2D to) {
        if (!from.equals(to)) {
            String way = (int) Math.signum(to.getX() - from.getX()) + " " + (int) Math.signum(to.getY() - from.getY());
            ways.computeIfAbsent(from, key -> new LinkedHashSet<>()).add(way);
        }
    }

    private static boolean on(Point2D a, Point2D b, Point2D at) {
        double cross = (b.getX() - a.getX()) * (at.getY() - a.getY()) - (b.getY() - a.getY()) * (at.getX() - a.getX());
        return Math.abs(cross) < 1e-6
                && at.getX() >= Math.min(a.getX(), b.getX())
                && at.getX() <= Math.max(a.getX(), b.getX())
                && at.getY() >= Math.min(a.getY(), b.getY())
                && at.getY() <= Math.max(a.getY(), b.getY());
    }

    private static Point2D rounded(Point2D at) {
        return new Point2D.Double(Math.round(at.getX() * 100) / 100.0, Math.round(at.getY() * 100) / 100.0);
    }
}

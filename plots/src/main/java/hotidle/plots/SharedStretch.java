package hotidle.plots;

import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * A stretch of a curve with all curves that lie on it: where there are several, each takes its turn, so that none hides another.
 *
 * @param points corners of the stretch, of the first of its curves [px]
 * @param curves numbers of those that lie on it, rising; the curve itself is among them
 */
record SharedStretch(List<Point2D> points, List<Integer> curves) {

    /** Curves whose points lie closer than this look like one (chosen) [px]. */
    private static final double NEAR = 1.6;

    /**
     * Stretches of a curve from left to right; a gap ends one.
     *
     * @param all points of every curve; a point in a gap has no y. Only points of the same number are compared
     */
    static List<SharedStretch> of(List<List<Point2D>> all, int own) {
        List<SharedStretch> found = new ArrayList<>();
        List<Integer> with = List.of();
        int last = -1;
        for (int i = 1; i < all.get(own).size(); i++) {
            if (known(all.get(own), i - 1) && known(all.get(own), i)) {
                List<Integer> here = together(all, own, i);
                if (last != i - 1 || !here.equals(with)) {
                    Point2D first = all.get(here.get(0)).get(i - 1);
                    found.add(new SharedStretch(new ArrayList<>(List.of(first)), here));
                }
                found.get(found.size() - 1).points().add(all.get(here.get(0)).get(i));
                with = here;
                last = i;
            }
        }
        return found;
    }

    /** Those that lie on a curve between two of its points, or on one that does. */
    private static List<Integer> together(List<List<Point2D>> all, int own, int to) {
        TreeSet<Integer> members = new TreeSet<>(List.of(own));
        boolean more = true;
        while (more) {
            more = false;
            for (int other = 0; other < all.size(); other++) {
                int one = other;
                more |= !members.contains(one)
                        && members.stream().anyMatch(member -> near(all.get(member), all.get(one), to))
                        && members.add(one);
            }
        }
        return List.copyOf(members);
    }

    private static boolean near(List<Point2D> one, List<Point2D> other, int to) {
        return to < other.size()
                && one.get(to - 1).distance(other.get(to - 1)) < NEAR
                && one.get(to).distance(other.get(to)) < NEAR;
    }

    private static boolean known(List<Point2D> curve, int at) {
        return !Double.isNaN(curve.get(at).getY());
    }

    Path2D path() {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).getX(), points.get(0).getY());
        points.subList(1, points.size()).forEach(point -> path.lineTo(point.getX(), point.getY()));
        return path;
    }
}

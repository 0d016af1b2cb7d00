package hotidle.plots;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Places texts beside points so that they cover neither each other nor, where that can be had, the curves.
 *
 * <p>Numerics: each text in turn tries six directions at growing distances and a grid over the area, or moves along its level, and takes the
 * cheapest place; the costs are ours.
 */
final class Placement {
    private static final double[] DISTANCES = {9, 20, 34, 50, 70, 94, 122, 154};
    private static final int[][] DIRECTIONS = {{1, -1}, {1, 1}, {-1, -1}, {-1, 1}, {0, -1}, {0, 1}};
    private static final double ON_TEXT = 1000;
    private static final double ON_POINT = 150;
    private static final double ON_CURVE = 300;
    private static final double ON_LIMIT = 400;
    private static final double MARK = 9;
    private static final double LED_ACROSS = 80;
    private static final double CLEAR = 5;
    private static final double SLIDE = 15;
    private static final double ROW = 4;
    private static final double SLID = 0.1;

    private Placement() {}

    /**
     * What has to find a place.
     *
     * @param point what the text belongs to [px]
     * @param width of the text [px]
     * @param height of the text [px]
     * @param level whether it may move along the level to the left of the point
     */
    record Wish(Point2D point, double width, double height, boolean level) {}

    /**
     * Where each text goes.
     *
     * @param wishes one per text
     * @param area   to stay in [px]
     * @param curves to leave free, each as its pieces [px]
     * @param limits lines that no text may lie on [px]
     */
    static List<Rectangle2D> places(
            List<Wish> wishes, Rectangle2D area, List<List<Line2D>> curves, List<Line2D> limits) {
        Field field = new Field(wishes, area, curves, limits, new ArrayList<>());
        Rectangle2D[] places = new Rectangle2D[wishes.size()];
        // those bound to a level have fewer places to choose from
        IntStream.range(0, wishes.size())
                .boxed()
                .sorted(Comparator.comparing(i -> !wishes.get(i).level()))
                .forEach(i -> {
                    places[i] = field.cheapest(wishes.get(i));
                    field.taken().add(places[i]);
                });
        return List.of(places);
    }

    /** Whether a text lies on one before it, since there was no room for both. */
    static boolean covers(List<Rectangle2D> places, int text) {
        return places.subList(0, text).stream().anyMatch(places.get(text)::intersects);
    }

    private static Stream<Rectangle2D> candidates(Wish wish, Rectangle2D area) {
        double x = wish.point().getX();
        double y = wish.point().getY();
        if (wish.level()) {
            double clear = wish.height() / 2 + 2;
            return IntStream.range(0, (int) (area.getWidth() / SLIDE))
                    .mapToObj(i -> x - i * SLIDE - wish.width() / 2)
                    .flatMap(middle ->
                            Stream.of(within(area, wish, middle, y - clear), within(area, wish, middle, y + clear)));
        }
        Stream<Rectangle2D> near = Stream.of(DIRECTIONS)
                .flatMap(way -> Arrays.stream(DISTANCES)
                        .mapToObj(away -> within(
                                area,
                                wish,
                                x + way[0] * (away + wish.width() / 2),
                                y + way[1] * (away + wish.height() / 2))));
        Stream<Rectangle2D> anywhere = IntStream.range(1, (int) (area.getWidth() / SLIDE))
                .boxed()
                .flatMap(column -> IntStream.range(1, (int) (area.getHeight() / ROW))
                        .mapToObj(row ->
                                within(area, wish, area.getMinX() + column * SLIDE, area.getMinY() + row * ROW)));
        return Stream.concat(near, anywhere);
    }

    /** Around the middle, moved sideways into the area. */
    private static Rectangle2D within(Rectangle2D area, Wish wish, double x, double y) {
        double left = Math.max(area.getMinX(), Math.min(x - wish.width() / 2, area.getMaxX() - wish.width()));
        return new Rectangle2D.Double(left, y - wish.height() / 2, wish.width(), wish.height());
    }

    /**
     * What texts must keep off.
     *
     * @param taken by the texts placed so far
     */
    private record Field(
            List<Wish> wishes,
            Rectangle2D area,
            List<List<Line2D>> curves,
            List<Line2D> limits,
            List<Rectangle2D> taken) {

        /** The first of the cheapest places. */
        Rectangle2D cheapest(Wish wish) {
            Rectangle2D best = null;
            double least = Double.POSITIVE_INFINITY;
            for (Rectangle2D place : (Iterable<Rectangle2D>) candidates(wish, area)::iterator) {
                double cost = cost(place, wish, least);
                if (cost < least) {
                    least = cost;
                    best = place;
                }
            }
            return Objects.requireNonNull(best);
        }

        /** The cost of a place; only that it is not below {@code enough}, where that is clear without looking at every curve. */
        private double cost(Rectangle2D place, Wish own, double enough) {
            if (!area.contains(place)) {
                return Double.MAX_VALUE;
            }
            Line2D leader = leader(own, place);
            double away = own.level() ? SLID * (own.point().getX() - place.getMaxX()) : length(leader);
            if (away >= enough) {
                return away;
            }
            double texts = taken.stream().filter(place::intersects).count();
            double led = own.level()
                    ? 0
                    : taken.stream()
                            .filter(other -> other.intersectsLine(leader))
                            .count();
            double marks = wishes.stream()
                    .filter(other -> !other.level())
                    .map(Wish::point)
                    .filter(point -> place.intersects(point.getX() - MARK, point.getY() - MARK, 2 * MARK, 2 * MARK))
                    .count();
            double limited = limits.stream().filter(place::intersectsLine).count();
            double cost = away + ON_TEXT * texts + ON_POINT * marks + LED_ACROSS * led + ON_LIMIT * limited;
            return cost >= enough ? cost : cost + ON_CURVE * crossed(place);
        }

        private double crossed(Rectangle2D place) {
            Rectangle2D wide = new Rectangle2D.Double(
                    place.getX() - CLEAR,
                    place.getY() - CLEAR,
                    place.getWidth() + 2 * CLEAR,
                    place.getHeight() + 2 * CLEAR);
            return curves.stream()
                    .filter(curve -> curve.stream().anyMatch(wide::intersectsLine))
                    .count();
        }
    }

    /** From the point to the nearest place of the text. */
    static Line2D leader(Wish wish, Rectangle2D place) {
        return new Line2D.Double(
                wish.point(),
                new Point2D.Double(
                        Math.max(place.getMinX(), Math.min(wish.point().getX(), place.getMaxX())),
                        Math.max(place.getMinY(), Math.min(wish.point().getY(), place.getMaxY()))));
    }

    static double length(Line2D line) {
        return line.getP1().distance(line.getP2());
    }
}

package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Builds whose line is held at one pressure share a stretch of their curves; each of them is seen there. */
class SharedStretchTest {

    private static List<Point2D> curve(double... heights) {
        double[] x = {0};
        return DoubleStream.of(heights)
                .mapToObj(y -> (Point2D) new Point2D.Double(10 * x[0]++, y))
                .toList();
    }

    private static List<List<Integer>> shared(List<List<Point2D>> all, int own) {
        return SharedStretch.of(all, own).stream().map(SharedStretch::curves).toList();
    }

    @Test
    void buildsHeldAtOnePressureShareTheLevelAndRiseToItApart() {
        List<List<Point2D>> all = List.of(curve(0, 50, 50, 50), curve(20, 50.5, 50, 50), curve(90, 90, 90, 90));
        assertEquals(List.of(List.of(0), List.of(0, 1)), shared(all, 0));
        assertEquals(List.of(List.of(1), List.of(0, 1)), shared(all, 1));
        assertEquals(List.of(List.of(2)), shared(all, 2));
        SharedStretch level = SharedStretch.of(all, 1).get(1);
        assertEquals(all.get(0).subList(1, 4), level.points(), "all run along the first of them");
    }

    @Test
    void whatCrossesIsNotShared() {
        List<List<Point2D>> all = List.of(curve(0, 50, 100), curve(100, 50, 0));
        assertEquals(List.of(List.of(0)), shared(all, 0));
    }

    @Test
    void aGapEndsAStretch() {
        List<List<Point2D>> all = List.of(curve(0, 1, Double.NaN, 3, 4), curve(90, 90, 90, 90, 90));
        List<SharedStretch> found = SharedStretch.of(all, 0);
        assertEquals(2, found.size());
        assertEquals(2, found.get(0).points().size());
        assertEquals(30, found.get(1).points().get(0).getX());
    }

    /** Stripes by turns fill the line and never lie on each other. */
    @Test
    void everyCurveHasItsTurn() {
        List<Color> inks = List.of(Color.RED, Color.GREEN, Color.BLUE);
        BufferedImage image = new BufferedImage(330, 9, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        for (int turn = 0; turn < inks.size(); turn++) {
            g.setPaint(inks.get(turn));
            g.setStroke(LineLook.stripes(turn, inks.size()));
            g.draw(new Line2D.Double(0, 4, 330, 4));
        }
        g.dispose();
        int[] row = image.getRGB(0, 4, 330, 1, null, 0, 330);
        for (Color ink : inks) {
            long seen = Arrays.stream(row).filter(rgb -> rgb == ink.getRGB()).count();
            assertTrue(Math.abs(seen - 110) <= 10, ink + " takes " + seen + " of 330 px");
        }
    }
}

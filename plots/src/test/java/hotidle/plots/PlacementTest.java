package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PlacementTest {
    private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 600, 300);

    private static Placement.Wish wish(double x, double y) {
        return new Placement.Wish(new Point2D.Double(x, y), 150, 18, false);
    }

    @Test
    void textsOfCrowdedPointsDoNotCoverEachOther() {
        List<Placement.Wish> wishes =
                IntStream.range(0, 6).mapToObj(i -> wish(200 + 12 * i, 150)).toList();
        List<Rectangle2D> places = Placement.places(wishes, AREA, List.of(), List.of());
        for (int i = 0; i < places.size(); i++) {
            assertTrue(AREA.contains(places.get(i)));
            for (int j = 0; j < i; j++) {
                assertFalse(places.get(i).intersects(places.get(j)), i + " covers " + j);
            }
        }
    }

    /** Six long names in a flat chart, two of them along its levels: whatever else they lie on, never on each other. */
    @Test
    void longTextsInAFlatChartDoNotCoverEachOther() {
        Rectangle2D flat = new Rectangle2D.Double(0, 0, 660, 150);
        List<Placement.Wish> wishes = List.of(
                new Placement.Wish(new Point2D.Double(12, 70), 320, 18, false),
                new Placement.Wish(new Point2D.Double(92, 70), 170, 18, false),
                new Placement.Wish(new Point2D.Double(165, 26), 230, 18, false),
                new Placement.Wish(new Point2D.Double(12, 25), 310, 18, false),
                new Placement.Wish(new Point2D.Double(660, 25), 290, 18, true),
                new Placement.Wish(new Point2D.Double(660, 70), 80, 18, true));
        List<List<Line2D>> curves = List.of(
                List.of(new Line2D.Double(0, 70, 660, 62)),
                List.of(new Line2D.Double(0, 140, 165, 26), new Line2D.Double(165, 26, 660, 15)));
        List<Line2D> levels = List.of(new Line2D.Double(0, 25, 660, 25), new Line2D.Double(0, 70, 660, 70));
        List<Rectangle2D> places = Placement.places(wishes, flat, curves, levels);
        for (int i = 0; i < places.size(); i++) {
            assertTrue(flat.contains(places.get(i)));
            assertFalse(Placement.covers(places, i), places.toString());
        }
    }

    @Test
    void aTextForWhichThereIsNoRoomIsToldToCoverAnother() {
        Rectangle2D small = new Rectangle2D.Double(0, 0, 200, 30);
        List<Rectangle2D> places = Placement.places(List.of(wish(100, 15), wish(110, 15)), small, List.of(), List.of());
        assertFalse(Placement.covers(places, 0));
        assertTrue(Placement.covers(places, 1));
    }

    @Test
    void textsLeaveTheCurvesFree() {
        Line2D rising = new Line2D.Double(0, 300, 600, 0);
        List<Rectangle2D> places = Placement.places(List.of(wish(300, 150)), AREA, List.of(List.of(rising)), List.of());
        assertFalse(places.get(0).intersectsLine(rising));
    }

    @Test
    void textsStayInTheAreaAtItsCorners() {
        for (Placement.Wish wish : List.of(wish(0, 0), wish(600, 0), wish(0, 300), wish(600, 300))) {
            Rectangle2D place =
                    Placement.places(List.of(wish), AREA, List.of(), List.of()).get(0);
            assertTrue(AREA.contains(place), place.toString());
        }
    }

    /** Dashes behind letters make them hard to read, and a name on its own line hides it. */
    @Test
    void noTextLiesOnALimitLine() {
        Line2D limit = new Line2D.Double(0, 150, 600, 150);
        Line2D other = new Line2D.Double(0, 165, 600, 165);
        Placement.Wish level = new Placement.Wish(new Point2D.Double(600, 150), 150, 18, true);
        List<Rectangle2D> places =
                Placement.places(List.of(wish(300, 158), level), AREA, List.of(), List.of(limit, other));
        for (Rectangle2D place : places) {
            assertFalse(place.intersectsLine(limit) || place.intersectsLine(other), place.toString());
        }
    }

    @Test
    void aTextAlongALevelStandsAtItsEndUnlessACurveIsThere() {
        Placement.Wish level = new Placement.Wish(new Point2D.Double(590, 150), 150, 18, true);
        assertEquals(
                590,
                Placement.places(List.of(level), AREA, List.of(), List.of())
                        .get(0)
                        .getMaxX());
        Line2D steep = new Line2D.Double(560, 0, 560, 300);
        assertTrue(Placement.places(List.of(level), AREA, List.of(List.of(steep)), List.of())
                        .get(0)
                        .getMaxX()
                < 560);
    }
}

package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ContourTest {

    private static final List<Double> XS = List.of(0.0, 1.0, 2.0);
    private static final List<Double> YS = List.of(0.0, 1.0);

    private static List<Line2D> pieces(List<List<Double>> values) {
        return Contour.pieces(
                XS.subList(0, values.get(0).size()),
                YS,
                values.stream()
                        .map(row -> row.stream()
                                .map(least -> new Contour.Spot(least, Map.of()))
                                .toList())
                        .toList(),
                0);
    }

    /** Headroom 4 − 3x − y is a plane, so that the straight pieces lie on it exactly. */
    @Test
    void theLineLiesWhereAPlaneHasItsLevel() {
        List<List<Double>> plane = YS.stream()
                .map(y -> XS.stream().map(x -> 4 - 3 * x - y).toList())
                .toList();
        List<Line2D> pieces = pieces(plane);
        assertTrue(!pieces.isEmpty());
        for (Line2D piece : pieces) {
            assertEquals(0, 4 - 3 * piece.getX1() - piece.getY1(), 1e-12);
            assertEquals(0, 4 - 3 * piece.getX2() - piece.getY2(), 1e-12);
        }
    }

    @Test
    void nothingIsDrawnAcrossAPointThatWasNotSolved() {
        List<List<Double>> gap = List.of(List.of(1.0, -1.0, -1.0), List.of(1.0, Double.NaN, -1.0));
        assertEquals(List.of(), pieces(gap));
        List<List<Double>> whole = List.of(List.of(1.0, -1.0, -1.0), List.of(1.0, -1.0, -1.0));
        assertEquals(1, pieces(whole).size());
    }

    @Test
    void besideMetalContactTheLineStandsHalfWay() {
        List<List<Double>> contact =
                List.of(List.of(9.0, Double.NEGATIVE_INFINITY, -1.0), List.of(9.0, Double.NEGATIVE_INFINITY, -1.0));
        List<Line2D> pieces = pieces(contact);
        assertEquals(1, pieces.size());
        assertEquals(0.5, pieces.get(0).getX1());
        assertEquals(0.5, pieces.get(0).getX2());
    }

    @Test
    void aSaddleHasTwoPiecesThatDoNotCross() {
        List<List<Double>> saddle = List.of(List.of(1.0, -1.0), List.of(-1.0, 2.0));
        List<Line2D> pieces = pieces(saddle);
        assertEquals(2, pieces.size());
        assertTrue(!pieces.get(0).intersectsLine(pieces.get(1)));
    }

    /** Ample clutches fall by 40 % a step from 50 %; oil that stays at 5 % says nothing of where they give out: at 1.25, not at 1.14. */
    @Test
    void theLineStandsWhereTheLimitThatGivesOutDoesSo() {
        List<Contour.Spot> row = XS.stream()
                .map(x -> spot(Map.of("clutch", 50 - 40 * x, "oil", 5.0)))
                .toList();
        List<Line2D> pieces = Contour.pieces(XS, YS, List.of(row, row), 0);
        assertEquals(1, pieces.size());
        assertEquals(1.25, pieces.get(0).getX1(), 1e-12);
        assertEquals(1.25, pieces.get(0).getX2(), 1e-12);
    }

    @Test
    void theFirstOfTwoLimitsThatGiveOutDrawsTheLineWhicheverIsWorseBeyond() {
        List<Contour.Spot> row = List.of(
                spot(Map.of("clutch", 30.0, "oil", 10.0)),
                spot(Map.of("clutch", -90.0, "oil", -10.0)),
                spot(Map.of("clutch", -99.0, "oil", -10.0)));
        for (Line2D piece : Contour.pieces(XS, YS, List.of(row, row), 0)) {
            assertEquals(0.25, piece.getX1(), 1e-12);
        }
    }

    private static Contour.Spot spot(Map<String, Double> limits) {
        return new Contour.Spot(
                limits.values().stream().mapToDouble(x -> x).min().orElseThrow(), limits);
    }
}

package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.List;
import org.junit.jupiter.api.Test;

class ContourTest {

    private static final List<Double> XS = List.of(0.0, 1.0, 2.0);
    private static final List<Double> YS = List.of(0.0, 1.0);

    /** Headroom 4 − 3x − y is a plane, so that the straight pieces lie on it exactly. */
    @Test
    void theLineLiesWhereAPlaneHasItsLevel() {
        List<List<Double>> plane = YS.stream()
                .map(y -> XS.stream().map(x -> 4 - 3 * x - y).toList())
                .toList();
        List<Line2D> pieces = Contour.pieces(XS, YS, plane, 0);
        assertTrue(!pieces.isEmpty());
        for (Line2D piece : pieces) {
            assertEquals(0, 4 - 3 * piece.getX1() - piece.getY1(), 1e-12);
            assertEquals(0, 4 - 3 * piece.getX2() - piece.getY2(), 1e-12);
        }
    }

    @Test
    void nothingIsDrawnAcrossAPointThatWasNotSolved() {
        List<List<Double>> gap = List.of(List.of(1.0, -1.0, -1.0), List.of(1.0, Double.NaN, -1.0));
        assertEquals(List.of(), Contour.pieces(XS, YS, gap, 0));
        List<List<Double>> whole = List.of(List.of(1.0, -1.0, -1.0), List.of(1.0, -1.0, -1.0));
        assertEquals(1, Contour.pieces(XS, YS, whole, 0).size());
    }

    @Test
    void besideMetalContactTheLineStandsHalfWay() {
        List<List<Double>> contact =
                List.of(List.of(9.0, Double.NEGATIVE_INFINITY, -1.0), List.of(9.0, Double.NEGATIVE_INFINITY, -1.0));
        List<Line2D> pieces = Contour.pieces(XS, YS, contact, 0);
        assertEquals(1, pieces.size());
        assertEquals(0.5, pieces.get(0).getX1());
        assertEquals(0.5, pieces.get(0).getX2());
    }

    @Test
    void aSaddleHasTwoPiecesThatDoNotCross() {
        List<List<Double>> saddle = List.of(List.of(1.0, -1.0), List.of(-1.0, 2.0));
        List<Line2D> pieces = Contour.pieces(List.of(0.0, 1.0), YS, saddle, 0);
        assertEquals(2, pieces.size());
        assertTrue(!pieces.get(0).intersectsLine(pieces.get(1)));
    }
}

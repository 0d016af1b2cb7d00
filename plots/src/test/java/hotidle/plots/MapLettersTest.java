package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MapLettersTest {

    private static final Rectangle2D CELL = new Rectangle2D.Double(100, 100, 80, 40);
    private static final Line2D UPRIGHT = new Line2D.Double(140, 0, 140, 300);
    private static final Line2D LEVEL = new Line2D.Double(0, 108, 300, 108);

    private static Rectangle2D place(List<Line2D> zero, List<Line2D> close) {
        return new MapLetters(zero, close, List.of()).place(CELL, 9, 9).orElseThrow();
    }

    @Test
    void aLetterStandsInTheMiddleOfACellWithoutALine() {
        Rectangle2D place = place(List.of(), List.of());
        assertEquals(CELL.getCenterX(), place.getCenterX(), 1e-9);
        assertEquals(CELL.getCenterY(), place.getCenterY(), 1e-9);
    }

    @Test
    void aLetterStandsBesideTheLineOfNoHeadroomInItsCell() {
        Rectangle2D place = place(List.of(UPRIGHT, LEVEL), List.of());
        assertTrue(CELL.contains(place), place.toString());
        assertFalse(place.intersectsLine(UPRIGHT), place.toString());
        assertFalse(place.intersectsLine(LEVEL), place.toString());
    }

    @Test
    void whereBothLinesCannotBeAvoidedTheThickOneIs() {
        Line2D left = new Line2D.Double(107, 0, 107, 300);
        Line2D right = new Line2D.Double(173, 0, 173, 300);
        Rectangle2D place = place(List.of(UPRIGHT), List.of(left, right));
        assertFalse(place.intersectsLine(UPRIGHT), place.toString());
    }

    @Test
    void aCellThatIsFullOfHeavyLinesHasNoLetter() {
        List<Line2D> full = IntStream.range(0, 10)
                .mapToObj(i -> (Line2D) new Line2D.Double(100 + 9 * i, 0, 100 + 9 * i, 300))
                .toList();
        assertEquals(Optional.empty(), new MapLetters(full, List.of(), List.of()).place(CELL, 9, 9));
        assertTrue(
                new MapLetters(List.of(), full, List.of()).place(CELL, 9, 9).isPresent(), "a thin line may be crossed");
    }

    @Test
    void aLetterStandsBesideANameInItsCell() {
        Rectangle2D name = new Rectangle2D.Double(120, 90, 60, 60);
        Rectangle2D place = new MapLetters(List.of(), List.of(), List.of(name))
                .place(CELL, 9, 9)
                .orElseThrow();
        assertFalse(place.intersects(name), place.toString());
        assertEquals(Optional.empty(), new MapLetters(List.of(), List.of(), List.of(CELL)).place(CELL, 9, 9));
    }

    @Test
    void aCellTooSmallForItsLetterHasNone() {
        assertFalse(inked(new Rectangle2D.Double(2, 2, 4, 4)));
        assertTrue(inked(new Rectangle2D.Double(2, 2, 30, 30)));
    }

    private static boolean inked(Rectangle2D cell) {
        BufferedImage picture = new BufferedImage(40, 40, BufferedImage.TYPE_INT_ARGB);
        new MapLetters(List.of(), List.of(), List.of()).draw(picture.createGraphics(), "A", cell);
        return IntStream.range(0, 1600).anyMatch(i -> picture.getRGB(i % 40, i / 40) != 0);
    }
}

package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class LegendTest {
    private final Graphics2D graphics = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics();
    private final FontMetrics font = graphics.getFontMetrics(Style.SMALL);

    private static Legend legend(int entries) {
        return new Legend(Collections.nCopies(entries, new Legend.KeySample("ten letters", (g, box) -> {})));
    }

    @Test
    void rowsGrowWithTheEntries() {
        assertEquals(0, legend(0).height(graphics, 600));
        assertEquals(legend(1).height(graphics, 600), legend(2).height(graphics, 600));
        assertTrue(legend(20).height(graphics, 600) > legend(2).height(graphics, 600));
    }

    @Test
    void longTextsAreBrokenBetweenWordsAndKeepThemAll() {
        String text = "regulates at no speed solved between 400 and 4000 rpm";
        List<String> lines = Legend.broken(text, font, 120);
        assertTrue(lines.size() > 1);
        assertEquals(text, String.join(" ", lines));
        lines.forEach(line -> assertTrue(font.stringWidth(line) <= 120, line));
    }

    @Test
    void aWordThatIsTooWideStandsAlone() {
        assertEquals(List.of("a", "wordthatisfartoowide", "b"), Legend.broken("a wordthatisfartoowide b", font, 20));
    }
}

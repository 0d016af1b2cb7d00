package hotidle.plots;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jfree.chart.text.TextUtils;

/**
 * Up to six charts on one page of {@value #WIDTH} x {@value #HEIGHT} px, on shared scales. Where the number leaves cells
 * over, the first chart takes them; several oil charts share one key of their bands. Needs no screen.
 *
 * @param charts in reading order
 */
public record Picture(List<Chart> charts) {
    /** Width [px]. */
    public static final int WIDTH = 1200;

    /** Height [px]. */
    public static final int HEIGHT = 800;

    /** Endings of file names that can be written. */
    public static final List<String> ENDINGS = List.of("png", "svg");

    private static final double SPARE = 5;

    /** Checks the number of charts and that all bands can be told apart. */
    public Picture {
        charts = List.copyOf(charts);
        Require.that(
                !charts.isEmpty() && charts.size() <= Layout.MOST,
                "a picture shows 1 to " + Layout.MOST + " charts, not " + charts.size());
        int bands = scale(charts).bands().size();
        Require.that(
                bands <= OilChart.MOST_BANDS,
                "the charts of a picture have up to " + OilChart.MOST_BANDS + " different bands together, not "
                        + bands);
    }

    /**
     * The picture as a file's content.
     *
     * @param fileName whose ending tells the format
     * @throws IllegalArgumentException if the ending is neither png nor svg
     */
    public byte[] bytes(String fileName) {
        String ending = fileName.substring(fileName.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        Require.that(
                fileName.contains(".") && ENDINGS.contains(ending),
                "'" + fileName + "' does not end in a known format; known are " + String.join(", ", ENDINGS));
        return ending.equals("png") ? png() : Svg.drawn(WIDTH, HEIGHT, this::paint);
    }

    /**
     * Writes the picture to a temporary file beside the target, then moves it there, so that nothing is left half
     * written.
     *
     * @throws IllegalArgumentException if the ending is neither png nor svg
     */
    public void write(Path target) throws IOException {
        String name = target.getFileName().toString();
        WholeFile.write(bytes(name), target);
    }

    private byte[] png() {
        return Png.drawn(WIDTH, HEIGHT, this::paint);
    }

    /** JFreeChart would draw turned text as outlines; as text it can be searched and read aloud. */
    private void paint(Graphics2D graphics) {
        TextUtils.setUseDrawRotatedStringWorkaround(false);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setPaint(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, HEIGHT);
        Axes scale = scale(charts);
        Rectangle2D page = new Rectangle2D.Double(0, 0, WIDTH, HEIGHT);
        Legend key = scale.key() ? OilDrawing.key(scale.bands()) : new Legend(List.of());
        Style.paint(graphics, page, key);
        double height = key.height(graphics, Style.legendWidth(page));
        List<Rectangle2D> cells = Layout.cells(charts.size(), WIDTH, HEIGHT - height);
        for (int i = 0; i < cells.size(); i++) {
            charts.get(i).paint(graphics, within(cells.get(i)), scale);
        }
    }

    private static Rectangle2D within(Rectangle2D cell) {
        return new Rectangle2D.Double(
                cell.getMinX(), cell.getMinY() + SPARE, cell.getWidth(), cell.getHeight() - 2 * SPARE);
    }

    private static Axes scale(List<Chart> charts) {
        return charts.stream().map(Chart::scale).reduce(Axes::merge).orElseThrow();
    }
}

package hotidle.plots;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jfree.chart.text.TextUtils;

/**
 * Up to six charts on one page, on shared scales. Where the number leaves cells over, the first chart takes them; several oil charts
 * share one key of their bands. On a page too small for all of them the first are shown. Needs no screen.
 *
 * @param charts in reading order
 * @param width  [px], {@value #LEAST} to {@value #MOST}; letters keep their size
 * @param height [px], the same
 */
public record Picture(List<Chart> charts, int width, int height) {
    /** Width where none is asked for [px]. */
    public static final int WIDTH = 1200;

    /** Height where none is asked for [px]. */
    public static final int HEIGHT = 800;

    /** Shortest side that a chart with its legend can be read on [px]. */
    public static final int LEAST = 360;

    /** Longest side [px]. */
    public static final int MOST = 8000;

    /** Endings of file names that can be written. */
    public static final List<String> ENDINGS = List.of("png", "svg", "pdf");

    /** A pixel of 96 to the inch on paper [mm]. */
    private static final double PIXEL = 25.4 / 96;

    private static final double SPARE = 5;

    /** Of the usual size. */
    public Picture(List<Chart> charts) {
        this(charts, WIDTH, HEIGHT);
    }

    /** Checks the size, the number of charts, and that all bands can be told apart. */
    public Picture {
        Require.that(
                Math.min(width, height) >= LEAST && Math.max(width, height) <= MOST,
                "a picture is " + LEAST + " to " + MOST + " px wide and high, not " + width + " x " + height);
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
     * @throws IllegalArgumentException if the ending is none of {@link #ENDINGS}
     */
    public byte[] bytes(String fileName) {
        String ending = fileName.substring(fileName.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        Require.that(
                fileName.contains(".") && ENDINGS.contains(ending),
                "'" + fileName + "' does not end in a known format; known are " + String.join(", ", ENDINGS));
        return switch (ending) {
            case "png" -> png();
            case "pdf" -> pdf();
            default -> svg("");
        };
    }

    /** The same charts in another size. */
    public Picture sized(int otherWidth, int otherHeight) {
        return new Picture(charts, otherWidth, otherHeight);
    }

    /** Those of the charts that can be read on a page of this size: the first, as many as have room. */
    public List<Chart> shown() {
        return charts.subList(
                0, Layout.readable(charts.stream().map(Chart::explained).toList(), rows(), width, height));
    }

    private boolean rows() {
        return charts.stream().anyMatch(RowsChart.class::isInstance);
    }

    /** What it shows: the titles of its charts. */
    public String name() {
        return shown().stream().map(Chart::title).collect(Collectors.joining("; "));
    }

    /**
     * The picture as an element of a page, in UTF-8.
     *
     * @param own added to each of its ids, so that several pictures of a page keep theirs apart; may be empty
     */
    public byte[] svg(String own) {
        return Svg.drawn(width, height, name(), own, this::paint);
    }

    /**
     * Writes the picture to a temporary file beside the target, then moves it there, so that nothing is left half
     * written.
     *
     * @throws IllegalArgumentException if the ending is none of {@link #ENDINGS}
     */
    public void write(Path target) throws IOException {
        String name = target.getFileName().toString();
        WholeFile.write(bytes(name), target);
    }

    private byte[] pdf() {
        return Pdf.drawn(width * PIXEL, height * PIXEL, name(), graphics -> {
            graphics.scale(PIXEL, PIXEL);
            paint(graphics);
        });
    }

    private byte[] png() {
        return Png.drawn(width, height, this::paint);
    }

    /** JFreeChart would draw turned text as outlines; as text it can be searched and read aloud. */
    private void paint(Graphics2D graphics) {
        TextUtils.setUseDrawRotatedStringWorkaround(false);
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setPaint(Color.WHITE);
        graphics.fillRect(0, 0, width, height);
        List<Chart> shown = shown();
        Axes scale = scale(shown);
        Rectangle2D page = new Rectangle2D.Double(0, 0, width, height);
        Legend key = scale.key() ? OilDrawing.key(scale.bands()) : new Legend(List.of());
        Style.paint(graphics, page, key);
        double below = key.height(graphics, Style.legendWidth(page));
        List<Rectangle2D> cells = Layout.cells(shown.size(), rows(), width, height - below);
        for (int i = 0; i < cells.size(); i++) {
            shown.get(i).paint(graphics, within(cells.get(i)), scale);
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

package hotidle.plots.scheme;

import hotidle.plots.Pdf;
import hotidle.plots.Png;
import hotidle.plots.Svg;
import hotidle.plots.WholeFile;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A circuit laid out on paper, ready to be written. Needs no screen; the same circuit gives the same bytes. */
public final class Drawing {

    /** Endings of file names that can be written. */
    public static final List<String> ENDINGS = List.of("svg", "png", "pdf");

    /** Dots of a PNG [1/mm]: 150 to the inch. */
    private static final double DOTS = 150 / 25.4;

    /** A small circuit is drawn larger than life up to this [-]. */
    private static final double LARGEST = 2;

    private final Scheme scheme;
    private final Sheet sheet;
    private final Paper paper;

    /** Lays a circuit out. */
    public Drawing(Scheme scheme) {
        this(scheme, () -> {});
    }

    /**
     * Lays a circuit out for who may stop waiting: it is tried in {@link #tries} ways at most, of which the best is kept.
     *
     * @param step run before each of them, from any thread; what it throws ends the work
     */
    public Drawing(Scheme scheme, Runnable step) {
        this.scheme = scheme;
        sheet = Layered.sheet(scheme, head() + SheetHead.KEY, step);
        paper = Paper.holding(sheet.width(), sheet.height() + head() + SheetHead.KEY);
    }

    /** In so many ways a circuit is laid out at most. */
    public static int tries() {
        return Layered.rounds().stream().mapToInt(List::size).sum();
    }

    /** On which it is drawn. */
    public Paper paper() {
        return paper;
    }

    /** Where everything stands on it. */
    Sheet sheet() {
        return sheet;
    }

    /** How often lines of different nets cross. */
    public long crossings() {
        return sheet.crossings();
    }

    /**
     * The drawing as a file's content.
     *
     * @param fileName whose ending tells the format
     * @throws IllegalArgumentException if the ending is none of {@link #ENDINGS}
     */
    public byte[] bytes(String fileName) {
        String ending = fileName.substring(fileName.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return switch (ending) {
            case "svg" -> svg("");
            case "png" -> png();
            case "pdf" -> Pdf.drawn(paper.width(), paper.height(), scheme.title(), this::paint);
            default ->
                throw new IllegalArgumentException(
                        "'" + fileName + "' does not end in a known format; known are " + String.join(", ", ENDINGS));
        };
    }

    /**
     * The drawing as an element of a page, in UTF-8.
     *
     * @param own added to each of its ids, so that several pictures of a page keep theirs apart; may be empty
     */
    public byte[] svg(String own) {
        return Svg.titled(paper.width(), paper.height(), scheme.title(), own, pieces());
    }

    /**
     * Writes the drawing whole or not at all.
     *
     * @throws IllegalArgumentException if the ending is none of {@link #ENDINGS}
     */
    public void write(Path target) throws IOException {
        WholeFile.write(bytes(target.getFileName().toString()), target);
    }

    private byte[] png() {
        return Png.drawn((int) Math.round(paper.width() * DOTS), (int) Math.round(paper.height() * DOTS), g -> {
            g.scale(DOTS, DOTS);
            paint(g);
        });
    }

    private void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        for (Svg.Piece piece : pieces()) {
            Graphics2D own = (Graphics2D) g.create();
            piece.paint().accept(own);
            own.dispose();
        }
    }

    private List<Svg.Piece> pieces() {
        List<Svg.Piece> pieces = new ArrayList<>();
        pieces.add(new Svg.Piece(scheme.title(), "head", g -> SheetHead.paint(new Pen(g), scheme, paper)));
        double high = paper.height() - 2 * Paper.MARGIN - head() - SheetHead.KEY;
        double factor = factor();
        double x = (paper.width() - factor * sheet.width()) / 2;
        double y = Paper.MARGIN + head() + (high - factor * sheet.height()) / 2;
        for (Svg.Piece piece : new SheetPaint(scheme, sheet).pieces()) {
            pieces.add(piece.painted(g -> {
                g.translate(x, y);
                g.scale(factor, factor);
                piece.paint().accept(g);
            }));
        }
        return pieces;
    }

    /** How much larger than laid out it is drawn, 1 or more; letters with it. */
    double factor() {
        return factor(sheet, head() + SheetHead.KEY);
    }

    /**
     * The same of any.
     *
     * @param more height that heading and key take [mm]
     */
    static double factor(Sheet sheet, double more) {
        Paper paper = Paper.holding(sheet.width(), sheet.height() + more);
        double wide = paper.width() - 2 * Paper.MARGIN;
        double high = paper.height() - 2 * Paper.MARGIN - more;
        return Math.min(LARGEST, Math.min(wide / sheet.width(), high / sheet.height()));
    }

    private double head() {
        return SheetHead.height(scheme);
    }
}

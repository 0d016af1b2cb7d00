package hotidle.plots;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2D;
import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawerDefaultFonts;
import java.awt.Graphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/** A drawing as PDF of one page: text stays text, the same drawing gives the same bytes. */
public final class Pdf {

    /** Points in a millimetre. */
    private static final double POINTS = 72 / 25.4;

    /**
     * They tell which of this computer's fonts they would use for letters that every reader of PDF has of its own; no user asked. Kept,
     * since a logger that nobody keeps forgets its level.
     */
    private static final List<Logger> SILENT = Stream.of("org.apache.pdfbox", "org.apache.fontbox")
            .map(Logger::getLogger)
            .toList();

    static {
        SILENT.forEach(logger -> logger.setLevel(Level.SEVERE));
    }

    private Pdf() {}

    /**
     * What is painted on a page.
     *
     * @param width  of the page [mm]
     * @param height of the page [mm]
     * @param title  of the document
     * @param paint  draws it in millimetres
     */
    public static byte[] drawn(double width, double height, String title, Consumer<Graphics2D> paint) {
        float wide = (float) (width * POINTS);
        float high = (float) (height * POINTS);
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(0L); // otherwise made of the time of day
            document.getDocumentInformation().setTitle(title);
            PDPage page = new PDPage(new PDRectangle(wide, high));
            document.addPage(page);
            PdfBoxGraphics2D graphics = new PdfBoxGraphics2D(document, wide, high);
            graphics.setFontTextDrawer(new PdfBoxGraphics2DFontTextDrawerDefaultFonts());
            graphics.scale(POINTS, POINTS);
            paint.accept(graphics);
            graphics.dispose();
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                content.drawForm(graphics.getXFormObject());
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

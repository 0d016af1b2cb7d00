package hotidle.plots;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.function.Consumer;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawing as SVG: text stays text, the same drawing gives the same bytes. */
public final class Svg {
    private static final String NAMESPACE = "http://www.w3.org/2000/svg";

    /** Decimals of a coordinate [px]; finer than any screen or printer shows. */
    private static final int DECIMALS = 2;

    /** Of each id, so that a page that shows the picture can keep its own. */
    private static final String PREFIX = "hotidle-";

    private Svg() {}

    /**
     * What is painted on a page of this size [px], as UTF-8.
     *
     * @param title of the whole, read aloud
     * @param own   added to each id; may be empty
     */
    static byte[] drawn(int width, int height, String title, String own, Consumer<Graphics2D> paint) {
        try {
            SVGGraphics2D graphics = new SvgPage(context(own));
            graphics.setSVGCanvasSize(new Dimension(width, height));
            paint.accept(graphics);
            Element root = graphics.getRoot();
            ((Element) root.getFirstChild()).setAttribute("id", PREFIX + own + "general");
            root.setAttribute("viewBox", "0 0 " + width + " " + height);
            root.setAttribute("role", "img");
            root.insertBefore(title(root.getOwnerDocument(), title), root.getFirstChild());
            return bytes(root);
        } catch (ParserConfigurationException | TransformerException e) {
            throw new IllegalStateException("the XML writer of this Java cannot write SVG", e);
        }
    }

    /**
     * A piece of a drawing that can be found by its title and read aloud.
     *
     * @param title what it is; never empty
     * @param key   by which a page finds it: tag, wire, lead, box and the names of what it belongs to, apart by blanks; may be empty
     * @param paint draws it
     */
    public record Piece(String title, String key, Consumer<Graphics2D> paint) {
        /** The same drawn otherwise. */
        public Piece painted(Consumer<Graphics2D> other) {
            return new Piece(title, key, other);
        }
    }

    /**
     * Pieces on a page [mm], each a group with a title of its own, as UTF-8.
     *
     * @param title  of the whole
     * @param own    added to each id; may be empty
     * @param pieces in the order in which they lie on each other
     */
    public static byte[] titled(double width, double height, String title, String own, List<Piece> pieces) {
        try {
            SVGGeneratorContext context = context(own);
            Document document = context.getDOMFactory();
            Element root = document.createElementNS(NAMESPACE, "svg");
            root.setAttribute("width", (int) width + "mm");
            root.setAttribute("height", (int) height + "mm");
            root.setAttribute("viewBox", "0 0 " + (int) width + " " + (int) height);
            root.appendChild(title(document, title));
            for (Piece piece : pieces) {
                SVGGraphics2D graphics = new SvgPage(context);
                piece.paint().accept(graphics);
                Element group = graphics.getTopLevelGroup();
                group.insertBefore(title(document, piece.title()), group.getFirstChild());
                if (!piece.key().isEmpty()) {
                    group.setAttribute("data-piece", piece.key());
                }
                root.appendChild(group);
            }
            return bytes(root);
        } catch (ParserConfigurationException | TransformerException e) {
            throw new IllegalStateException("the XML writer of this Java cannot write SVG", e);
        }
    }

    private static Element title(Document document, String text) {
        Element title = document.createElementNS(NAMESPACE, "title");
        title.setTextContent(text);
        return title;
    }

    private static SVGGeneratorContext context(String own) throws ParserConfigurationException {
        Document document = DocumentBuilderFactory.newDefaultNSInstance()
                .newDocumentBuilder()
                .getDOMImplementation()
                .createDocument(NAMESPACE, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(DECIMALS);
        SVGGeneratorContext.GraphicContextDefaults defaults = new SVGGeneratorContext.GraphicContextDefaults();
        defaults.setFont(Style.SMALL);
        context.setGraphicContextDefaults(defaults);
        context.setIDGenerator(new SVGIDGenerator() {
            @Override
            public String generateID(String prefix) {
                return PREFIX + own + super.generateID(prefix);
            }
        });
        return context;
    }

    /** Without Batik's own writer, whose document type makes readers look for it on the network. */
    private static byte[] bytes(Element root) throws TransformerException {
        Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
        writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writer.transform(new DOMSource(root), new StreamResult(out));
        return out.toByteArray();
    }

    /** Measures text in fractions of a pixel: who shows an SVG does not round each letter, as a bitmap may. */
    private static final class SvgPage extends SVGGraphics2D {
        private final Graphics2D measure = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();

        SvgPage(SVGGeneratorContext context) {
            super(context, false);
            measure.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        }

        @Override
        public FontMetrics getFontMetrics(Font font) {
            return measure.getFontMetrics(font);
        }
    }
}

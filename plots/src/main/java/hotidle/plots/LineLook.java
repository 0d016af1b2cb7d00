package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * How a curve looks; each look differs from the others in colour, dashes and marker, so that any one of them is enough.
 *
 * @param colour of line and marker
 * @param dashes lengths of stroke and gap by turns [px]; empty for a full line
 * @param marker around the origin [px]
 */
record LineLook(Color colour, List<Float> dashes, Shape marker) {
    private static final float WIDTH = 2.2f;
    private static final double R = 4;

    /** Length of a stripe and width of a line in stripes [px]. */
    private static final float STRIPE = 11;

    private static final float SHARED = 3;

    /** In the order of use; the first four lie at least 11 apart in lightness L*. */
    static final List<LineLook> ALL = List.of(
            new LineLook(Palette.BLACK, List.of(), new Ellipse2D.Double(-R, -R, 2 * R, 2 * R)),
            new LineLook(Palette.BLUE, List.of(12f, 5f), square()),
            new LineLook(Palette.ORANGE, List.of(3f, 4f), triangle()),
            new LineLook(Palette.BLUISH_GREEN, List.of(14f, 4f, 3f, 4f), turned(square())),
            new LineLook(Palette.VERMILLION, List.of(20f, 6f), turned(plus())),
            new LineLook(Palette.REDDISH_PURPLE, List.of(10f, 4f, 3f, 4f, 3f, 4f), plus()));

    BasicStroke stroke() {
        if (dashes.isEmpty()) {
            return new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
        }
        float[] lengths = new float[dashes.size()];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = dashes.get(i);
        }
        return new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }

    /**
     * Of a stretch that several curves share: stripes by turns.
     *
     * @param turn of this curve, from 0
     * @param of   how many share it
     */
    static BasicStroke stripes(int turn, int of) {
        float[] lengths = {STRIPE, (of - 1) * STRIPE};
        return new BasicStroke(
                SHARED, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, (of - turn) % of * STRIPE);
    }

    /** The colour for text: dark enough to read on white. */
    Color ink() {
        return Palette.mix(colour, Palette.lightness(colour) > 50 ? 0.4 : 0, Palette.BLACK);
    }

    private static Shape square() {
        return new Rectangle2D.Double(-R, -R, 2 * R, 2 * R);
    }

    private static Shape triangle() {
        Path2D path = new Path2D.Double();
        path.moveTo(0, -1.2 * R);
        path.lineTo(1.2 * R, R);
        path.lineTo(-1.2 * R, R);
        path.closePath();
        return path;
    }

    private static Shape plus() {
        Path2D path = new Path2D.Double();
        path.append(new Rectangle2D.Double(-1.3 * R, -1.3, 2.6 * R, 2.6), false);
        path.append(new Rectangle2D.Double(-1.3, -1.3 * R, 2.6, 2.6 * R), false);
        return path;
    }

    private static Shape turned(Shape shape) {
        return AffineTransform.getRotateInstance(Math.PI / 4).createTransformedShape(shape);
    }
}

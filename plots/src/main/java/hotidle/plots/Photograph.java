package hotidle.plots;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * A photograph made small enough for a page: turned as it was taken, scaled down, stored as JPEG. What the camera wrote beside it, such
 * as the place, is left out.
 */
public final class Photograph {

    /** Longest side on a page [px] (chosen: twice as fine as a column of a printed page needs). */
    public static final int LONGEST = 1000;

    /** Quality of the JPEG (chosen) [-]. */
    private static final float QUALITY = 0.8f;

    private Photograph() {}

    /** The photograph as JPEG; empty where the bytes are no picture that Java reads. */
    public static Optional<byte[]> reduced(byte[] file) {
        try {
            ImageIO.setUseCache(false);
            BufferedImage image = ImageIO.read(new ByteArrayInputStream(file));
            return image == null ? Optional.empty() : Optional.of(jpeg(scaled(image, CameraTurn.of(file))));
        } catch (IOException | IllegalArgumentException broken) {
            return Optional.empty();
        }
    }

    private static BufferedImage scaled(BufferedImage image, CameraTurn turn) {
        BufferedImage small = halved(image);
        double wide = turn.across() ? small.getHeight() : small.getWidth();
        double high = turn.across() ? small.getWidth() : small.getHeight();
        double scale = Math.min(1, LONGEST / Math.max(wide, high));
        AffineTransform place = AffineTransform.getScaleInstance(scale, scale);
        place.concatenate(turn.on(small.getWidth(), small.getHeight()));
        return drawn(small, place, wide * scale, high * scale);
    }

    /** Bilinear drawing looks at four dots: where more than that become one, some would be left out. */
    private static BufferedImage halved(BufferedImage image) {
        BufferedImage small = image;
        while (Math.max(small.getWidth(), small.getHeight()) > 2 * LONGEST) {
            small = drawn(
                    small, AffineTransform.getScaleInstance(0.5, 0.5), small.getWidth() / 2.0, small.getHeight() / 2.0);
        }
        return small;
    }

    private static BufferedImage drawn(BufferedImage image, AffineTransform place, double width, double height) {
        BufferedImage page = new BufferedImage(
                (int) Math.max(1, Math.round(width)),
                (int) Math.max(1, Math.round(height)),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D g = page.createGraphics();
        g.setPaint(Color.WHITE);
        g.fillRect(0, 0, page.getWidth(), page.getHeight());
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.drawImage(image, place, null);
        g.dispose();
        return page;
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(QUALITY);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }
}

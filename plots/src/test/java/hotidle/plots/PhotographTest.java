package hotidle.plots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** A picture with a red corner on its upper left as it was taken, whichever way the camera stored it. */
class PhotographTest {

    private static byte[] file(int width, int height, String format) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setPaint(Color.GREEN);
        g.fillRect(0, 0, width, height);
        g.setPaint(Color.RED);
        g.fillRect(0, 0, width / 2, height / 2);
        g.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    /** The same with the camera's segment in front. */
    private static byte[] turned(byte[] jpeg, int code, ByteOrder order) {
        ByteBuffer tiff = ByteBuffer.allocate(26).order(order);
        tiff.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
        tiff.putShort((short) 42).putInt(8).putShort((short) 1);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) code)
                .putShort((short) 0);
        ByteBuffer out = ByteBuffer.allocate(jpeg.length + 36);
        out.putShort((short) 0xffd8).putShort((short) 0xffe1).putShort((short) 34);
        out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(tiff.array());
        return out.put(jpeg, 2, jpeg.length - 2).array();
    }

    private static BufferedImage reduced(byte[] file) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(Photograph.reduced(file).orElseThrow()));
    }

    private static boolean red(BufferedImage image, double x, double y) {
        Color there = new Color(image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight())));
        return there.getRed() > there.getGreen();
    }

    @Test
    void aLargePhotographGetsSmallAndASmallOneKeepsItsSize() throws IOException {
        byte[] large = file(4000, 3000, "jpg");
        BufferedImage page = reduced(large);
        assertEquals(Photograph.LONGEST, page.getWidth());
        assertEquals(750, page.getHeight());
        assertTrue(red(page, 0.2, 0.2) && !red(page, 0.8, 0.2) && !red(page, 0.2, 0.8));
        assertEquals(300, reduced(file(300, 200, "png")).getWidth());
    }

    /** The corner that was upper left when it was taken, by where the tag says the first row and column lie. */
    @Test
    void itStandsAsItWasTaken() throws IOException {
        List<double[]> corners = List.of(
                new double[] {0.2, 0.2},
                new double[] {0.8, 0.2},
                new double[] {0.8, 0.8},
                new double[] {0.2, 0.8},
                new double[] {0.2, 0.2},
                new double[] {0.8, 0.2},
                new double[] {0.8, 0.8},
                new double[] {0.2, 0.8});
        byte[] jpeg = file(400, 300, "jpg");
        for (int code = 1; code <= 8; code++) {
            for (ByteOrder order : List.of(ByteOrder.LITTLE_ENDIAN, ByteOrder.BIG_ENDIAN)) {
                BufferedImage page = reduced(turned(jpeg, code, order));
                assertEquals(code > 4 ? 300 : 400, page.getWidth(), "code " + code);
                double[] corner = corners.get(code - 1);
                assertTrue(red(page, corner[0], corner[1]), "code " + code);
                assertTrue(!red(page, 1 - corner[0], 1 - corner[1]), "code " + code);
            }
        }
    }

    @Test
    void whatTheCameraWroteBesideItIsLeftOut() throws IOException {
        byte[] with = turned(file(400, 300, "jpg"), 1, ByteOrder.BIG_ENDIAN);
        assertTrue(new String(with, StandardCharsets.ISO_8859_1).contains("Exif"));
        byte[] page = Photograph.reduced(with).orElseThrow();
        assertTrue(!new String(page, StandardCharsets.ISO_8859_1).contains("Exif"));
    }

    @Test
    void aFileThatIsNoPictureIsNone() throws IOException {
        assertTrue(Photograph.reduced("no picture".getBytes(StandardCharsets.UTF_8))
                .isEmpty());
        assertTrue(Photograph.reduced(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff})
                .isEmpty());
        byte[] jpeg = file(40, 30, "jpg");
        assertTrue(Photograph.reduced(java.util.Arrays.copyOf(jpeg, 30)).isEmpty());
    }

    /** Another number of the tag, or none at all, turns nothing. */
    @Test
    void aTagThatSaysNothingTurnsNothing() throws IOException {
        byte[] jpeg = file(400, 300, "jpg");
        assertEquals(400, reduced(turned(jpeg, 77, ByteOrder.BIG_ENDIAN)).getWidth());
        byte[] other = turned(jpeg, 6, ByteOrder.BIG_ENDIAN);
        other[23] = 0x11; // another tag
        assertEquals(400, reduced(other).getWidth());
        assertEquals(new CameraTurn(1), CameraTurn.of(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff}));
    }
}

package hotidle.plots;

import java.awt.geom.AffineTransform;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How a picture has to be turned to stand as it was taken.
 *
 * <pre>
 * Source    tag Orientation (0x0112) of the Exchangeable image file format, CIPA DC-008, §4.6.4 (from memory)
 * </pre>
 *
 * @param code 1 to 8; 1 where nothing is to be done
 */
record CameraTurn(int code) {

    private static final int APP1 = 0xe1;
    private static final int SCAN = 0xda;
    private static final int ORIENTATION = 0x0112;
    private static final int ENTRY = 12;
    private static final int MOST = 8;
    private static final String EXIF = "Exif\0\0";

    /** What stands in a JPEG file; nothing to be done where it says nothing, or is another kind of file. */
    static CameraTurn of(byte[] file) {
        try {
            return new CameraTurn(code(ByteBuffer.wrap(file)));
        } catch (IndexOutOfBoundsException cut) {
            return new CameraTurn(1);
        }
    }

    /** Segment by segment: marker, length, content. */
    private static int code(ByteBuffer file) {
        int at = file.getShort(0) == (short) 0xffd8 ? 2 : file.capacity();
        while (at < file.capacity() && (file.get(at + 1) & 0xff) != SCAN) {
            int length = file.getShort(at + 2) & 0xffff;
            if ((file.get(at + 1) & 0xff) == APP1
                    && text(file, at + 4, EXIF.length()).equals(EXIF)) {
                return tag(file, at + 4 + EXIF.length());
            }
            at += 2 + length;
        }
        return 1;
    }

    private static int tag(ByteBuffer file, int start) {
        ByteBuffer in = file.duplicate()
                .order(text(file, start, 2).equals("II") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int first = start + in.getInt(start + 4);
        int entries = in.getShort(first) & 0xffff;
        for (int i = 0; i < entries; i++) {
            int entry = first + 2 + ENTRY * i;
            if ((in.getShort(entry) & 0xffff) == ORIENTATION) {
                int code = in.getShort(entry + 8);
                return code >= 1 && code <= MOST ? code : 1;
            }
        }
        return 1;
    }

    private static String text(ByteBuffer file, int at, int length) {
        byte[] bytes = new byte[length];
        for (int i = 0; i < length; i++) {
            bytes[i] = file.get(at + i);
        }
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    /** Whether width and height change places. */
    boolean across() {
        return code > 4;
    }

    /** From a dot of the file to where it stands. */
    AffineTransform on(double width, double height) {
        return switch (code) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
            case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
            default -> new AffineTransform();
        };
    }
}

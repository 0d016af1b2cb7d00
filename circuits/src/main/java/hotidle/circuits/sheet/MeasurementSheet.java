package hotidle.circuits.sheet;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * A measurement sheet as saved by a spreadsheet.
 *
 * @param fileName what it is called in messages
 * @param text     what stands in it
 */
public record MeasurementSheet(String fileName, String text) {

    /** Longest sheet [characters]; one of two hundred fits has a tenth of it. */
    public static final int LONGEST = 1_000_000;

    private static final Charset OLDER = Charset.forName("windows-1252");

    /** The mark of UTF-8 taken for the older code. */
    private static final String MISREAD_MARK = "\u00EF\u00BB\u00BF";

    /** A sheet from its bytes: UTF-8, UTF-16 with its mark, or what spreadsheets of western Europe and America save. */
    public static MeasurementSheet of(String fileName, byte[] bytes) {
        int mark = bytes.length < 2 ? 0 : ((bytes[0] & 0xff) << 8) | (bytes[1] & 0xff);
        if (mark == 0xfffe || mark == 0xfeff) {
            return new MeasurementSheet(fileName, new String(bytes, StandardCharsets.UTF_16));
        }
        try {
            return new MeasurementSheet(fileName, unmarked(utf8(bytes)));
        } catch (CharacterCodingException older) {
            return new MeasurementSheet(fileName, new String(bytes, OLDER));
        }
    }

    private static String utf8(byte[] bytes) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    /**
     * Without the mark at its beginning. A spreadsheet that was told the wrong code on opening shows the mark as three letters and
     * saves those: then what it read wrongly is read again.
     */
    private static String unmarked(String text) {
        if (text.startsWith("\uFEFF")) {
            return text.substring(1);
        }
        if (!text.startsWith(MISREAD_MARK)) {
            return text;
        }
        try {
            return utf8(text.getBytes(OLDER)).substring(1);
        } catch (CharacterCodingException mixed) {
            // something was typed in since, which was right as it stood
            return text.substring(MISREAD_MARK.length());
        }
    }
}

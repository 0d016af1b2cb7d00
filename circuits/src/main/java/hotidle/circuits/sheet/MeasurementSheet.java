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

    /** A sheet from its bytes: UTF-8, UTF-16 with its mark, or what spreadsheets of western Europe and America save. */
    public static MeasurementSheet of(String fileName, byte[] bytes) {
        int mark = bytes.length < 2 ? 0 : ((bytes[0] & 0xff) << 8) | (bytes[1] & 0xff);
        if (mark == 0xfffe || mark == 0xfeff) {
            return new MeasurementSheet(fileName, new String(bytes, StandardCharsets.UTF_16));
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return new MeasurementSheet(fileName, text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException older) {
            return new MeasurementSheet(fileName, new String(bytes, Charset.forName("windows-1252")));
        }
    }
}

package hotidle.cli;

import hotidle.answer.page.Figure;
import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.text.Nearest;
import hotidle.plots.Photograph;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A small file of what stands on each of a shop's reports: a row each of a word and what belongs to it, parted by commas, semicolons
 * or tabs, as a spreadsheet saves it.
 *
 * <pre>
 * shop,Bench and Sons
 * unit,4711
 * photograph,pump.jpg,Pump cover as it came in
 * </pre>
 *
 * @param shop        who made it; empty where the file says nothing
 * @param unit        which one on the bench; the same
 * @param photographs in the order of the file
 */
record LetterheadFile(String shop, String unit, List<Figure> photographs) {

    private static final List<String> WORDS = List.of("shop", "unit", "photograph");

    /** More would make the page too large to send (chosen). */
    private static final int MOST_PHOTOGRAPHS = 6;

    /** No letterhead. */
    static final LetterheadFile NONE = new LetterheadFile("", "", List.of());

    /**
     * Reads it; {@code inputs} gets it and its photographs.
     *
     * @throws WrongInputException where it, or a photograph of it, is not there or cannot be read
     */
    static LetterheadFile read(Path file, ReadInputs inputs) {
        byte[] content = Circuits.bytes(file, "--letterhead ");
        inputs.add(file.toString(), content);
        String shop = "";
        String unit = "";
        List<Figure> photographs = new ArrayList<>();
        for (CSVRecord row : rows(MeasurementSheet.of(file.toString(), content).text(), file)) {
            String word = row.get(0).toLowerCase(Locale.ROOT);
            String said = row.size() > 1 ? row.get(1) : "";
            if (said.isEmpty() || !WORDS.contains(word)) {
                throw wrong(file, row, said);
            }
            switch (word) {
                case "shop" -> shop = said;
                case "unit" -> unit = said;
                default -> photographs.add(photograph(file, said, row.size() > 2 ? row.get(2) : "", inputs));
            }
        }
        if (photographs.size() > MOST_PHOTOGRAPHS) {
            throw new WrongInputException("hotidle: --letterhead " + file + " has " + photographs.size()
                    + " photographs\nmend: leave the " + MOST_PHOTOGRAPHS + " that show most");
        }
        return new LetterheadFile(shop, unit, photographs);
    }

    private static List<CSVRecord> rows(String text, Path file) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(separator(text))
                .setTrim(true)
                .get();
        try (CSVParser parser = CSVParser.parse(text, format)) {
            return parser.getRecords().stream()
                    .filter(row -> row.stream().anyMatch(cell -> !cell.isBlank()))
                    .toList();
        } catch (IOException | UncheckedIOException broken) {
            throw new WrongInputException("hotidle: --letterhead " + file + " cannot be read: " + broken.getMessage()
                    + "\nmend: save it again from the spreadsheet as CSV");
        }
    }

    /** What stands behind the first word. */
    private static char separator(String text) {
        return (char) text.chars()
                .filter(one -> one == ',' || one == ';' || one == '\t')
                .findFirst()
                .orElse(',');
    }

    private static WrongInputException wrong(Path file, CSVRecord row, String said) {
        String word = row.get(0).toLowerCase(Locale.ROOT);
        String line = "hotidle: --letterhead " + file + ", row " + row.getRecordNumber() + ": ";
        return WORDS.contains(word) && said.isEmpty()
                ? new WrongInputException(line + word + " has nothing behind it\nmend: write " + word
                        + (word.equals("photograph") ? ",pump.jpg,Pump cover as it came in" : ",what belongs there"))
                : new WrongInputException(
                        line + "unknown word '" + row.get(0) + "'\nmend: " + Nearest.mend(row.get(0), WORDS));
    }

    /** A file beside the letterhead's. */
    private static Figure photograph(Path letterhead, String name, String caption, ReadInputs inputs) {
        Path file = letterhead.resolveSibling(name);
        byte[] content = Circuits.bytes(file, "photograph ");
        inputs.add(file.toString(), content);
        byte[] reduced = Photograph.reduced(content)
                .orElseThrow(() -> new WrongInputException("hotidle: photograph " + file
                        + " is no picture that can be read\nmend: save it as .jpg or .png"));
        return Figure.photograph(Base64.getEncoder().encodeToString(reduced), caption.isEmpty() ? name : caption);
    }
}

package hotidle.cli;

import hotidle.circuits.text.Nearest;
import hotidle.plots.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** Answers to the questions of {@code new}, as rows of a CSV file. */
final class AnswersFile {

    private static final String MARK = "\uFEFF";

    private static final String HEAD = "question";

    private AnswersFile() {}

    /**
     * Answers by question.
     *
     * @throws WrongInputException where it cannot be read, or a row is no question with its answer
     */
    static Map<String, String> read(Path file, Set<String> questions) {
        Map<String, String> answers = new LinkedHashMap<>();
        try (CSVParser rows = CSVParser.parse(text(file), CSVFormat.RFC4180)) {
            for (CSVRecord row : rows) {
                String question = row.get(0).strip();
                if (question.isEmpty() || (row.getRecordNumber() == 1 && question.equals(HEAD))) {
                    continue;
                }
                if (!questions.contains(question)) {
                    throw new WrongInputException("hotidle: " + file + ", row " + row.getRecordNumber() + ": "
                            + question + " is no question\nmend: " + Nearest.mend(question, questions));
                }
                String answer = row.size() > 1 ? row.get(1).strip() : "";
                if (!answer.isEmpty()) {
                    answers.put(question, answer);
                }
            }
            return answers;
        } catch (IOException e) {
            throw wrong(file, e);
        } catch (UncheckedIOException e) {
            throw wrong(file, e.getCause());
        }
    }

    /**
     * Writes answers, in place of those that it has.
     *
     * @throws WrongInputException where it cannot be written
     */
    static void write(Path file, Map<String, String> answers) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter rows = new CSVPrinter(text, CSVFormat.RFC4180)) {
            rows.printRecord(HEAD, "answer");
            for (Map.Entry<String, String> one : answers.entrySet()) {
                rows.printRecord(one.getKey(), one.getValue());
            }
            rows.flush();
            WholeFile.write(text.toString().getBytes(StandardCharsets.UTF_8), file);
        } catch (IOException e) {
            throw new WrongInputException("hotidle: the answers cannot be kept in " + file + ": " + FileReason.of(e));
        }
    }

    /** Its text without the mark that spreadsheets put in front. */
    private static String text(Path file) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        return text.startsWith(MARK) ? text.substring(MARK.length()) : text;
    }

    private static WrongInputException wrong(Path file, IOException why) {
        return new WrongInputException("hotidle: --answers " + file + " cannot be read: " + FileReason.of(why));
    }
}

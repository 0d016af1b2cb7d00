package hotidle.cli;

import hotidle.circuits.text.Nearest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Answers to the questions of {@code new}, as rows of a CSV file. */
final class AnswersFile {

    private AnswersFile() {}

    /**
     * Answers by question.
     *
     * @throws WrongInputException where it cannot be read, or a row is no question with its answer
     */
    static Map<String, String> read(Path file, Set<String> questions) {
        Map<String, String> answers = new LinkedHashMap<>();
        try (CSVParser rows = CSVParser.parse(Files.readString(file, StandardCharsets.UTF_8), CSVFormat.RFC4180)) {
            for (CSVRecord row : rows) {
                String question = row.get(0).strip();
                if (question.isEmpty() || (row.getRecordNumber() == 1 && question.equals("question"))) {
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
            throw new WrongInputException("hotidle: --answers " + file + " cannot be read: " + FileReason.of(e));
        }
    }
}

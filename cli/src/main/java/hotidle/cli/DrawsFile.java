package hotidle.cli;

import hotidle.study.Judgement;
import hotidle.study.spread.DrawnUnit;
import hotidle.study.spread.SpreadQuestion;
import hotidle.study.spread.SpreadRun;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A row for each unit drawn, written as it comes; nothing is kept. */
final class DrawsFile implements SpreadRun.UnitTaker, AutoCloseable {

    private final SpreadQuestion question;
    private final CSVPrinter rows;
    private final Path file;
    private final List<Judgement.Key> keys;

    private DrawsFile(SpreadQuestion question, List<Judgement.Key> keys, CSVPrinter rows, Path file) {
        this.question = question;
        this.keys = keys;
        this.rows = rows;
        this.file = file;
    }

    /** A new file with its head; nothing is written where none was named. */
    static DrawsFile of(Path file, SpreadQuestion question, List<Judgement.Key> keys) {
        if (file == null) {
            return new DrawsFile(question, keys, null, null);
        }
        NewFile.check("--draws", file);
        try {
            Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            CSVFormat lines =
                    CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
            DrawsFile draws = new DrawsFile(question, keys, new CSVPrinter(writer, lines), file);
            draws.head();
            return draws;
        } catch (IOException e) {
            throw cannot(file, e);
        } catch (UncheckedIOException e) {
            throw cannot(file, e.getCause());
        }
    }

    private void head() {
        List<String> head = new ArrayList<>(List.of("unit", "possible", "unsolved"));
        question.sizes().forEach(size -> head.add(size.size().name()));
        keys.forEach(key -> head.add(key.kind().word() + " " + key.part() + " " + key.duty()));
        write(head);
    }

    @Override
    public void take(long number, DrawnUnit unit) {
        if (rows == null) {
            return;
        }
        List<String> row = new ArrayList<>(
                List.of(Long.toString(number), unit.impossible() ? "no" : "yes", String.join(" ", unit.unsolved())));
        for (int i = 0; i < question.sizes().size(); i++) {
            row.add(Double.toString(question.sizes().get(i).quantile(unit.shares()[i])));
        }
        keys.forEach(key -> row.add(number(unit.headroom(key))));
        write(row);
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Double.toString(value) : "";
    }

    private void write(List<String> row) {
        if (rows == null) {
            return;
        }
        try {
            rows.printRecord(row);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        if (rows == null) {
            return;
        }
        try {
            rows.close();
        } catch (IOException e) {
            throw cannot(file, e);
        }
    }

    static WrongInputException cannot(Path file, IOException e) {
        return new WrongInputException("hotidle: --draws " + file + " cannot be written: " + FileReason.of(e));
    }
}

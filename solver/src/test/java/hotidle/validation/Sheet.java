package hotidle.validation;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes the rows as VALIDATION.md. */
final class Sheet {

    private Sheet() {}

    static String of(List<Row> rows) {
        long found = count(rows, Source.Read.FOUND);
        long memory = count(rows, Source.Read.MEMORY);
        StringBuilder text = new StringBuilder("# The solver against published values\n\n")
                .append(
                        "Written by a test run; do not edit. `ValidationTest` computes every row anew, fails where one leaves ")
                .append(
                        "its tolerance, and compares this sheet with what it computed; `-Dhotidle.rewrite=true` writes it.\n\n")
                .append(rows.size())
                .append(" rows, ")
                .append(found + memory)
                .append(" from a publication that can be looked up. For ")
                .append(found)
                .append(" of them the source was read (*found*), ")
                .append(memory)
                .append(" are quoted *from memory*. ")
                .append(rows.size() - found - memory)
                .append(" are from a library's code or tests. ")
                .append(rows.stream().filter(Row::disagrees).count())
                .append(" do not agree and say so.\n\n")
                .append("*Tolerance* is half a unit of the last printed digit, unless a reason stands beside it. ")
                .append("*Difference* is ours less published.\n");
        Map<String, List<Row>> parts =
                rows.stream().collect(Collectors.groupingBy(Row::part, LinkedHashMap::new, Collectors.toList()));
        parts.forEach((part, own) -> {
            text.append("\n## ").append(part).append("\n\n");
            text.append(
                    "| quantity | inputs | published | ours | difference | tolerance | source | found or from memory |\n");
            text.append("| --- | --- | --- | --- | --- | --- | --- | --- |\n");
            own.forEach(row -> line(text, row));
        });
        return text.toString();
    }

    private static long count(List<Row> rows, Source.Read read) {
        return rows.stream().filter(row -> row.source().read() == read).count();
    }

    private static void line(StringBuilder text, Row row) {
        String unit = row.unit().isEmpty() ? "" : " " + row.unit();
        cell(text, row.quantity());
        cell(text, row.inputs());
        cell(text, plain(row.published()) + unit);
        cell(text, plain(row.shown()) + unit);
        cell(text, difference(row));
        cell(text, "±" + plain(Row.rounded(row.tolerance(), 2)) + (row.why().isEmpty() ? "" : ": " + row.why()));
        cell(text, row.source().text());
        cell(text, row.source().read().label());
        text.append("|\n");
    }

    private static void cell(StringBuilder text, String content) {
        text.append("| ").append(content.replace("|", "\\|")).append(' ');
    }

    /** In the unit of the row to the digits shown, and in per cent to hundredths. */
    private static String difference(Row row) {
        BigDecimal percent = BigDecimal.valueOf(100 * row.share()).setScale(2, RoundingMode.HALF_EVEN);
        String sign = row.difference().signum() > 0 ? "+" : "";
        return sign + plain(row.difference()) + " (" + (percent.signum() > 0 ? "+" : "") + percent + " %)";
    }

    private static String plain(BigDecimal value) {
        double size = Math.abs(value.doubleValue());
        return size != 0 && (size < 1e-4 || size >= 1e7) ? value.toString() : value.toPlainString();
    }
}

package hotidle.answer.window;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.WindowPhrase;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The set pressures that each limit of a build allows, as rows. */
record WindowRows(Quantity.UnitSystem units, WindowAnswer.BuildWindow build) {

    /** Of the rows on the screen. */
    static final List<String> SHOWN = List.of("limit", "part", "from", "else fails at", "to", "else fails at");

    /** In place of a pressure where a limit holds nowhere. */
    private static final String NONE = "none";

    /** In place of a limit where all of them are meant. */
    private static final String ALL = "all";

    /** Of the rows for the spreadsheet. */
    static List<String> head(Quantity.UnitSystem units) {
        String psi = Quantity.PRESSURE.in(units).unit();
        return List.of("build", "limit", "part", "from " + psi, "fails below at", "to " + psi, "fails above at");
    }

    /** A row a limit and range; the two limits of a clutch that are one and the same in one row. */
    List<List<String>> shown() {
        List<List<String>> rows = new ArrayList<>();
        List<List<String>> holding = List.of();
        for (Window.Span span : build.window().spans()) {
            List<List<String>> cells = cells(span);
            if (span.kind() == Margin.Kind.APPLY_SLIDING && cells.equals(holding)) {
                int from = rows.size() - cells.size();
                for (int i = from; i < rows.size(); i++) {
                    rows.set(i, labelled(LimitPhrase.APPLY_BOTH, cells.get(i - from)));
                }
            } else {
                cells.forEach(row -> rows.add(labelled(label(span), row)));
            }
            holding = cells;
        }
        return rows;
    }

    private static String label(Window.Span span) {
        return LimitPhrase.label(span.kind()) + (span.undecided().isEmpty() ? "" : WindowPhrase.UNDECIDED);
    }

    private static List<String> labelled(String label, List<String> cells) {
        List<String> row = new ArrayList<>(List.of(label));
        row.addAll(cells);
        return row;
    }

    private List<List<String>> cells(Window.Span span) {
        if (span.ranges().isEmpty()) {
            return List.of(List.of(span.part(), NONE, duty(span.worst()), NONE, duty(span.worst())));
        }
        return span.ranges().stream()
                .map(range -> List.of(
                        span.part(),
                        (range.lowBy().isEmpty() ? "<= " : "") + Quantity.PRESSURE.with(units, range.low()),
                        duty(range.lowBy()),
                        (range.highBy().isEmpty() ? ">= " : "") + Quantity.PRESSURE.with(units, range.high()),
                        duty(range.highBy())))
                .toList();
    }

    /** A row a limit and range, and one for each range in which all hold, under {@link #head}. */
    List<List<String>> all() {
        List<List<String>> rows = new ArrayList<>();
        for (Window.Span span : build.window().spans()) {
            String limit = span.kind().word();
            span.ranges().forEach(range -> rows.add(row(limit, span.part(), range)));
            if (span.ranges().isEmpty()) {
                String at = duty(span.worst());
                rows.add(List.of(build.name(), limit, span.part(), NONE, at, NONE, at));
            }
        }
        build.window().all().forEach(range -> rows.add(row(ALL, "", range)));
        return rows;
    }

    private List<String> row(String limit, String part, Window.PressureRange range) {
        return List.of(
                build.name(),
                limit,
                part,
                (range.lowBy().isEmpty() ? "<=" : "") + Quantity.PRESSURE.number(units, range.low()),
                duty(range.lowBy()),
                (range.highBy().isEmpty() ? ">=" : "") + Quantity.PRESSURE.number(units, range.high()),
                duty(range.highBy()));
    }

    private static String duty(Optional<Judgement.Key> key) {
        return key.map(Judgement.Key::duty).orElse("");
    }
}

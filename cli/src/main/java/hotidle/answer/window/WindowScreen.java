package hotidle.answer.window;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.LimitPhrase;
import hotidle.answer.phrase.OwnHeatPhrase;
import hotidle.answer.phrase.WindowPhrase;
import hotidle.assess.Assumed;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The first screen: the set pressures that keep every limit, and which limits bind. */
record WindowScreen(
        Quantity.UnitSystem units,
        String circuit,
        String work,
        boolean ownHeat,
        List<WindowAnswer.BuildWindow> builds,
        String noStall) {

    /** Rows of a build at most (chosen). */
    private static final int MOST = 10;

    String text() {
        WindowSentences sentences = new WindowSentences(units);
        StringBuilder text = new StringBuilder(Wrap.lines(WindowPhrase.title(circuit, work), "", "  "));
        text.append(Wrap.lines(WindowPhrase.notJudged(builds.get(0).rated()), "", "  "));
        text.append(ownHeat ? Wrap.lines(OwnHeatPhrase.RAISED, "", "  ") : "");
        for (WindowAnswer.BuildWindow one : builds) {
            text.append(Wrap.lines(sentences.brief(one), "", "  "));
            sentences.besides(one).forEach(line -> text.append(Wrap.lines(line, "", "  ")));
            sentences.useful(one, builds.size() > 1).ifPresent(line -> text.append(Wrap.lines(line, "", "  ")));
        }
        String end = "\n" + Caution.LINE + "\n" + noStall;
        long left = Wrap.LINES - lines(text.toString()) - lines(end) - lines("\n\n\n") - builds.size();
        int rows = (int) Math.max(0, Math.min(MOST, left / builds.size()));
        String table = rows == 0 ? "" : "\n" + table(rows);
        return text + table + end;
    }

    private static long lines(String text) {
        return text.lines().count();
    }

    private String table(int rows) {
        boolean many = builds.size() > 1;
        List<String> head = new ArrayList<>(many ? List.of(WindowPhrase.BUILD) : List.of());
        head.addAll(List.of(WindowPhrase.BINDING, WindowPhrase.FROM, WindowPhrase.TO, WindowPhrase.ELSE));
        TextTable table = new TextTable(head);
        StringBuilder others = new StringBuilder();
        for (WindowAnswer.BuildWindow one : builds) {
            List<Window.Span> binding = one.window().spans().stream()
                    .filter(WindowScreen::binds)
                    .filter(span -> !asHolding(span, one.window().spans()))
                    .sorted(Comparator.comparing((Window.Span span) -> !endsAll(span, one.window()))
                            .thenComparingDouble(WindowScreen::width))
                    .toList();
            binding.stream().limit(rows).forEach(span -> {
                List<String> row = new ArrayList<>(many ? List.of(one.name()) : List.of());
                row.addAll(row(span));
                table.add(row);
            });
            long anywhere = one.window().spans().stream()
                    .filter(span ->
                            !binds(span) && !asHolding(span, one.window().spans()))
                    .count();
            others.append(Wrap.lines(
                    WindowPhrase.others(one.name(), Math.max(0, binding.size() - rows), anywhere), "", "  "));
        }
        return table.aligned() + others;
    }

    /** Whether a limit ends somewhere between the pressures tried. */
    private static boolean binds(Window.Span span) {
        return span.ranges().isEmpty()
                || span.ranges().stream()
                        .anyMatch(range ->
                                range.lowBy().isPresent() || range.highBy().isPresent());
    }

    /** Whether a limit ends a range in which all of them hold, from below or above. */
    private static boolean endsAll(Window.Span span, Window window) {
        return window.all().stream()
                .flatMap(range -> Stream.concat(range.lowBy().stream(), range.highBy().stream()))
                .anyMatch(key -> key.kind() == span.kind() && key.part().equals(span.part()));
    }

    /** Whether a clutch that slips allows the same as one that holds, which is then told alone. */
    private static boolean asHolding(Window.Span span, List<Window.Span> all) {
        return span.kind() == Margin.Kind.APPLY_SLIDING
                && all.stream()
                        .anyMatch(other -> other.kind() == Margin.Kind.APPLY
                                && other.part().equals(span.part())
                                && ends(other).equals(ends(span)));
    }

    private static List<Double> ends(Window.Span span) {
        return span.ranges().stream()
                .flatMap(range -> Stream.of(range.low(), range.high()))
                .toList();
    }

    /** The pressures that a limit allows, all ranges together [Pa]; the less, the more it binds. */
    private static double width(Window.Span span) {
        return span.ranges().stream()
                .mapToDouble(range -> range.high() - range.low())
                .sum();
    }

    /** Of several ranges the ends of all; which of them holds stands in full. */
    private List<String> row(Window.Span span) {
        String label = LimitPhrase.label(span.kind()) + " (" + span.part() + ")"
                + (Assumed.limit(span.kind()) ? WindowPhrase.ASSUMED : "");
        if (span.ranges().isEmpty()) {
            return List.of(label, WindowPhrase.NOWHERE, WindowPhrase.NOWHERE, duty(span.worst()));
        }
        Window.PressureRange first = span.ranges().get(0);
        Window.PressureRange last = span.ranges().get(span.ranges().size() - 1);
        return List.of(
                label,
                (first.lowBy().isEmpty() ? "<= " : "") + Quantity.PRESSURE.with(units, first.low()),
                (last.highBy().isEmpty() ? ">= " : "") + Quantity.PRESSURE.with(units, last.high()),
                duty(last.highBy().or(first::lowBy)));
    }

    private static String duty(Optional<Judgement.Key> key) {
        return key.map(Judgement.Key::duty).orElse("");
    }
}

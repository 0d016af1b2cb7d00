package hotidle.answer.part;

import hotidle.answer.Answer;
import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.DefaultsPhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.MorePhrase;
import hotidle.answer.phrase.PartDoubtPhrase;
import hotidle.circuits.kind.Kind;
import hotidle.plots.Picture;
import java.util.List;
import java.util.Optional;

/**
 * What one part does on its own.
 *
 * @param state its state
 * @param chart its chart over one of its numbers, where one is drawn
 * @param units in which it is shown
 */
public record PartAnswer(PartState state, Optional<PartChart> chart, Quantity.UnitSystem units) implements Answer {

    private Kind kind() {
        return state.part().kind();
    }

    private List<PartLines.LabelledValue> lines() {
        return new PartLines(state, units).lines();
    }

    @Override
    public String screen() {
        int defaults = state.part().defaults().size();
        FirstScreen screen = new FirstScreen(defaults == 0 ? "" : MorePhrase.defaults(defaults));
        screen.add(Wrap.lines(HeadingPhrase.headed(kind().word(), kind().about()), "", "  "));
        state.warnings().forEach(warning -> screen.add(Wrap.lines(PartDoubtPhrase.warned(warning), "", "  ")));
        List<PartLines.LabelledValue> lines = lines();
        int rows = Math.min(lines.size(), screen.room() - (lines.size() > screen.room() ? 1 : 0));
        lines.subList(0, rows).forEach(line -> screen.add(narrow(aligned(lines, line))));
        if (rows < lines.size()) {
            screen.add(MorePhrase.lines(lines.size() - rows, "line"));
        }
        return screen.text();
    }

    /** A line as it is; broken where it is too wide. */
    private static String narrow(String line) {
        return line.length() <= Wrap.WIDTH ? line : Wrap.lines(line, "", "    ");
    }

    private static String aligned(List<PartLines.LabelledValue> lines, PartLines.LabelledValue line) {
        int width = lines.stream().mapToInt(one -> one.label().length()).max().orElse(0) + 2;
        return line.label() + " ".repeat(width - line.label().length()) + (line.value() + " " + line.unit()).strip();
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder();
        text.append(kind().word()).append(": ").append(kind().about()).append("\n\n");
        List<PartLines.LabelledValue> lines = lines();
        lines.forEach(line -> text.append(aligned(lines, line)).append('\n'));
        text.append("\nlaw     ").append(kind().physics().law()).append('\n');
        text.append("source  ").append(kind().physics().source()).append('\n');
        block(text, DefaultsPhrase.HEADING, defaults());
        block(text, "warnings", state.warnings());
        return text.toString();
    }

    private static void block(StringBuilder text, String head, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append('\n').append(head).append('\n');
            lines.forEach(line -> text.append("  ").append(line).append('\n'));
        }
    }

    private List<String> defaults() {
        return state.part().defaults().entrySet().stream()
                .map(one -> DefaultsPhrase.value(
                        one.getKey(), one.getValue().text(), one.getValue().source()))
                .toList();
    }

    @Override
    public TextTable table() {
        TextTable table = new TextTable(List.of("quantity", "value", "unit"));
        lines().forEach(line -> table.add(List.of(line.label().strip(), line.value(), line.unit())));
        table.add(List.of("law", kind().physics().law(), ""));
        table.add(List.of("source", kind().physics().source(), ""));
        defaults().forEach(line -> table.add(List.of(DefaultsPhrase.HEADING, line, "")));
        state.warnings().forEach(line -> table.add(List.of("warning", line, "")));
        return table;
    }

    @Override
    public Object json() {
        return PartRecord.of(state);
    }

    @Override
    public Optional<Picture> picture() {
        return chart.map(drawn -> new Picture(List.of(drawn.chart(units))));
    }

    @Override
    public boolean complete() {
        return state.outcome().state().isPresent();
    }
}

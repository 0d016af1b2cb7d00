package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.Window;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The set pressures that each limit of some builds allows, for readers. */
record WindowText(Quantity.UnitSystem units, List<WindowText.One> found) {

    /** A build and its window. */
    record One(Transmission unit, Window window) {}

    /** How far pressure is raised in the trade: about 270 psi, common practice [Pa]. */
    private static final double TRADE = 270 * 4.4482216152605 / 0.00064516;

    String tables(String about) {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(OptionValues.headed(found.get(0).unit.circuit(), about), "", "  "));
        for (One one : found) {
            text.append(Wrap.lines(summary(one), "", "  "));
        }
        text.append("\n").append(Caution.WHOLE).append("\n");
        for (One one : found) {
            text.append("\n").append(one.unit.build()).append(": set pressure that each limit allows\n");
            TextTable table = new TextTable(List.of("limit", "part", "from", "else fails at", "to", "else fails at"));
            rows(one.window).forEach(table::add);
            text.append(table.aligned());
        }
        text.append("\n");
        text.append(Wrap.lines(
                "Tried from " + psi(found.get(0).window.points().get(0).pressure()) + " to "
                        + psi(last(found.get(0).window).pressure())
                        + "; <= and >= say that a limit still holds at the end of that. Idle is raised with the rest, since command"
                        + " and spring are set together."
                        + " Strength of case, pump, rings, shafts and converter is not judged: raised pressures in the trade go to"
                        + " about " + psi(TRADE) + " (common practice).",
                "",
                ""));
        return text.toString();
    }

    /** A row a limit and range; the two limits of a clutch that are one and the same in one row. */
    private List<List<String>> rows(Window window) {
        List<List<String>> rows = new ArrayList<>();
        List<List<String>> holding = List.of();
        for (Window.Span span : window.spans()) {
            List<List<String>> cells = cells(span);
            if (span.kind() == Margin.Kind.APPLY_SLIDING && cells.equals(holding)) {
                int from = rows.size() - cells.size();
                for (int i = from; i < rows.size(); i++) {
                    rows.set(i, labelled(MarginWords.APPLY_BOTH, cells.get(i - from)));
                }
            } else {
                cells.forEach(row -> rows.add(labelled(MarginWords.label(span.kind()), row)));
            }
            holding = cells;
        }
        return rows;
    }

    private static List<String> labelled(String label, List<String> cells) {
        List<String> row = new ArrayList<>(List.of(label));
        row.addAll(cells);
        return row;
    }

    private List<List<String>> cells(Window.Span span) {
        if (span.ranges().isEmpty()) {
            return List.of(List.of(span.part(), "none", duty(span.worst()), "none", duty(span.worst())));
        }
        return span.ranges().stream()
                .map(range -> List.of(
                        span.part(),
                        (range.lowBy().isEmpty() ? "<= " : "") + psi(range.low()),
                        duty(range.lowBy()),
                        (range.highBy().isEmpty() ? ">= " : "") + psi(range.high()),
                        duty(range.highBy())))
                .toList();
    }

    private static Window.SetPoint last(Window window) {
        return window.points().get(window.points().size() - 1);
    }

    private static String duty(Optional<Judgement.Key> key) {
        return key.map(Judgement.Key::duty).orElse("");
    }

    private String psi(double pressure) {
        return Quantity.PRESSURE.with(units, pressure);
    }

    private static String limit(Judgement.Key key) {
        return MarginWords.label(key.kind()) + " (" + key.part() + ") at " + key.duty();
    }

    private String summary(One one) {
        Window window = one.window;
        String build = one.unit.build() + ": ";
        if (window.all().isEmpty()) {
            return build + "NO SET PRESSURE from " + psi(window.points().get(0).pressure()) + " to "
                    + psi(window.points().get(window.points().size() - 1).pressure()) + " holds every limit, because "
                    + because(window) + ".";
        }
        String own = ownSet(one.unit);
        return build + "every limit holds from "
                + window.all().stream().map(this::range).collect(Collectors.joining("; and from ")) + ". " + own;
    }

    private String range(Window.PressureRange range) {
        return psi(range.low()) + " to " + psi(range.high())
                + range.lowBy()
                        .map(key -> "; below, " + limit(key) + " fails first")
                        .orElse("; lower ones were not tried")
                + range.highBy()
                        .map(key -> "; above, " + limit(key) + " fails first")
                        .orElse("; higher ones were not tried");
    }

    private String ownSet(Transmission unit) {
        return (unit.command().pilot().isPresent() ? "The build commands up to " : "The build's spring sets ")
                + psi(unit.highestSet()) + ".";
    }

    /** A limit that never holds, or the two that leave nothing between them. */
    private String because(Window window) {
        List<String> never = window.spans().stream()
                .filter(span -> span.ranges().isEmpty())
                .map(span -> limit(span.worst().orElseThrow()))
                .toList();
        if (!never.isEmpty()) {
            return String.join(", ", never) + (never.size() == 1 ? " fails" : " fail") + " at every one tried";
        }
        Optional<Window.PressureRange> lowest = window.spans().stream()
                .map(span -> span.ranges().get(0))
                .filter(range -> range.lowBy().isPresent())
                .max(Comparator.comparingDouble(Window.PressureRange::low));
        Optional<Window.PressureRange> highest = window.spans().stream()
                .map(span -> span.ranges().get(span.ranges().size() - 1))
                .filter(range -> range.highBy().isPresent())
                .min(Comparator.comparingDouble(Window.PressureRange::high));
        if (lowest.isEmpty() || highest.isEmpty()) {
            return "limits that hold apart do not hold together";
        }
        return limit(lowest.get().lowBy().orElseThrow()) + " needs at least "
                + psi(lowest.get().low()) + " and "
                + limit(highest.get().highBy().orElseThrow()) + " allows at most "
                + psi(highest.get().high());
    }

    String csv() {
        String psi = Quantity.PRESSURE.in(units).unit();
        TextTable table = new TextTable(
                List.of("build", "limit", "part", "from " + psi, "fails below at", "to " + psi, "fails above at"));
        for (One one : found) {
            for (Window.Span span : one.window.spans()) {
                for (Window.PressureRange range : span.ranges()) {
                    table.add(row(one, span.kind().word(), span.part(), range));
                }
                if (span.ranges().isEmpty()) {
                    String at = duty(span.worst());
                    table.add(List.of(one.unit.build(), span.kind().word(), span.part(), "none", at, "none", at));
                }
            }
            one.window.all().forEach(range -> table.add(row(one, "all", "", range)));
        }
        return table.csv();
    }

    private List<String> row(One one, String limit, String part, Window.PressureRange range) {
        return List.of(
                one.unit.build(),
                limit,
                part,
                (range.lowBy().isEmpty() ? "<=" : "") + Quantity.PRESSURE.number(units, range.low()),
                duty(range.lowBy()),
                (range.highBy().isEmpty() ? ">=" : "") + Quantity.PRESSURE.number(units, range.high()),
                duty(range.highBy()));
    }

    ObjectNode json() {
        ObjectNode root = StateJson.object();
        root.put("circuit", found.get(0).unit.circuit());
        ArrayNode builds = root.putArray("builds");
        for (One one : found) {
            ObjectNode build = builds.addObject();
            build.put("build", one.unit.build());
            build.put("summary", summary(one));
            ArrayNode all = build.putArray("all_hold");
            one.window.all().forEach(range -> all.add(json(range)));
            ArrayNode limits = build.putArray("limits");
            for (Window.Span span : one.window.spans()) {
                ObjectNode node = limits.addObject();
                node.put("margin", span.kind().word());
                node.put("part", span.part());
                ArrayNode ranges = node.putArray("holds");
                span.ranges().forEach(range -> ranges.add(json(range)));
                node.put("worst_duty", duty(span.worst()));
            }
            ArrayNode points = build.putArray("points");
            for (Window.SetPoint point : one.window.points()) {
                ObjectNode node = points.addObject();
                node.put("set_pressure_pa", point.pressure());
                ArrayNode margins = node.putArray("margins");
                point.margins()
                        .forEach((key, margin) -> StateJson.putFinite(
                                margins.addObject()
                                        .put("duty", key.duty())
                                        .put("margin", key.kind().word())
                                        .put("part", key.part())
                                        .put("verdict", margin.verdict().word()),
                                "headroom",
                                margin.headroom()));
            }
        }
        return root;
    }

    private static ObjectNode json(Window.PressureRange range) {
        ObjectNode node = StateJson.object();
        node.put("low_pa", range.low());
        node.put("low_by", range.lowBy().map(WindowText::limit).orElse(null));
        node.put("high_pa", range.high());
        node.put("high_by", range.highBy().map(WindowText::limit).orElse(null));
        return node;
    }
}

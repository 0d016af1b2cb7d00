package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.assess.Margin;
import hotidle.plots.MapChart;
import hotidle.study.Judgement;
import hotidle.study.WindowMap;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A map of margins in words, numbers and as a chart.
 *
 * @param units of the user
 * @param build its name
 * @param map   what was found
 */
record WindowMapText(Quantity.UnitSystem units, String build, WindowMap map) {

    /** Sizes up to this are told in thousandths or micrometres [m]. */
    private static final double SMALL = 50e-6;

    /** Headroom beyond this is not worth a number [-]. */
    private static final double AMPLE = 9.99;

    private static final String NOT_KNOWN = "not known";

    private static final String ASSUMED =
            "Command and spring are set together, idle with the rest; all other sizes stay as the build has them.";

    /** Every limit that decides somewhere, with its letter. */
    private Map<Judgement.Key, String> letters() {
        Map<Judgement.Key, String> letters = new LinkedHashMap<>();
        map.cells().stream()
                .flatMap(List::stream)
                .flatMap(cell -> cell.least().stream())
                .forEach(least -> letters.computeIfAbsent(least.key(), key -> letter(letters.size())));
        return letters;
    }

    private static String letter(int number) {
        String one = String.valueOf((char) ('A' + number % 26));
        return number < 26 ? one : one + (number / 26);
    }

    private static String limit(Judgement.Key key) {
        return MarginWords.label(key.kind()) + " (" + key.part() + ") at " + key.duty();
    }

    private Quantity quantity() {
        if (map.axis().dimension().kind() == WearSize.Kind.AREA) {
            return Quantity.AREA;
        }
        return map.values().get(map.values().size() - 1) <= SMALL ? Quantity.FILM : Quantity.SIZE;
    }

    private String psi(double pressure) {
        return Quantity.PRESSURE.with(units, pressure);
    }

    private static String percent(double headroom) {
        if (Double.isNaN(headroom)) {
            return "?";
        }
        if (headroom == Double.NEGATIVE_INFINITY) {
            return "contact";
        }
        return headroom > AMPLE ? "ample" : String.format(Locale.ROOT, "%+.0f", 100 * headroom);
    }

    /** The whole answer for this build. */
    String table() {
        StringBuilder text = new StringBuilder();
        map.marks().forEach(mark -> text.append(Wrap.lines(sentence(mark), "", "  ")));
        text.append("\n")
                .append(build)
                .append(": least headroom in % and the limit that decides, over set pressure and ");
        text.append(map.axis().name())
                .append(" [")
                .append(quantity().in(units).unit())
                .append("]\n");
        Map<Judgement.Key, String> letters = letters();
        List<String> head = new ArrayList<>();
        head.add("set " + Quantity.PRESSURE.in(units).unit());
        map.values().forEach(value -> head.add(quantity().number(units, value)));
        TextTable table = new TextTable(head);
        for (int column = 0; column < map.pressures().size(); column++) {
            List<String> row = new ArrayList<>();
            row.add(Quantity.PRESSURE.number(units, map.pressures().get(column)));
            for (List<WindowMap.Cell> cells : map.cells()) {
                WindowMap.Cell cell = cells.get(column);
                row.add(cell.least()
                        .map(least -> percent(cell.headroom()) + " " + letters.get(least.key()))
                        .orElse("?"));
            }
            table.add(row);
        }
        text.append(table.aligned());
        letters.forEach((key, letter) ->
                text.append("  ").append(letter).append("  ").append(limit(key)).append("\n"));
        long unknown = map.cells().stream()
                .flatMap(List::stream)
                .filter(cell -> cell.least().isEmpty())
                .count();
        if (unknown > 0) {
            text.append("  ?  not known at ")
                    .append(unknown)
                    .append(" points: ")
                    .append(whyUnknown())
                    .append("\n");
        }
        return text.toString();
    }

    private String whyUnknown() {
        return String.join(
                ", ",
                map.cells().stream()
                        .flatMap(List::stream)
                        .map(WindowMap.Cell::why)
                        .filter(why -> !why.isEmpty())
                        .distinct()
                        .toList());
    }

    private String sentence(WindowMap.Mark mark) {
        WindowMap.Cell cell = mark.cell();
        String at = named(mark) + ", " + map.axis().name() + " " + quantity().with(units, cell.value()) + " at "
                + psi(cell.pressure()) + ": ";
        if (cell.least().isEmpty()) {
            return at + "NOT KNOWN, " + cell.why() + ".";
        }
        Margin margin = cell.least().get().margin();
        MarginWords words = new MarginWords(units);
        return at + MarginWords.verdict(margin) + ", " + words.headroom(margin) + "; "
                + limit(cell.least().get().key())
                + (Double.isNaN(margin.value()) ? ": metal touches, the film is not known." : " decides.");
    }

    /** The build's own point by its name, another one as that size in the build. */
    private String named(WindowMap.Mark mark) {
        return mark.name().startsWith(build) ? mark.name() : build + " with that size " + mark.name();
    }

    static String legend() {
        return "Headroom is the worst of all limits at all duty points; 0 % and less fails, up to 10 % is close. "
                + ASSUMED + " The film allowed is an assumption from roughness.";
    }

    /** Head of {@link #rows}. */
    List<String> head() {
        return List.of(
                "build",
                "point",
                "set " + Quantity.PRESSURE.in(units).unit(),
                map.axis().name() + " " + quantity().in(units).unit(),
                "headroom",
                "verdict",
                "limit",
                "part",
                "duty",
                "why not known");
    }

    /** A row for each point, the named ones first. */
    List<List<String>> rows() {
        List<List<String>> rows = new ArrayList<>();
        map.marks().forEach(mark -> rows.add(row(mark.name(), mark.cell())));
        map.cells().stream().flatMap(List::stream).forEach(cell -> rows.add(row("", cell)));
        return rows;
    }

    private List<String> row(String point, WindowMap.Cell cell) {
        double headroom = cell.headroom();
        return List.of(
                build,
                point,
                Quantity.PRESSURE.number(units, cell.pressure()),
                Digits.four(quantity().value(units, cell.value())),
                Double.isFinite(headroom) ? Digits.four(headroom) : "-",
                cell.least().map(least -> least.margin().verdict().word()).orElse(NOT_KNOWN),
                cell.least().map(least -> least.key().kind().word()).orElse("-"),
                cell.least().map(least -> least.key().part()).orElse("-"),
                cell.least().map(least -> least.key().duty()).orElse("-"),
                cell.why());
    }

    ObjectNode json() {
        ObjectNode node = StateJson.object();
        node.put("build", build);
        ObjectNode field = node.putObject("map");
        field.put("size", map.axis().name());
        field.put("size_unit", map.axis().dimension().kind() == WearSize.Kind.AREA ? "m2" : "m");
        ArrayNode marks = field.putArray("named_points");
        map.marks().forEach(mark -> marks.add(point(mark.cell()).put("name", mark.name())));
        ArrayNode points = field.putArray("points");
        map.cells().stream().flatMap(List::stream).forEach(cell -> points.add(point(cell)));
        return node;
    }

    private static ObjectNode point(WindowMap.Cell cell) {
        ObjectNode node = StateJson.object();
        node.put("set_pressure_pa", cell.pressure());
        node.put("size", cell.value());
        StateJson.putFinite(node, "headroom", cell.headroom());
        node.put(
                "verdict",
                cell.least().map(least -> least.margin().verdict().word()).orElse(NOT_KNOWN));
        node.put("margin", cell.least().map(least -> least.key().kind().word()).orElse(null));
        node.put("part", cell.least().map(least -> least.key().part()).orElse(null));
        node.put("duty", cell.least().map(least -> least.key().duty()).orElse(null));
        node.put("why_not_known", cell.why().isEmpty() ? null : cell.why());
        return node;
    }

    /** The map as a chart. */
    MapChart chart(String circuit) {
        Map<Judgement.Key, String> letters = letters();
        Map<String, String> key = new LinkedHashMap<>();
        letters.forEach((limit, letter) -> key.put(letter, limit(limit)));
        List<MapChart.Level> levels = new ArrayList<>();
        WearSize dimension = map.axis().dimension();
        dimension
                .limit()
                .ifPresent(limit -> levels.add(
                        new MapChart.Level("shop limit", value(map.axis().counted(limit)))));
        return new MapChart(
                build + ": least headroom over set pressure and " + map.axis().name(),
                circuit + ": worst of all limits at all duty points. " + ASSUMED + " An estimate, not an approval.",
                "set pressure [" + Quantity.PRESSURE.in(units).unit() + "]",
                map.axis().name() + " [" + quantity().in(units).unit() + "]",
                map.pressures().stream()
                        .map(pressure -> Quantity.PRESSURE.value(units, pressure))
                        .toList(),
                map.values().stream().map(this::value).toList(),
                map.cells().stream()
                        .map(row -> row.stream()
                                .map(cell -> new MapChart.Cell(
                                        100 * cell.headroom(),
                                        cell.least()
                                                .map(least -> letters.get(least.key()))
                                                .orElse("")))
                                .toList())
                        .toList(),
                100 * Margin.CLOSE,
                key,
                map.marks().stream()
                        .map(mark -> new MapChart.Mark(
                                mark.name() + ": " + headroom(mark.cell()),
                                Quantity.PRESSURE.value(units, mark.cell().pressure()),
                                value(mark.cell().value())))
                        .toList(),
                levels);
    }

    private double value(double siValue) {
        return quantity().value(units, siValue);
    }

    private static String headroom(WindowMap.Cell cell) {
        String number = percent(cell.headroom());
        return number.equals("?") ? NOT_KNOWN : number.matches("[-+].*") ? number + " %" : number;
    }
}

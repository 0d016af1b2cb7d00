package hotidle.cli;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.oil.Oil;
import hotidle.result.Unsolved;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A part's answer as text.
 *
 * @param answer what the part does
 * @param units  in which it is shown
 */
record PartText(PartAnswer answer, Quantity.UnitSystem units) {

    private static final double KILO = 1000;

    /**
     * One line.
     *
     * @param label what it is
     * @param value as shown
     * @param unit  as shown, empty for none
     */
    private record Line(String label, String value, String unit) {}

    String table() {
        StringBuilder text = new StringBuilder();
        var kind = answer.part().kind();
        text.append(kind.word()).append(": ").append(kind.about()).append("\n\n");
        int width =
                lines().stream().mapToInt(line -> line.label().length()).max().orElse(0) + 2;
        for (Line line : lines()) {
            text.append(line.label()).append(" ".repeat(width - line.label().length()));
            text.append((line.value() + " " + line.unit()).strip()).append('\n');
        }
        text.append("\nlaw     ").append(kind.physics().law()).append('\n');
        text.append("source  ").append(kind.physics().source()).append('\n');
        if (!answer.part().defaults().isEmpty()) {
            text.append("\nleft to the program\n");
            answer.part()
                    .defaults()
                    .forEach((key, fallback) -> text.append("  ")
                            .append(key)
                            .append(" ")
                            .append(fallback.text())
                            .append(": ")
                            .append(fallback.source())
                            .append('\n'));
        }
        if (!answer.warnings().isEmpty()) {
            text.append("\nwarnings\n");
            answer.warnings()
                    .forEach(warning -> text.append("  ").append(warning).append('\n'));
        }
        return text.toString();
    }

    String csv() {
        TextTable table = new TextTable(List.of("quantity", "value", "unit"));
        lines().forEach(line -> table.add(List.of(line.label().strip(), line.value(), line.unit())));
        var kind = answer.part().kind();
        table.add(List.of("law", kind.physics().law(), ""));
        table.add(List.of("source", kind.physics().source(), ""));
        answer.part()
                .defaults()
                .forEach((key, fallback) -> table.add(
                        List.of("left to the program", key + " " + fallback.text() + ": " + fallback.source(), "")));
        answer.warnings().forEach(warning -> table.add(List.of("warning", warning, "")));
        return table.csv();
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        if (answer.outcome().state().isPresent()) {
            solved(lines);
        } else {
            Unsolved unsolved = answer.outcome().unsolved().orElseThrow();
            String why = UnsolvedPhrase.why(unsolved.culprit(), unsolved.residual(), unsolved.tried());
            lines.add(new Line("no state", why, ""));
        }
        oil(lines);
        return lines;
    }

    private void solved(List<Line> lines) {
        List<PartAnswer.Path> paths = answer.paths();
        if (!paths.isEmpty() && !still()) {
            boolean several = paths.size() > 1;
            lines.add(line(
                    several ? "flow in at " + answer.part().ports().get(0) : "flow", Quantity.FLOW, answer.flow()));
            for (PartAnswer.Path path : paths) {
                if (several) {
                    lines.add(line("  " + path.name(), Quantity.FLOW, path.flow()));
                }
                if (Double.isFinite(path.reynolds())) {
                    String label = (several ? "    " : "") + "Reynolds number";
                    lines.add(new Line(label, Digits.four(path.reynolds()), ""));
                    lines.add(new Line((several ? "    " : "") + "regime", path.regime(), ""));
                }
            }
        }
        answer.numbers().forEach((name, value) -> {
            if (!name.equals("pressure_drop_pa") || !still()) {
                lines.add(number(name, value));
            }
        });
        if (answer.part().ports().size() != 2) {
            answer.outcome()
                    .state()
                    .orElseThrow()
                    .pressures()
                    .forEach((port, pressure) -> lines.add(line("pressure at " + port, Quantity.PRESSURE, pressure)));
        }
    }

    /** Whether nothing drives oil through a part that is asked about something else. */
    private boolean still() {
        return answer.numbers().getOrDefault("pressure_drop_pa", 1.0) == 0
                && answer.numbers().containsKey("metal_contact");
    }

    private void oil(List<Line> lines) {
        PartDuty duty = answer.duty();
        String name = duty.oil().name() + " at " + Quantity.TEMPERATURE.with(units, duty.temperature());
        lines.add(new Line("oil", name + (duty.oilSaid().isEmpty() ? "" : " (" + duty.oilSaid() + ")"), ""));
        lines.add(new Line("  viscosity", Digits.four(duty.oilAt().viscosity() * 1000), "mPa.s"));
        lines.add(new Line("  density", Digits.four(duty.oilAt().liquidDensity()), "kg/m3"));
    }

    private Line line(String label, Quantity quantity, double value) {
        if (quantity == Quantity.POWER && units == Quantity.UnitSystem.METRIC && Math.abs(value) < KILO) {
            return new Line(label, Digits.four(value), "W");
        }
        return new Line(
                label,
                Digits.four(quantity.value(units, value)),
                quantity.in(units).unit());
    }

    /** Ends of names and what they are shown as; the longer ones first. */
    private static final List<Map.Entry<String, Quantity>> ENDINGS = List.of(
            Map.entry("_m3_s", Quantity.FLOW),
            Map.entry("_m3_rev", Quantity.DISPLACEMENT),
            Map.entry("_n_m", Quantity.TORQUE),
            Map.entry("_pa", Quantity.PRESSURE),
            Map.entry("_n", Quantity.FORCE),
            Map.entry("_w", Quantity.POWER),
            Map.entry("_m", Quantity.FILM));

    private Line number(String name, double value) {
        for (Map.Entry<String, Quantity> ending : ENDINGS) {
            if (name.endsWith(ending.getKey())) {
                String label =
                        words(name.substring(0, name.length() - ending.getKey().length()));
                boolean travel = label.equals("position") || label.equals("lift");
                return line(label, travel ? Quantity.TRAVEL : ending.getValue(), value);
            }
        }
        if (name.endsWith("_rad")) {
            return new Line(words(name.replace("_rad", "")), Digits.four(Math.toDegrees(value)), "deg");
        }
        if (name.endsWith("_k")) {
            return new Line(words(name.replaceFirst("_k$", "")), Digits.four(value), "K");
        }
        if (name.equals("metal_contact")) {
            return new Line("metal contact", value > 0 ? "yes" : "no", "");
        }
        return new Line(words(name), Digits.four(value), "");
    }

    private static String words(String name) {
        return name.replace('_', ' ');
    }

    /** The temperature in degrees, for whoever reads JSON. */
    static double celsius(double kelvin) {
        return kelvin - Oil.ZERO_CELSIUS;
    }
}

package hotidle.answer.part;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.OilPhrase;
import hotidle.answer.phrase.RegimePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.PartFlow;
import hotidle.part.Bushing;
import hotidle.result.Unsolved;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * What a part does, line by line.
 *
 * @param answer what the part does
 * @param units  in which it is shown
 */
record PartLines(PartState answer, Quantity.UnitSystem units) {

    private static final double KILO = 1000;

    /**
     * One line.
     *
     * @param label what it is
     * @param value as shown
     * @param unit  as shown, empty for none
     */
    record LabelledValue(String label, String value, String unit) {}

    /** All of them. */
    List<LabelledValue> lines() {
        List<LabelledValue> lines = new ArrayList<>();
        if (answer.outcome().state().isPresent()) {
            solved(lines);
        } else {
            Unsolved unsolved = answer.outcome().unsolved().orElseThrow();
            String why = UnsolvedPhrase.why(unsolved.culprit(), unsolved.residual(), unsolved.tried());
            lines.add(new LabelledValue("no state", why, ""));
        }
        oil(lines);
        return lines;
    }

    private void solved(List<LabelledValue> lines) {
        Map<String, Double> numbers = answer.numbers();
        boolean still = still(numbers);
        if (!still) {
            answer.flow().ifPresent(flow -> flow(flow, lines));
        }
        numbers.forEach((name, value) -> {
            if (!name.equals(PartNumbers.DROP) || !still) {
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

    private void flow(PartFlow flow, List<LabelledValue> lines) {
        boolean several = flow.paths().size() > 1;
        String label = several ? "flow in at " + answer.part().ports().get(0) : "flow";
        flow.net().ifPresent(net -> lines.add(line(label, Quantity.FLOW, net)));
        String indent = several ? "    " : "";
        for (PartFlow.PathFlow path : flow.paths()) {
            if (several) {
                lines.add(line("  " + path.name(), Quantity.FLOW, path.flow()));
            }
            path.reynolds()
                    .ifPresent(re -> lines.add(new LabelledValue(indent + "Reynolds number", Digits.four(re), "")));
            path.regime()
                    .ifPresent(regime -> lines.add(new LabelledValue(indent + "regime", RegimePhrase.of(regime), "")));
        }
    }

    /** Whether nothing drives oil through a part that is asked about its film. */
    private static boolean still(Map<String, Double> numbers) {
        return numbers.getOrDefault(PartNumbers.DROP, 1.0) == 0 && numbers.containsKey(Bushing.METAL_CONTACT.key());
    }

    private void oil(List<LabelledValue> lines) {
        PartConditions asked = answer.asked();
        String oil = OilPhrase.asUsed(
                asked.oil().name(), asked.temperature(), asked.oilByDefault(), asked.temperatureByDefault(), units);
        lines.add(new LabelledValue("oil", oil, ""));
        lines.add(new LabelledValue("  viscosity", Digits.four(asked.oilAt().viscosity() * 1000), "mPa.s"));
        lines.add(new LabelledValue("  density", Digits.four(asked.oilAt().liquidDensity()), "kg/m3"));
    }

    private LabelledValue line(String label, Quantity quantity, double value) {
        if (quantity == Quantity.POWER && units == Quantity.UnitSystem.METRIC && Math.abs(value) < KILO) {
            return new LabelledValue(label, Digits.four(value), "W");
        }
        return new LabelledValue(
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

    private LabelledValue number(String name, double value) {
        for (Map.Entry<String, Quantity> ending : ENDINGS) {
            if (name.endsWith(ending.getKey())) {
                String label =
                        words(name.substring(0, name.length() - ending.getKey().length()));
                boolean travel = label.equals("position") || label.equals("lift");
                return line(label, travel ? Quantity.TRAVEL : ending.getValue(), value);
            }
        }
        if (name.endsWith("_rad")) {
            return new LabelledValue(words(name.replace("_rad", "")), Digits.four(Math.toDegrees(value)), "deg");
        }
        if (name.endsWith("_k")) {
            return new LabelledValue(words(name.replaceFirst("_k$", "")), Digits.four(value), "K");
        }
        if (name.equals(Bushing.METAL_CONTACT.key())) {
            return new LabelledValue("metal contact", value > 0 ? "yes" : "no", "");
        }
        return new LabelledValue(words(name), Digits.four(value), "");
    }

    private static String words(String name) {
        return name.replace('_', ' ');
    }
}

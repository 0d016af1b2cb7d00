package hotidle.answer.part;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.PartChartPhrase;
import hotidle.plots.LineChart;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * A part over one of its numbers: its film where it carries a load, otherwise its flow.
 *
 * @param kind   of the part
 * @param film   whether it carries a load
 * @param varied the number
 * @param axis   its axis, with the unit
 * @param keys   as the user wrote them, without the one that is varied
 * @param at     values of the number, rising
 * @param states the part at each of them
 */
public record PartChart(
        String kind,
        boolean film,
        String varied,
        String axis,
        List<String> keys,
        List<Double> at,
        List<PartState> states) {

    public PartChart {
        keys = List.copyOf(keys);
        at = List.copyOf(at);
        states = List.copyOf(states);
    }

    /** Whether there is anything to draw. */
    public boolean any() {
        return states.stream().anyMatch(state -> value(state).isPresent());
    }

    /** In SI; empty where it is not known. */
    private OptionalDouble value(PartState state) {
        return film
                ? Stream.ofNullable(state.numbers().get(PartNumbers.FILM))
                        .mapToDouble(Double::doubleValue)
                        .findFirst()
                : state.flow().map(flow -> flow.net()).orElse(OptionalDouble.empty());
    }

    LineChart chart(Quantity.UnitSystem units) {
        Quantity quantity = film ? Quantity.FILM : Quantity.FLOW;
        List<LineChart.Point> points = new ArrayList<>();
        for (int i = 0; i < at.size(); i++) {
            OptionalDouble known = value(states.get(i));
            points.add(new LineChart.Point(
                    at.get(i), known.isPresent() ? quantity.value(units, known.getAsDouble()) : Double.NaN));
        }
        return new LineChart(
                title(quantity, units),
                subtitle(units),
                axis,
                PartChartPhrase.axis(film, quantity.in(units).unit()),
                PartChartPhrase.gap(film),
                points);
    }

    /** What comes of the first and of the last value, where both are known. */
    private String title(Quantity quantity, Quantity.UnitSystem units) {
        OptionalDouble first = value(states.get(0));
        OptionalDouble last = value(states.get(states.size() - 1));
        return states.size() < 2 || first.isEmpty() || last.isEmpty()
                ? PartChartPhrase.title(film, kind, varied)
                : PartChartPhrase.finding(
                        film,
                        kind,
                        varied,
                        quantity.with(units, first.getAsDouble()),
                        inUnit(at.get(0)),
                        quantity.with(units, last.getAsDouble()),
                        inUnit(at.get(at.size() - 1)));
    }

    /** A value of what is varied, in the unit of its axis. */
    private String inUnit(double value) {
        String unit = axis.contains("[") ? axis.substring(axis.indexOf('[') + 1, axis.length() - 1) : "";
        return (Digits.four(value) + " " + unit).strip();
    }

    /** What stays the same. */
    private String subtitle(Quantity.UnitSystem units) {
        PartState last = states.get(states.size() - 1);
        List<String> said = new ArrayList<>(keys.isEmpty() ? List.of() : List.of(String.join(" ", keys)));
        if (!varied.equals("drop")) {
            said.addAll(pressures(last, units));
        }
        String oil = last.asked().oil().name();
        said.add(
                varied.equals("temperature")
                        ? oil
                        : HeadingPhrase.at(
                                oil,
                                Quantity.TEMPERATURE.with(units, last.asked().temperature())));
        return String.join("; ", said);
    }

    private static List<String> pressures(PartState last, Quantity.UnitSystem units) {
        Double drop = last.numbers().get(PartNumbers.DROP);
        if (drop != null) {
            return drop == 0 ? List.of() : List.of(PartChartPhrase.drop(Quantity.PRESSURE.with(units, drop)));
        }
        return last.asked().pressures().entrySet().stream()
                .filter(one -> one.getValue() != 0)
                .map(one -> HeadingPhrase.at(Quantity.PRESSURE.with(units, one.getValue()), one.getKey()))
                .toList();
    }
}

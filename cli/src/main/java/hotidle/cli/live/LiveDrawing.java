package hotidle.cli.live;

import hotidle.answer.draw.DrawnLabels;
import hotidle.answer.draw.DrawnScheme;
import hotidle.answer.draw.DrawnState;
import hotidle.answer.format.Quantity;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.scheme.Drawing;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The circuit drawn. It is laid out once for each range and system of units, which takes seconds; colours, widths and words of a state
 * are put into that drawing by the page.
 */
final class LiveDrawing {

    private final DescribedCircuit circuit;
    private final Map<String, String> drawn = new ConcurrentHashMap<>();

    LiveDrawing(DescribedCircuit circuit) {
        this.circuit = circuit;
    }

    /** The drawing as an element of the page, with the words of the first state that it was asked for. */
    String svg(Quantity.UnitSystem units, Transmission unit, DutyPoint duty, Optional<Solution> state) {
        return drawn.computeIfAbsent(
                units + " " + duty.range(),
                key -> new String(
                        new Drawing(scheme(units, unit, duty, state).scheme()).svg("circuit-"),
                        StandardCharsets.UTF_8));
    }

    /** What a state changes in it. */
    DrawnLabels labels(Quantity.UnitSystem units, Transmission unit, DutyPoint duty, Optional<Solution> state) {
        return DrawnLabels.of(scheme(units, unit, duty, state));
    }

    private DrawnScheme scheme(Quantity.UnitSystem units, Transmission unit, DutyPoint duty, Optional<Solution> state) {
        DrawnState shown =
                new DrawnState(unit, duty.range(), Optional.of(duty), state, Optional.empty(), Optional.empty());
        return DrawnScheme.of(units, circuit, shown, Optional.empty());
    }
}

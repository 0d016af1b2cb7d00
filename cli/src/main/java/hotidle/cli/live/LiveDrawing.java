package hotidle.cli.live;

import hotidle.answer.draw.DrawnLabels;
import hotidle.answer.draw.DrawnScheme;
import hotidle.answer.draw.DrawnState;
import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveDrawingRecord;
import hotidle.answer.phrase.DrawPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.scheme.Drawing;
import hotidle.plots.scheme.Scheme;
import hotidle.plots.scheme.SchemePart;
import hotidle.result.Solution;
import hotidle.study.LineCurve;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The circuit drawn. It is laid out once for each range and system of units, which takes seconds and is done in the background; colours,
 * widths and words of a state are put into that drawing by the page.
 */
final class LiveDrawing {

    private final DescribedCircuit circuit;
    private final Layouts layouts;

    LiveDrawing(DescribedCircuit circuit, Layouts layouts) {
        this.circuit = circuit;
        this.layouts = layouts;
    }

    /** The drawing as an element of the page, with the words of the first state that it was asked for, once it is laid out. */
    LiveDrawingRecord drawn(Quantity.UnitSystem units, Transmission unit, DutyPoint duty) {
        Layouts.LayoutProgress progress = layouts.of(
                units + " " + duty.range(),
                step -> svg(
                        roomy(
                                units,
                                scheme(units, unit, duty, state(unit, duty)).scheme()),
                        "circuit-",
                        step));
        return new LiveDrawingRecord(progress.svg(), duty.range(), progress.tried(), Drawing.tries());
    }

    private static Optional<Solution> state(Transmission unit, DutyPoint duty) {
        return LineCurve.of(unit, duty, List.of(), () -> {}).own().state();
    }

    private static String svg(Scheme scheme, String own, Runnable step) {
        return new String(new Drawing(scheme, step).svg(own), StandardCharsets.UTF_8);
    }

    /** What a state changes in it. */
    DrawnLabels labels(Quantity.UnitSystem units, Transmission unit, DutyPoint duty, Optional<Solution> state) {
        return DrawnLabels.of(scheme(units, unit, duty, state));
    }

    /** Each part with a line for its flow, though none is to be seen in the state that is laid out: the next one may have some. */
    private static Scheme roomy(Quantity.UnitSystem units, Scheme drawn) {
        List<SchemePart> parts =
                drawn.parts().stream().map(part -> roomy(units, part)).toList();
        return new Scheme(drawn.title(), drawn.notes(), drawn.frames(), parts, drawn.nets(), drawn.scale());
    }

    private static SchemePart roomy(Quantity.UnitSystem units, SchemePart part) {
        int rows = Double.isNaN(part.stands()) ? 1 : 2;
        if (part.lines().size() >= rows) {
            return part;
        }
        List<String> lines = new ArrayList<>(part.lines());
        lines.add(0, DrawPhrase.flow(units, 0));
        return new SchemePart(
                part.name(),
                part.symbol(),
                part.frame(),
                lines,
                part.widest(),
                part.title(),
                part.pins(),
                part.envelopes(),
                part.moves(),
                part.stands(),
                part.changed());
    }

    /** Any circuit as it is joined, of which no pressures are known; {@code step} throws once nobody waits for it. */
    static String joined(Layouts layouts, Quantity.UnitSystem units, DescribedCircuit circuit, Runnable step) {
        DrawnState shown = new DrawnState(
                circuit.unit(),
                DrawnState.range(circuit.unit(), Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        Scheme scheme = DrawnScheme.of(units, circuit, shown, Optional.empty()).scheme();
        return layouts.now(own -> svg(scheme, "written-", own), step);
    }

    private DrawnScheme scheme(Quantity.UnitSystem units, Transmission unit, DutyPoint duty, Optional<Solution> state) {
        DrawnState shown =
                new DrawnState(unit, duty.range(), Optional.of(duty), state, Optional.empty(), Optional.empty());
        return DrawnScheme.of(units, circuit, shown, Optional.empty());
    }
}

package hotidle.cli;

import hotidle.answer.draw.DrawnScheme;
import hotidle.answer.draw.DrawnState;
import hotidle.answer.format.Quantity;
import hotidle.answer.page.Figure;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.report.ReportAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.scheme.Drawing;
import hotidle.plots.scheme.Scheme;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The circuit drawn for a page. */
final class ReportDrawing {

    private ReportDrawing() {}

    /** The first build at its first driving condition, for a shop; a customer gets none. */
    static List<Figure> of(
            ReportAnswer.Reader reader, Quantity.UnitSystem units, DescribedCircuit circuit, Transmission unit) {
        return reader == ReportAnswer.Reader.CUSTOMER
                ? List.of()
                : List.of(of(units, circuit, unit, unit.duties().stream().findFirst()));
    }

    /** A build at a driving condition, or without pressures where none is given. */
    private static Figure of(
            Quantity.UnitSystem units, DescribedCircuit circuit, Transmission unit, Optional<DutyPoint> at) {
        Drawing drawing = new Drawing(scheme(units, circuit, unit, at));
        return figure(
                drawing,
                ReportPhrase.drawing(
                        circuit.name(),
                        unit.build(),
                        at.map(DutyPoint::name).orElse(""),
                        drawing.paper().name()));
    }

    /** The circuit of a handout: as it should be, without pressures, and without a word of which build it is. */
    static Figure ofLesson(Quantity.UnitSystem units, DescribedCircuit circuit) {
        Scheme scheme = scheme(units, circuit, circuit.unit(), Optional.empty());
        Drawing drawing = new Drawing(
                new Scheme(scheme.title(), List.of(), scheme.frames(), scheme.parts(), scheme.nets(), scheme.scale()));
        return figure(
                drawing, LessonPhrase.drawing(circuit.name(), drawing.paper().name()));
    }

    private static Scheme scheme(
            Quantity.UnitSystem units, DescribedCircuit circuit, Transmission unit, Optional<DutyPoint> at) {
        DrawnState shown = DrawnBuild.at(unit, at, Optional.empty());
        return DrawnScheme.of(units, circuit, shown, Optional.empty()).scheme();
    }

    private static Figure figure(Drawing drawing, String caption) {
        return Figure.sheet(
                new String(drawing.svg("circuit-"), StandardCharsets.UTF_8),
                caption,
                drawing.paper().height() > drawing.paper().width());
    }
}

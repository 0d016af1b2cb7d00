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
                        circuit.name(), unit.build(), at.map(DutyPoint::name).orElse(""), paper(drawing)));
    }

    private static String paper(Drawing drawing) {
        return ReportPhrase.paper(
                drawing.paper().name(),
                Figure.larger(drawing.paper().width(), drawing.paper().height()));
    }

    /** The circuit of a handout: as it should be, without pressures, and without a word of which build it is. */
    static Figure ofLesson(Quantity.UnitSystem units, DescribedCircuit circuit) {
        Scheme scheme = scheme(units, circuit, circuit.unit(), Optional.empty());
        Drawing drawing = new Drawing(
                new Scheme(scheme.title(), List.of(), scheme.frames(), scheme.parts(), scheme.nets(), scheme.scale()));
        String caption = LessonPhrase.drawing(circuit.name(), paper(drawing));
        return scheme.parts().size() > FEW ? figure(drawing, caption) : new Figure(svg(drawing), caption, false);
    }

    private static Scheme scheme(
            Quantity.UnitSystem units, DescribedCircuit circuit, Transmission unit, Optional<DutyPoint> at) {
        DrawnState shown = DrawnBuild.at(unit, at, Optional.empty());
        return DrawnScheme.of(units, circuit, shown, Optional.empty()).scheme();
    }

    /** So few parts are drawn larger than life, and need no sheet of their own to be read (chosen). */
    private static final int FEW = 12;

    private static Figure figure(Drawing drawing, String caption) {
        return Figure.sheet(
                svg(drawing), caption, drawing.paper().width(), drawing.paper().height());
    }

    private static String svg(Drawing drawing) {
        return new String(drawing.svg("circuit-"), StandardCharsets.UTF_8);
    }
}

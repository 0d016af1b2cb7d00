package hotidle.answer.torque;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.assess.Margin;
import hotidle.plots.LinesChart;
import hotidle.study.Judgement;
import hotidle.study.TorqueByPressure;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.UsefulPressure;
import hotidle.study.Window;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class TorquePictureTest {

    private static final Carrier SHAFT = new Carrier("input-shaft", false, 600, false);

    private static TorqueByPressure.TorqueAtPressure point(double bar, double clutch) {
        Carrier low = new Carrier("low-clutch", true, clutch, false);
        return new TorqueByPressure.TorqueAtPressure(
                bar * 1e5,
                OptionalDouble.of(Math.min(clutch, 600)),
                clutch < 600 ? List.of(low, SHAFT) : List.of(SHAFT, low));
    }

    private static final TorqueByPressure HELD =
            new TorqueByPressure(List.of(point(5, 300), point(10, 600), point(20, 1200)));

    private static Window.PressureRange upTo(double bar, Margin.Kind kind, String part) {
        return new Window.PressureRange(
                5e5, Optional.empty(), bar * 1e5, Optional.of(new Judgement.Key("hot-idle", kind, part)));
    }

    private static Window.Span span(Margin.Kind kind, String part, List<Window.PressureRange> ranges) {
        return new Window.Span(
                kind,
                part,
                ranges,
                ranges.isEmpty() ? Optional.of(new Judgement.Key("hot-idle", kind, part)) : Optional.empty(),
                List.of());
    }

    private static LinesChart chart(List<Window.PressureRange> all, Window.Span... spans) {
        UsefulPressure useful =
                new UsefulPressure(Optional.of(SHAFT), "first", OptionalDouble.of(10e5), 5e5, 20e5, List.of());
        TorquePicture made = new TorquePicture(
                UnitSystem.METRIC, "made", 8e5, HELD, useful, new Window(List.of(), List.of(spans), all));
        return TorquePicture.charts("rig", List.of(made)).get(0);
    }

    @Test
    void clutchesRiseShaftsLieFlatAndTheCrossingIsMarked() {
        LinesChart chart = chart(List.of(upTo(18, Margin.Kind.RELIEF, "relief")));
        assertEquals(
                List.of("low-clutch", "input-shaft"),
                chart.lines().stream().map(LinesChart.Line::name).toList());
        assertEquals("made: above 10.00 bar set pressure input-shaft gives first; more buys no torque", chart.title());
        assertEquals(1200, chart.lines().get(0).points().get(2).y());
        assertEquals(600, chart.lines().get(1).points().get(0).y());
        assertEquals(10, chart.mark().orElseThrow().x());
        assertEquals(
                List.of("set now: 8.00 bar", "above 18.00 bar fails: relief valve (relief) at hot-idle"), texts(chart));
    }

    /** A build without the shaft's rating shows its clutch as the build beside it does. */
    @Test
    void aLinkLooksTheSameInTheChartsOfAllBuilds() {
        UsefulPressure none =
                new UsefulPressure(Optional.empty(), "first", OptionalDouble.empty(), 5e5, 20e5, List.of());
        Window window = new Window(List.of(), List.of(), List.of());
        TorqueByPressure shaftAlone = new TorqueByPressure(List.of(
                new TorqueByPressure.TorqueAtPressure(5e5, OptionalDouble.of(600), List.of(SHAFT)),
                new TorqueByPressure.TorqueAtPressure(10e5, OptionalDouble.of(600), List.of(SHAFT))));
        List<LinesChart> charts = TorquePicture.charts(
                "rig",
                List.of(
                        new TorquePicture(UnitSystem.METRIC, "both", 8e5, HELD, none, window),
                        new TorquePicture(UnitSystem.METRIC, "shaft", 8e5, shaftAlone, none, window)));
        assertEquals("input-shaft", charts.get(0).lines().get(1).name());
        assertEquals(
                List.of(charts.get(0).lines().get(1).look()),
                charts.get(1).lines().stream().map(LinesChart.Line::look).toList());
    }

    @Test
    void lubricationAndHubFilmEndIt() {
        LinesChart chart = chart(
                List.of(upTo(15, Margin.Kind.LUBRICATION, "lube")),
                span(Margin.Kind.LUBRICATION, "lube", List.of(upTo(15, Margin.Kind.LUBRICATION, "lube"))),
                span(Margin.Kind.LUBRICATION, "rear", List.of(upTo(17, Margin.Kind.LUBRICATION, "rear"))),
                span(Margin.Kind.FILM, "hub", List.of(upTo(16, Margin.Kind.FILM, "hub"))));
        assertEquals(
                List.of(
                        "set now: 8.00 bar",
                        "above 15.00 bar fails: lubrication (lube) at hot-idle",
                        "above 16.00 bar fails: hub film (hub) at hot-idle"),
                texts(chart));
    }

    @Test
    void whatFailsAtEveryPressureStandsAtTheLowest() {
        LinesChart chart = chart(List.of(), span(Margin.Kind.LUBRICATION, "lube", List.of()));
        assertTrue(
                texts(chart).contains("fails at every one: lubrication (lube) at hot-idle"),
                texts(chart).toString());
        assertEquals(5, chart.places().get(1).x());
    }

    private static List<String> texts(LinesChart chart) {
        return chart.places().stream().map(LinesChart.AtPlace::text).toList();
    }
}

package hotidle.answer.window;

import hotidle.answer.LimitRecord;
import hotidle.answer.UsefulPressureRecord;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.Window;
import java.util.List;
import java.util.Optional;

/** Which set pressures each limit of some builds allows, as JSON. */
record WindowRecord(String circuit, List<WindowOfBuild> builds) {

    record WindowOfBuild(
            String build,
            String summary,
            List<HoldingRange> allHold,
            Optional<UsefulPressureRecord> usefulPressure,
            List<LimitRecord> notKnown,
            List<SpanRecord> limits,
            List<PointRecord> points) {}

    /** Set pressures between which something holds, and the limit that ends it; null where nothing tried does. */
    record HoldingRange(double lowPa, Optional<String> lowBy, double highPa, Optional<String> highBy) {}

    /** What one limit allows; the worst duty is empty where it holds anywhere, and it is not known whether it does at others. */
    record SpanRecord(
            String margin, String part, List<HoldingRange> holds, String worstDuty, List<String> notKnownAt) {}

    /** One set pressure that was tried. */
    record PointRecord(
            double setPressurePa,
            List<LimitAtPressure> margins,
            List<String> unsolvedDuties,
            List<String> noTemperatureDuties) {}

    /** A limit at one set pressure. */
    record LimitAtPressure(String duty, String margin, String part, String verdict, double headroom) {}

    static WindowRecord of(WindowAnswer answer) {
        WindowSentences sentences = new WindowSentences(answer.units());
        return new WindowRecord(
                answer.circuit(),
                answer.builds().stream().map(one -> build(sentences, one)).toList());
    }

    private static WindowOfBuild build(WindowSentences sentences, WindowAnswer.BuildWindow one) {
        Window window = one.window();
        return new WindowOfBuild(
                one.name(),
                sentences.summary(one),
                ranges(window.all()),
                one.useful().map(UsefulPressureRecord::of),
                LimitRecord.of(window.undecided()),
                window.spans().stream().map(WindowRecord::span).toList(),
                window.points().stream().map(WindowRecord::point).toList());
    }

    private static SpanRecord span(Window.Span span) {
        return new SpanRecord(
                span.kind().word(),
                span.part(),
                ranges(span.ranges()),
                span.worst().map(Judgement.Key::duty).orElse(""),
                span.undecided().stream().map(Judgement.Key::duty).toList());
    }

    private static List<HoldingRange> ranges(List<Window.PressureRange> ranges) {
        return ranges.stream()
                .map(range -> new HoldingRange(
                        range.low(),
                        range.lowBy().map(WindowSentences::limit),
                        range.high(),
                        range.highBy().map(WindowSentences::limit)))
                .toList();
    }

    private static PointRecord point(Window.SetPoint point) {
        return new PointRecord(
                point.pressure(),
                point.margins().entrySet().stream()
                        .map(one -> limit(one.getKey(), one.getValue()))
                        .toList(),
                point.unsolved(),
                point.noTemperature());
    }

    private static LimitAtPressure limit(Judgement.Key key, Margin margin) {
        return new LimitAtPressure(
                key.duty(), key.kind().word(), key.part(), margin.verdict().word(), margin.headroom());
    }
}

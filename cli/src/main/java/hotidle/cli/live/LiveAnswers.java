package hotidle.cli.live;

import hotidle.answer.draw.DrawnLabels;
import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveCostsRecord;
import hotidle.answer.live.LiveDrawingRecord;
import hotidle.answer.live.LiveStateRecord;
import hotidle.answer.live.LiveUnitRecord;
import hotidle.answer.phrase.LivePhrase;
import hotidle.study.LineCurve;
import hotidle.study.RepairFindings;
import hotidle.study.Repairs;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * What a page may ask, and who answers. Each answer depends on the question alone, so that pages cannot mix and any of them can be asked
 * again.
 */
final class LiveAnswers {

    /** Answers a question; {@code step} is run between its parts and throws once nobody waits for it. */
    interface Answerer {
        Object answer(LiveQuestion question, Runnable step);
    }

    /** Speeds of the curve [rev/s]: 500 to 4000 rpm in steps of 50 (chosen). */
    private static final List<Double> SPEEDS =
            IntStream.rangeClosed(10, 80).mapToObj(i -> i * 50 / 60.0).toList();

    /** Questions that follow one of a state and take longer. */
    private static final Set<String> FOLLOWING =
            Set.of("verdict", "window", "costs", "jobs", "ahead", "agreement", "likely", "causes");

    private final LiveUnit unit;
    private final Layouts layouts = new Layouts();
    private final LiveDrawing drawing;
    private final Map<String, Answerer> answerers = new LinkedHashMap<>();

    /** Curves kept as reference, of which each page has one that it asks for with every question (chosen). */
    private final Recent<AskedState, LineCurve> references = new Recent<>(16);

    /**
     * Of a circuit.
     *
     * @param commands that a page asks for too
     */
    LiveAnswers(LiveUnit unit, OtherCommands commands) {
        this.unit = unit;
        drawing = new LiveDrawing(unit.circuit(), layouts);
        answerers.put("unit", (question, step) -> unit(question));
        answerers.put("state", this::state);
        LiveVerdict verdict = new LiveVerdict(unit, commands, SPEEDS);
        answerers.put("verdict", (question, step) -> verdict.of(question.state(), units(question), step));
        LiveWindow window = new LiveWindow(unit, commands);
        answerers.put("window", (question, step) -> window.of(question.state(), units(question), step));
        answerers.put("costs", this::costs);
        LiveJobs jobs = new LiveJobs(unit);
        answerers.put("jobs", (question, step) -> jobs.moves(question.state(), units(question), step));
        answerers.put("drawing", (question, step) -> drawing(question));
        LiveGauges gauges = new LiveGauges(unit);
        answerers.put("gauges", gauges::gauges);
        answerers.put("ahead", gauges::ahead);
        answerers.put("agreement", (question, step) -> gauges.agreement(question, units(question)));
        answerers.put("likely", (question, step) -> gauges.likely(question, units(question), step));
        answerers.put("causes", (question, step) -> gauges.causes(question, units(question), step));
        answerers.put("readings-file", (question, step) -> gauges.file(question));
        answerers.put("readings-taken", (question, step) -> gauges.taken(question));
        answerers.putAll(new LiveLesson(unit).answerers());
        answerers.putAll(new WrittenCircuit(unit, layouts).answerers());
        LiveFiles files = new LiveFiles(unit);
        answerers.put("sheet-file", (question, step) -> files.sheet(question.state(), units(question)));
        answerers.put("build-file", (question, step) -> files.build(question.state()));
        LiveReport report = new LiveReport(unit, files, gauges, commands);
        answerers.put("report-file", (question, step) -> report.file(question, units(question)));
    }

    /** The kind of question that outdoes an older one of a kind: nobody waits for the verdict on a state that has been left. */
    static String outdoneBy(String kind) {
        return FOLLOWING.contains(kind) ? "state" : kind;
    }

    /** Kinds of question. */
    Set<String> kinds() {
        return answerers.keySet();
    }

    /** The answer, a record that becomes JSON. */
    Object answer(String kind, LiveQuestion question, Runnable step) {
        return answerers.get(kind).answer(question, step);
    }

    /** Works ahead what the first page asks for: its verdict, and the drawing, which takes longest. {@code step} throws once it is to end. */
    void ahead(Runnable step) {
        LiveQuestion first = LiveQuestion.first(unit.units());
        state(first, step);
        answer("verdict", first, step);
        step.run();
        while (drawing(first).svg().isEmpty()) {
            step.run();
        }
    }

    /** Nothing more is laid out. */
    void close() {
        layouts.close();
    }

    private Quantity.UnitSystem units(LiveQuestion question) {
        return question.system().orElse(unit.units());
    }

    private LiveUnitRecord unit(LiveQuestion question) {
        Adjustable worked = unit.worked(question.state());
        return LiveUnitRecord.of(unit.circuit(), worked, unit.jobs(unit.build(question.state())), unit.units());
    }

    private LiveStateRecord state(LiveQuestion question, Runnable step) {
        Transmission made = unit.unit(question.state());
        DutyPoint duty = unit.looked(made, question.state());
        LineCurve curve = LineCurve.of(made, duty, SPEEDS, step);
        Optional<DrawnLabels> labels = question.drawn()
                ? Optional.of(
                        drawing.labels(units(question), made, duty, curve.own().state()))
                : Optional.empty();
        Optional<LineCurve> reference = question.kept().map(kept -> references.of(kept, () -> curve(kept, step)));
        return LiveStateRecord.of(made, duty, curve, reference, labels);
    }

    private LineCurve curve(AskedState kept, Runnable step) {
        Transmission made = unit.unit(kept);
        return LineCurve.of(made, unit.looked(made, kept), SPEEDS, step);
    }

    private LiveDrawingRecord drawing(LiveQuestion question) {
        Transmission made = unit.unit(question.state());
        return drawing.drawn(units(question), made, unit.looked(made, question.state()));
    }

    private LiveCostsRecord costs(LiveQuestion question, Runnable step) {
        Adjustable made = unit.adjustable(question.state());
        DutyPoint duty = unit.looked(unit.unit(question.state()), question.state());
        return Repairs.study(made, duty, List.of(duty.speed()), 0, step)
                .map(found -> LiveCostsRecord.of(
                        found,
                        RepairFindings.of(
                                found,
                                made.unit().commanded().isPresent(),
                                found.alone().size())))
                .orElseThrow(() -> new WrongStateException(LivePhrase.NO_COSTS));
    }
}

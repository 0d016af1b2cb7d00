package hotidle.answer.report;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.gauge.GaugeAnswer;
import hotidle.answer.gauge.GaugePage;
import hotidle.answer.heat.HeatAnswer;
import hotidle.answer.jobs.JobsAnswer;
import hotidle.answer.page.Block;
import hotidle.answer.page.Figure;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.phrase.WindowPhrase;
import hotidle.answer.sweep.SweepCharts;
import hotidle.answer.torque.TorqueAnswer;
import hotidle.answer.wear.WearAnswer;
import hotidle.answer.window.WindowAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.JudgedBuild;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The sections of a report for who does the work, in reading order.
 *
 * @param units   in which it is shown
 * @param circuit what it is about
 * @param found   what the commands answered
 * @param drawing of the circuit
 * @param photographs of the unit
 * @param made    what it was made of
 */
record ReportSections(
        Quantity.UnitSystem units,
        DescribedCircuit circuit,
        Findings found,
        List<Figure> drawing,
        List<Figure> photographs,
        MadeOf made) {

    /** Each is made beside the others, since charts take their time. */
    List<Section> all() {
        List<Supplier<Optional<Section>>> each = List.of(
                () -> of("answer", ReportPhrase.ANSWER, Optional.of(answer())),
                () -> of("compared", ReportPhrase.COMPARED, Optional.of(compared())),
                () -> of("torque", ReportPhrase.TORQUE, found.torque().map(TorqueAnswer::page)),
                () -> of("limits", ReportPhrase.MARGINS, Optional.of(margins())),
                this::oil,
                () -> of("jobs", ReportPhrase.JOBS, found.jobs().map(this::jobs)),
                () -> of("pressures", ReportPhrase.WINDOW, found.window().map(WindowAnswer::page)),
                () -> of("wear", ReportPhrase.WEAR, found.wear().map(WearAnswer::page)),
                () -> of("heat", ReportPhrase.HEAT, found.heat().map(HeatAnswer::page)),
                () -> of("gauge", ReportPhrase.GAUGE, found.gauge().map(this::gauge)),
                this::shown,
                () -> of("circuit", ReportPhrase.DRAWING, Optional.of(circuitDrawn())),
                () -> of("builds", ReportPhrase.BUILDS, Optional.of(builds())),
                () -> of("assumptions", ReportPhrase.ASSUMPTIONS, Optional.of(assumptions())),
                () -> Optional.of(MethodSection.of(circuit)),
                () -> Optional.of(cautions()),
                () -> Optional.of(howMade()));
        return each.parallelStream()
                .map(Supplier::get)
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Section> of(String name, String title, Optional<List<Block>> blocks) {
        return blocks.map(found -> new Section(name, title, found));
    }

    private List<Block> gauge(GaugeAnswer gauge) {
        return ofOne(names().get(0), new GaugePage(gauge).blocks());
    }

    private List<Block> circuitDrawn() {
        return drawing.stream().map(Block::figure).toList();
    }

    /** Whether gauge readings agree, what each build comes to, what may be set and which jobs it takes. */
    List<Block> answer() {
        List<Block> blocks = new ArrayList<>();
        found.gauge().ifPresent(gauge -> blocks.add(new GaugePage(gauge).verdict()));
        for (JudgedBuild build : found.margins().builds()) {
            List<Block.Line> lines = new ArrayList<>();
            lines.add(new Block.Line(found.margins().verdict(build), Verdicts.style(build)));
            found.window()
                    .ifPresent(window ->
                            lines.add(new Block.Line(window.brief(build.unit().build()), Block.Line.BELOW)));
            found.jobs(build.unit().build())
                    .ifPresent(jobs -> lines.add(
                            new Block.Line(ReportPhrase.jobs(build.unit().build(), jobs.first()), Block.Line.BELOW)));
            blocks.add(new Block(lines, List.of(), List.of()));
        }
        if (!noStall().isEmpty()) {
            blocks.add(new Block(List.of(new Block.Line(noStall(), Block.Line.CAUTION)), List.of(), List.of()));
        }
        return blocks;
    }

    private String noStall() {
        return NoStallPhrase.of(found.margins().builds().stream()
                .filter(JudgedBuild::lowAtIdle)
                .map(build -> build.unit().build())
                .toList());
    }

    private List<String> names() {
        return found.margins().builds().stream()
                .map(JudgedBuild::unit)
                .map(Transmission::build)
                .toList();
    }

    private List<Block> builds() {
        List<String> said = new ArrayList<>();
        TextTable changes = new TextTable(ReportPhrase.CHANGES);
        for (DescribedCircuit.Build build : circuit.builds()) {
            if (names().contains(build.name())) {
                said.add(ReportPhrase.build(build.name(), build.about(), build.on()));
                build.changes()
                        .forEach(change ->
                                changes.add(List.of(build.name(), change.what(), change.value(), change.because())));
            }
        }
        return changes.body().isEmpty()
                ? List.of(Block.said(said))
                : List.of(Block.said(said), Block.table(ReportPhrase.CHANGES_OF_ALL, changes));
    }

    private List<Block> compared() {
        List<Block> blocks = new ArrayList<>(found.compare().page());
        charts().ifPresent(charts -> {
            blocks.add(Block.figure(charts.pressure()));
            charts.lowPressure().forEach(figure -> blocks.add(Block.figure(figure)));
        });
        return blocks;
    }

    Optional<ReportCharts> charts() {
        return found.sweeps().map(SweepCharts::new).map(ReportCharts::new);
    }

    private List<Block> margins() {
        List<Block> blocks = new ArrayList<>(found.margins().page());
        charts().ifPresent(charts -> charts.hub().forEach(figure -> blocks.add(Block.figure(figure))));
        return blocks;
    }

    private Optional<Section> oil() {
        return found.leaks().map(leaks -> {
            List<Block> blocks = new ArrayList<>(withTold(leaks.page()));
            if (jobsToChoose()) {
                blocks.add(1, Block.said(ReportPhrase.BY_SIZE));
            }
            charts().ifPresent(charts -> charts.oil().forEach(figure -> blocks.add(Block.figure(figure))));
            return new Section("oil", ReportPhrase.OIL, blocks);
        });
    }

    private boolean jobsToChoose() {
        return found.jobs().filter(jobs -> !jobs.shop().jobs().isEmpty()).isPresent();
    }

    private List<Block> jobs(JobsAnswer jobs) {
        List<Block> blocks = new ArrayList<>(withTold(jobs.page()));
        if (found.leaks().isPresent() && jobsToChoose()) {
            blocks.add(1, Block.said(ReportPhrase.BY_JOB));
        }
        return blocks;
    }

    /** Where several builds are shown, of which one it is told. */
    List<Block> withTold(List<Block> blocks) {
        return ofOne(found.told(), blocks);
    }

    private List<Block> ofOne(String build, List<Block> blocks) {
        List<Block> all = new ArrayList<>();
        if (names().size() > 1) {
            all.add(Block.said(ReportPhrase.ofOne(build, build.equals(names().get(0)))));
        }
        all.addAll(blocks);
        return all;
    }

    private List<Block> assumptions() {
        List<Block> blocks = new ArrayList<>(found.check().page());
        List<String> care = found.compare().takenWithCare();
        if (!care.isEmpty()) {
            List<String> said = new ArrayList<>(List.of(ReportPhrase.OUTSIDE));
            care.forEach(line -> said.add(" " + line));
            blocks.add(Block.said(said));
        }
        return blocks;
    }

    /** What must be known before anything of it is done. */
    List<String> beforeUse() {
        Transmission unit = found.margins().builds().get(0).unit();
        return List.of(Caution.whole(unit.commanded().isPresent()), WindowPhrase.notJudged(unit.rated()), noStall());
    }

    private Section cautions() {
        List<String> said = new ArrayList<>(beforeUse());
        said.addAll(ReportPhrase.leftOut(
                found.window().isPresent(),
                found.torque().isPresent(),
                found.leaks().isPresent(),
                found.heat().isPresent(),
                found.gauge().isPresent(),
                found.wear().isPresent()));
        return new Section("cautions", ReportPhrase.CARE, List.of(Block.said(said)));
    }

    /** Those of the letterhead's file. */
    Optional<Section> shown() {
        return photographs.isEmpty()
                ? Optional.empty()
                : Optional.of(new Section(
                        "photographs",
                        ReportPhrase.PHOTOGRAPHS,
                        photographs.stream().map(Block::figure).toList()));
    }

    private Section howMade() {
        return new Section("made", ReportPhrase.MADE, new MadeSection(made).blocks());
    }
}

package hotidle.answer.compare;

import hotidle.answer.Answer;
import hotidle.answer.Settling;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.DoubtPhrase;
import hotidle.answer.phrase.FlowsPhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.assess.Doubt;
import hotidle.assess.FiguresChange;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Comparison;
import hotidle.study.FrictionBands;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Builds side by side at each duty point, and what differs.
 *
 * @param described  the circuit, for what its author says of it and its builds
 * @param comparison what was solved
 * @param bands      the friction bands of its states
 * @param shown      names of the driving conditions shown, at least one
 * @param settling   at which temperatures
 * @param asked      the engine torque that builds are to hold; empty where none is asked for
 * @param unmeasured how far the leading answers of builds may lie with fits that nobody measured
 * @param units      in which it is shown
 */
public record CompareAnswer(
        DescribedCircuit described,
        Comparison comparison,
        FrictionBands bands,
        List<String> shown,
        Settling settling,
        List<BuildBand> unmeasured,
        Optional<TorqueAsked> asked,
        Quantity.UnitSystem units)
        implements Answer {

    public CompareAnswer {
        shown = List.copyOf(shown);
        unmeasured = List.copyOf(unmeasured);
    }

    /** All driving conditions shown, at the temperatures of the file. */
    public CompareAnswer(
            DescribedCircuit described, Comparison comparison, FrictionBands bands, Quantity.UnitSystem units) {
        this(
                described,
                comparison,
                bands,
                comparison.duties().stream().map(DutyPoint::name).toList(),
                Settling.AS_GIVEN,
                List.of(),
                Optional.empty(),
                units);
    }

    private boolean commanded() {
        return comparison.units().get(0).commanded().isPresent();
    }

    private List<CompareRow> rows() {
        if (!commanded()) {
            return new UncommandedRows(comparison, units).all();
        }
        List<CompareRow> rows = new ArrayList<>(new RegulatedRows(comparison, bands, units).all());
        asked.ifPresent(torque -> rows.add(new CompareRow(
                torque.label(units), cell -> torque.cell(cell.unit().build(), units))));
        return rows;
    }

    @Override
    public String screen() {
        DutyPoint duty = comparison.duties().stream()
                .filter(one -> shown.contains(one.name()))
                .findFirst()
                .orElseThrow();
        String heading =
                HeadingPhrase.at(described.name(), new CompareHeading(comparison, units).of(duty, duty.name()));
        if (!commanded()) {
            return new BenchScreen(comparison, duty, heading, rows(), units).text();
        }
        return new CompareScreen(
                        comparison,
                        duty,
                        Wrap.lines(heading, "", "  ") + settling.text(),
                        sentences(duty),
                        Caution.of(true, raised()) + "\n" + NoStallPhrase.of(comparison.lowAtIdle()),
                        asked,
                        units)
                .text();
    }

    /** Under the first screen: what was asked for before all else. */
    private List<String> sentences(DutyPoint duty) {
        List<String> all = new ArrayList<>();
        asked.ifPresent(torque -> all.add(torque.said(units)));
        List<String> open = unmeasured.stream().map(one -> one.said(units)).toList();
        all.addAll(new ScreenSentences(described, comparison, duty.name(), units, settling.made()).all(open));
        return all;
    }

    /** The same on a page: figures and words of the first screen, then all in plain words. */
    public List<Block> page() {
        DutyPoint duty = comparison.duties().stream()
                .filter(one -> shown.contains(one.name()))
                .findFirst()
                .orElseThrow();
        String heading = new CompareHeading(comparison, units).of(duty, duty.name());
        if (!commanded()) {
            return List.of(Block.table(heading, table(duty, rows())), Block.said(List.of(FlowsPhrase.UNCOMMANDED)));
        }
        return List.of(
                Block.table(heading, new CompareScreen(comparison, duty, "", List.of(), "", asked, units).whole()),
                Block.said(new ScreenSentences(described, comparison, duty.name(), units, settling.made()).onPaper()),
                Block.said(new CompareSentences(described, comparison, units).all()));
    }

    /** What lies outside the range of the laws. */
    public List<String> takenWithCare() {
        return DoubtPhrase.summary(doubts(), units);
    }

    /** Whether builds differ in what is commanded, so that pressure is raised in some. */
    private boolean raised() {
        double first = comparison.units().get(0).highestSet();
        return comparison.units().stream().anyMatch(unit -> !FiguresChange.same(unit.highestSet(), first));
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder();
        text.append(HeadingPhrase.headed(described.name(), described.about())).append("\n");
        text.append(settling.text());
        described.builds().stream()
                .filter(build -> !build.about().isEmpty())
                .filter(build -> comparison.units().stream()
                        .anyMatch(unit -> unit.build().equals(build.name())))
                .forEach(build -> text.append("  ")
                        .append(HeadingPhrase.headed(build.name(), build.about()))
                        .append("\n"));
        List<CompareRow> rows = rows();
        for (DutyPoint duty : comparison.duties()) {
            if (!shown.contains(duty.name())) {
                continue;
            }
            text.append("\n")
                    .append(new CompareHeading(comparison, units)
                            .of(duty, HeadingPhrase.titled(duty.name(), duty.about())))
                    .append("\n");
            text.append(table(duty, rows).aligned());
        }
        text.append("\n").append(Wrap.lines(commanded() ? FlowsPhrase.VOLUMES : FlowsPhrase.UNCOMMANDED, "", ""));
        text.append("\n" + HeadingPhrase.IN_WORDS + "\n");
        asked.ifPresent(torque -> text.append(Wrap.lines(torque.said(units), "  ", "    ")));
        unmeasured.forEach(one -> text.append(Wrap.lines(one.said(units), "  ", "    ")));
        new CompareSentences(described, comparison, units)
                .all()
                .forEach(line -> text.append(
                        line.startsWith(" ") ? Wrap.lines(line, "    ", "    ") : Wrap.lines(line, "  ", "    ")));
        List<String> doubts = takenWithCare();
        if (!doubts.isEmpty()) {
            text.append("\n" + HeadingPhrase.WITH_CARE + "\n");
            doubts.forEach(line -> text.append(Wrap.lines(line, "  ", "    ")));
        }
        text.append("\n").append(Caution.whole(commanded())).append("\n");
        return text.append(NoStallPhrase.of(comparison.lowAtIdle())).toString();
    }

    private Map<String, List<Doubt>> doubts() {
        Map<String, List<Doubt>> doubts = new LinkedHashMap<>();
        comparison
                .cells()
                .forEach(cell -> cell.assessed()
                        .ifPresent(one -> doubts.computeIfAbsent(cell.duty().name(), name -> new ArrayList<>())
                                .addAll(one.doubts())));
        return doubts;
    }

    private TextTable table(DutyPoint duty, List<CompareRow> rows) {
        List<String> head = new ArrayList<>(List.of(""));
        comparison.units().forEach(unit -> head.add(unit.build()));
        TextTable table = new TextTable(head);
        for (CompareRow row : withCulprit(rows, cell -> cell.duty().name().equals(duty.name()))) {
            List<String> cells = new ArrayList<>(List.of(row.label()));
            for (Transmission unit : comparison.units()) {
                cells.add(row.text().apply(comparison.cell(unit.build(), duty.name())));
            }
            table.add(cells);
        }
        return table;
    }

    /** The rows, headed by what keeps a state from being found, where one of some was not. */
    private List<CompareRow> withCulprit(List<CompareRow> rows, Predicate<Comparison.BuildAtDuty> some) {
        List<CompareRow> all = new ArrayList<>();
        if (comparison.cells().stream()
                .filter(some)
                .anyMatch(cell -> cell.outcome().unsolved().isPresent())) {
            all.add(CompareRow.CULPRIT);
        }
        all.addAll(rows);
        return all;
    }

    @Override
    public TextTable table() {
        List<String> head = new ArrayList<>(List.of("duty", "build"));
        List<CompareRow> rows = withCulprit(rows(), cell -> true);
        Comparison asked = comparison.only(shown);
        rows.forEach(row -> head.add(row.label().strip()));
        TextTable table = new TextTable(head);
        for (Comparison.BuildAtDuty cell : asked.cells()) {
            List<String> cells =
                    new ArrayList<>(List.of(cell.duty().name(), cell.unit().build()));
            rows.forEach(row -> cells.add(row.text().apply(cell)));
            table.add(cells);
        }
        return table;
    }

    @Override
    public Object json() {
        return CompareRecord.of(comparison.only(shown), settling, asked);
    }

    @Override
    public boolean complete() {
        return comparison.cells().stream()
                .allMatch(cell -> cell.outcome().state().isPresent()
                        && cell.sweep().rising().stream()
                                .allMatch(outcome -> outcome.state().isPresent()));
    }
}

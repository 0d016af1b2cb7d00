package hotidle.answer.report;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.page.Figure;
import hotidle.answer.page.Page;
import hotidle.answer.page.PageAnswer;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.SpeedSweep;
import java.util.ArrayList;
import java.util.List;

/**
 * A handout for learners: units called by letters, what their gauges read, and a key on a page of its own.
 *
 * @param units      in which it is shown
 * @param file       where it lies
 * @param letterhead lines above it; may be empty
 * @param circuit    what it is about
 * @param cases      its units, in the order of the letters
 * @param drawing    of the circuit as it should be, without pressures
 * @param made       what it was made of; stands on the key's page
 */
public record LessonAnswer(
        Quantity.UnitSystem units,
        String file,
        List<String> letterhead,
        DescribedCircuit circuit,
        List<LessonUnit> cases,
        Figure drawing,
        MadeOf made)
        implements PageAnswer {

    public LessonAnswer {
        letterhead = List.copyOf(letterhead);
        cases = List.copyOf(cases);
    }

    private List<SpeedSweep> sweeps() {
        return cases.stream().map(LessonUnit::sweep).toList();
    }

    @Override
    public Page page() {
        LessonCharts charts = new LessonCharts(units, sweeps());
        List<Block> pressures = new ArrayList<>();
        charts.figures().forEach(figure -> pressures.add(Block.figure(figure)));
        pressures.add(Block.table(LessonPhrase.readings(units), charts.readings()));
        return new Page(
                LessonPhrase.title(circuit.name()),
                LessonPhrase.question(cases.size()),
                ReportPhrase.head(letterhead, HeadingPhrase.headed(circuit.name(), circuit.about())),
                List.of(
                        new Section("task", LessonPhrase.TASK, List.of(Block.said(LessonPhrase.task(cases.size())))),
                        new Section("circuit", LessonPhrase.CIRCUIT, List.of(Block.figure(drawing), ports(charts))),
                        new Section("pressures", LessonPhrase.PRESSURES, pressures),
                        new Section("findings", LessonPhrase.FINDINGS, List.of(findings())),
                        new Section("key", LessonPhrase.KEY, key())));
    }

    private static Block ports(LessonCharts charts) {
        TextTable ports = new TextTable(LessonPhrase.PORT_HEAD);
        charts.taps().forEach(tap -> ports.add(List.of(tap.name(), tap.port(), tap.between())));
        return Block.table(LessonPhrase.PORTS, ports);
    }

    private Block findings() {
        TextTable table = new TextTable(LessonPhrase.FILL_IN_HEAD);
        for (int i = 0; i < cases.size(); i++) {
            table.add(List.of(LessonPhrase.unit(i), "", "", ""));
        }
        return Block.table(LessonPhrase.FILL_IN, table);
    }

    private List<Block> key() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.said(LessonPhrase.KEY_NOTE));
        blocks.add(Block.table(LessonPhrase.KEY_TABLE, table()));
        blocks.addAll(new MadeSection(made).blocks());
        return blocks;
    }

    @Override
    public String full() {
        Page page = page();
        return file + "\n"
                + Wrap.lines(ReportPhrase.written(page.sections().size(), page.tables(), page.figures()), "", "  ")
                + Wrap.lines(LessonPhrase.KEY_NOTE, "", "  ");
    }

    /** Which unit is which build. */
    @Override
    public TextTable table() {
        TextTable table = new TextTable(LessonPhrase.KEY_HEAD);
        for (int i = 0; i < cases.size(); i++) {
            SpeedSweep sweep = cases.get(i).sweep();
            String build = sweep.unit().build();
            table.add(List.of(
                    LessonPhrase.unit(i),
                    build,
                    cases.get(i).fault(),
                    circuit.builds().stream()
                            .filter(one -> one.name().equals(build))
                            .map(DescribedCircuit.Build::about)
                            .findFirst()
                            .orElse(""),
                    new OnsetPhrase(units)
                            .from(
                                    sweep.onset(),
                                    sweep.shown().get(0).conditions().speed())));
        }
        return table;
    }

    @Override
    public Object json() {
        return LessonRecord.of(this);
    }

    @Override
    public boolean complete() {
        return sweeps().stream()
                .flatMap(sweep -> sweep.shown().stream())
                .allMatch(outcome -> outcome.state().isPresent());
    }
}

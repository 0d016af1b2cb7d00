package hotidle.answer.report;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.gauge.CauseWords;
import hotidle.answer.page.Block;
import hotidle.answer.page.Figure;
import hotidle.answer.page.Page;
import hotidle.answer.page.PageAnswer;
import hotidle.answer.page.Section;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.phrase.UnitFaultPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.fault.UnitFault;
import hotidle.study.SpeedSweep;
import hotidle.study.TellingReading;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

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

    /** Numbers of the speeds that stand in the tables: the first, the middle and the last. */
    public static List<Integer> rows(int speeds) {
        return List.of(0, (speeds - 1) / 2, speeds - 1);
    }

    /** In one of the ranges that are shown. */
    private LessonCharts charts(int range) {
        return new LessonCharts(
                units, range, cases.stream().map(one -> one.sweeps().get(range)).toList());
    }

    private int ranges() {
        return cases.get(0).sweeps().size();
    }

    @Override
    public Page page() {
        List<Block> pressures = new ArrayList<>();
        Transmission sound = circuit.unit();
        for (int range = 0; range < ranges(); range++) {
            DutyPoint duty = cases.get(0).sweeps().get(range).duty();
            charts(range).figures().forEach(figure -> pressures.add(Block.figure(figure)));
            pressures.add(Block.table(
                    LessonPhrase.readings(units, duty.range(), sound.setPressure(sound.conditions(duty))),
                    charts(range).readings()));
        }
        return new Page(
                LessonPhrase.title(circuit.name()),
                LessonPhrase.question(cases.size()),
                ReportPhrase.head(letterhead, HeadingPhrase.headed(circuit.name(), circuit.about())),
                List.of(
                        new Section(
                                "task",
                                LessonPhrase.TASK,
                                List.of(Block.said(LessonPhrase.task(cases.size())), ports())),
                        new Section("circuit", LessonPhrase.CIRCUIT, List.of(Block.figure(drawing))),
                        new Section("pressures", LessonPhrase.PRESSURES, pressures),
                        new Section("findings", LessonPhrase.FINDINGS, List.of(findings())),
                        Section.shownWhenAsked("key", LessonPhrase.KEY, LessonPhrase.SHOW_KEY, key())));
    }

    private Block ports() {
        TextTable ports = new TextTable(LessonPhrase.PORT_HEAD);
        Set<Tap> taps = new LinkedHashSet<>();
        IntStream.range(0, ranges()).forEach(range -> taps.addAll(charts(range).taps()));
        taps.forEach(tap -> ports.add(List.of(tap.name(), tap.port(), tap.between())));
        return new Block(
                Block.said(LessonPhrase.BETWEEN).lines(),
                Block.table(LessonPhrase.PORTS, ports).tables(),
                List.of());
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
            LessonUnit one = cases.get(i);
            SpeedSweep sweep = one.sweep();
            table.add(List.of(
                    LessonPhrase.unit(i),
                    sweep.unit().build(),
                    one.fault(),
                    one.laid()
                            .map(this::wrong)
                            .orElseGet(() -> about(sweep.unit().build())),
                    one.tells().isEmpty()
                            ? LessonPhrase.NOTHING_TELLS
                            : told(one.tells().get(0)),
                    one.tells().size() < 2 ? "" : told(one.tells().get(1)),
                    new OnsetPhrase(units)
                            .from(
                                    sweep.onset(),
                                    sweep.shown().get(0).conditions().speed())));
        }
        return table;
    }

    private String wrong(UnitFault.Sized laid) {
        UnitFault fault = laid.fault();
        return LessonPhrase.wrong(
                UnitFaultPhrase.named(fault.kind(), fault.part()), new CauseWords(units).size(fault, laid.size()));
    }

    private String about(String build) {
        return circuit.builds().stream()
                .filter(one -> one.name().equals(build))
                .map(DescribedCircuit.Build::about)
                .findFirst()
                .orElse("");
    }

    private String told(TellingReading reading) {
        return LessonPhrase.told(
                units, reading.tap().name(), reading.speed(), reading.range(), reading.value(), reading.other());
    }

    @Override
    public Object json() {
        return LessonRecord.of(this);
    }

    @Override
    public boolean complete() {
        return cases.stream()
                .flatMap(one -> one.sweeps().stream())
                .flatMap(sweep -> sweep.shown().stream())
                .allMatch(outcome -> outcome.state().isPresent());
    }
}

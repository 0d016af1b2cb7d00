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
import hotidle.answer.phrase.FaultOilPhrase;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.phrase.OnsetPhrase;
import hotidle.answer.phrase.ReportPhrase;
import hotidle.answer.phrase.UnitFaultPhrase;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.fault.UnitFault;
import hotidle.study.SpeedSweep;
import hotidle.study.TellingReading;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
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
 * @param candidates faults that a learner chooses from, those of the units among others; empty where no unit has one laid over it
 * @param drawing    of the circuit as it should be, without pressures
 * @param made       what it was made of; stands on the key's page
 */
public record LessonAnswer(
        Quantity.UnitSystem units,
        String file,
        List<String> letterhead,
        DescribedCircuit circuit,
        List<LessonUnit> cases,
        List<UnitFault> candidates,
        Figure drawing,
        MadeOf made)
        implements PageAnswer {

    public LessonAnswer {
        letterhead = List.copyOf(letterhead);
        cases = List.copyOf(cases);
        candidates = List.copyOf(candidates);
    }

    /** More charts do not fit on two pages (chosen). */
    private static final int MOST_CHARTS = 6;

    /** The table to be filled in has readings of so many gauges at most (chosen). */
    private static final int MOST_READINGS = 4;

    /**
     * A gauge that tells units apart.
     *
     * @param range number of the range in which it does
     */
    private record TellingGauge(int range, Tap tap, double widest) {}

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

    /** The gauges at which units stand furthest apart, so many at most, in the order of ranges and ports. */
    private List<TellingGauge> telling(int most) {
        List<TellingGauge> all = IntStream.range(0, ranges())
                .boxed()
                .flatMap(range -> charts(range).telling().stream()
                        .filter(tap -> charts(range).sameAs(tap).isEmpty())
                        .map(tap -> new TellingGauge(range, tap, charts(range).widest(tap))))
                .toList();
        List<TellingGauge> widest = all.stream()
                .sorted(Comparator.comparingDouble((TellingGauge one) -> -one.widest()))
                .limit(most)
                .toList();
        return all.stream().filter(widest::contains).toList();
    }

    @Override
    public Page page() {
        return new Page(
                LessonPhrase.title(circuit.name()),
                LessonPhrase.question(cases.size()),
                ReportPhrase.head(letterhead, HeadingPhrase.headed(circuit.name(), circuit.about())),
                List.of(
                        new Section("task", LessonPhrase.TASK, task()),
                        new Section("circuit", LessonPhrase.CIRCUIT, List.of(Block.figure(drawing))),
                        new Section("pressures", LessonPhrase.PRESSURES, pressures()),
                        new Section("findings", LessonPhrase.FINDINGS, List.of(readings(), toFillIn())),
                        Section.shownWhenAsked("key", LessonPhrase.KEY, LessonPhrase.SHOW_KEY, key())));
    }

    private List<Block> task() {
        List<String> said = new ArrayList<>(LessonPhrase.task(cases.size()));
        int faulty = (int) cases.stream().filter(one -> one.laid().isPresent()).count();
        said.add(
                candidates.isEmpty()
                        ? LessonPhrase.MAYBE_SOUND
                        : LessonPhrase.someAreFaulty(faulty, cases.size() - faulty));
        List<Block> blocks = new ArrayList<>(List.of(Block.said(said)));
        if (!candidates.isEmpty()) {
            blocks.add(Block.table(LessonPhrase.CANDIDATES, candidateTable()));
        }
        blocks.add(ports());
        return blocks;
    }

    /** By part and fault, so that the order tells nothing. */
    private TextTable candidateTable() {
        TextTable table = new TextTable(LessonPhrase.CANDIDATES_HEAD);
        candidates.stream()
                .map(fault -> List.of(
                        fault.part().isEmpty() ? LessonPhrase.WHOLE_UNIT : fault.part(),
                        fault.kind().about(),
                        FaultOilPhrase.does(fault.kind())))
                .distinct()
                .sorted(Comparator.comparing((List<String> row) -> row.get(0)).thenComparing(row -> row.get(1)))
                .forEach(table::add);
        return table;
    }

    private List<Block> pressures() {
        List<Block> blocks = new ArrayList<>(List.of(Block.said(howToRead())));
        List<TellingGauge> drawn = telling(MOST_CHARTS);
        Transmission sound = circuit.unit();
        for (int number = 0; number < ranges(); number++) {
            int range = number;
            LessonCharts charts = charts(range);
            DutyPoint duty = cases.get(0).sweeps().get(range).duty();
            drawn.stream()
                    .filter(one -> one.range() == range)
                    .forEach(one -> blocks.add(Block.figure(charts.figure(one.tap()))));
            if (!charts.telling().isEmpty()) {
                blocks.add(Block.table(
                        LessonPhrase.readings(units, duty.range(), sound.setPressure(sound.conditions(duty))),
                        charts.readings()));
            }
            charts.telling()
                    .forEach(tap -> charts.sameAs(tap)
                            .ifPresent(other -> blocks.add(
                                    Block.said(LessonPhrase.sameAs(duty.range(), tap.name(), other.name())))));
            if (!charts.alike().isEmpty()) {
                blocks.add(Block.said(LessonPhrase.alikeAt(duty.range(), charts.alike())));
            }
        }
        return blocks;
    }

    private List<String> howToRead() {
        Transmission sound = circuit.unit();
        Roles roles = Roles.of(sound);
        return LessonPhrase.howToRead(
                roles.regulating().isPresent(),
                roles.converter().isPresent() || !roles.lube().isEmpty(),
                sound.ranges().stream().anyMatch(range -> !range.applied().isEmpty()));
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

    /** Room to write in: a table of its own, since beside the readings it would be wider than a page. */
    private Block toFillIn() {
        List<String> head = new ArrayList<>(List.of(LessonPhrase.UNIT));
        head.addAll(LessonPhrase.TO_WRITE);
        TextTable table = new TextTable(head);
        for (int i = 0; i < cases.size(); i++) {
            List<String> cells = new ArrayList<>(List.of(LessonPhrase.unit(i)));
            LessonPhrase.TO_WRITE.forEach(column -> cells.add(""));
            table.add(cells);
        }
        return Block.table(LessonPhrase.FILL_IN, table);
    }

    /** What the gauges that tell most read at the slowest and the fastest speed. */
    private Block readings() {
        List<TellingGauge> gauges = telling(MOST_READINGS);
        List<Integer> speeds = List.of(0, cases.get(0).sweep().shown().size() - 1);
        List<String> head = new ArrayList<>(List.of(LessonPhrase.UNIT));
        gauges.forEach(gauge -> speeds.forEach(speed -> head.add(heading(gauge, speed))));
        TextTable table = new TextTable(head);
        for (int i = 0; i < cases.size(); i++) {
            int unit = i;
            List<String> cells = new ArrayList<>(List.of(LessonPhrase.unit(i)));
            gauges.forEach(gauge ->
                    speeds.forEach(speed -> cells.add(charts(gauge.range()).reading(unit, gauge.tap(), speed))));
            table.add(cells);
        }
        return Block.table(LessonPhrase.READINGS, table);
    }

    private String heading(TellingGauge gauge, int speed) {
        SpeedSweep sweep = cases.get(0).sweeps().get(gauge.range());
        return LessonPhrase.readAt(
                units,
                gauge.tap().name(),
                sweep.duty().range(),
                sweep.shown().get(speed).conditions().speed());
    }

    private List<Block> key() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.said(LessonPhrase.KEY_NOTE));
        blocks.add(Block.table(LessonPhrase.KEY_TABLE, table()));
        blocks.add(Block.said(new LessonAlike(circuit, cases, !candidates.isEmpty()).said()));
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
        boolean holds = circuit.unit().commanded().isPresent();
        List<String> head = new ArrayList<>(LessonPhrase.KEY_HEAD);
        if (holds) {
            head.add(LessonPhrase.HOLDS_FROM);
        }
        TextTable table = new TextTable(head);
        for (int i = 0; i < cases.size(); i++) {
            LessonUnit one = cases.get(i);
            SpeedSweep sweep = one.sweep();
            List<String> row = new ArrayList<>(List.of(
                    LessonPhrase.unit(i),
                    sweep.unit().build(),
                    one.fault(),
                    one.laid()
                            .map(this::wrong)
                            .orElseGet(() -> about(sweep.unit().build())),
                    one.tells().isEmpty()
                            ? LessonPhrase.NOTHING_TELLS
                            : told(one.tells().get(0)),
                    one.tells().size() < 2 ? "" : told(one.tells().get(1))));
            if (holds) {
                row.add(new OnsetPhrase(units)
                        .from(sweep.onset(), sweep.shown().get(0).conditions().speed()));
            }
            table.add(row);
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

package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.LessonPhrase;
import hotidle.answer.report.LessonAnswer;
import hotidle.answer.report.LessonUnit;
import hotidle.answer.report.MadeOf;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.WrittenFault;
import hotidle.circuits.text.Dimension;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.plots.FigureChart;
import hotidle.study.SpeedSweep;
import hotidle.study.TellingReading;
import hotidle.study.ToldApart;
import hotidle.study.gauge.OtherFaults;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Solves what a handout shows: units over engine speed, in an order that their names do not tell.
 *
 * @param builds as named; without faults those of the circuit where none is
 * @param faults each makes a unit of the first build beside the builds named
 * @param seed   of the order
 */
record LessonRun(DescribedCircuit circuit, List<String> builds, FaultOption faults, long seed) {

    /** The slowest driving condition's own speed stands before these. */
    private static final String SPEEDS = "500..3500/100rpm";

    /** Ranges that are shown at most (chosen). */
    private static final int MOST_RANGES = 3;

    /** Other faults are named by so many more than the units have (chosen). */
    private static final int MORE_OTHERS = 2;

    /**
     * A unit before it is solved.
     *
     * @param without what it is told by: the same without its fault, or the circuit's first build
     */
    private record NamedUnit(Transmission unit, String fault, Optional<UnitFault.Sized> laid, Transmission without) {
        String name() {
            return fault.isEmpty() ? unit.build() : fault;
        }
    }

    /**
     * The handout.
     *
     * @param err is told of units that read alike
     */
    LessonAnswer answer(Quantity.UnitSystem shown, String file, List<String> head, MadeOf made, PrintWriter err) {
        List<NamedUnit> all = all();
        check(all);
        Collections.shuffle(all, new Random(seed));
        List<Double> speeds = speeds(all.get(0).unit().duties().get(0).speed());
        ToldApart apart = ToldApart.of(all.stream().map(NamedUnit::unit).toList(), speeds, MOST_RANGES);
        warn(all, apart, err);
        checkSeen(all, apart, speeds);
        List<UnitFault> candidates = candidates(all, apart);
        return new LessonAnswer(
                shown,
                file,
                head,
                circuit,
                units(all, apart, speeds, alike(all, apart, candidates)),
                candidates,
                ReportDrawing.ofLesson(shown, circuit),
                made);
    }

    /** The faults of the units, and as many others and some more; none where no fault is asked for. */
    private List<UnitFault> candidates(List<NamedUnit> all, ToldApart apart) {
        List<UnitFault> laid = all.stream()
                .flatMap(one -> one.laid().stream())
                .map(UnitFault.Sized::fault)
                .toList();
        if (laid.isEmpty()) {
            return laid;
        }
        Adjustable build = circuit.adjustable(sound(all).build());
        return Stream.concat(
                        laid.stream(),
                        OtherFaults.of(build, apart, laid, UnitFaults.of(build), laid.size() + MORE_OTHERS, seed)
                                .stream())
                .toList();
    }

    /** Of each unit, which of the faults named read as it does and are not its own. */
    private List<List<UnitFault>> alike(List<NamedUnit> all, ToldApart apart, List<UnitFault> candidates) {
        if (candidates.isEmpty()) {
            return all.stream().map(one -> List.<UnitFault>of()).toList();
        }
        List<List<UnitFault>> alike =
                OtherFaults.alike(circuit.adjustable(sound(all).build()), apart, candidates);
        return IntStream.range(0, all.size())
                .mapToObj(number -> alike.get(number).stream()
                        .filter(fault -> all.get(number)
                                .laid()
                                .filter(own -> own.fault().name().equals(fault.name()))
                                .isEmpty())
                        .toList())
                .toList();
    }

    /** The build over which faults are laid. */
    private static Transmission sound(List<NamedUnit> all) {
        return all.stream()
                .filter(one -> one.laid().isPresent())
                .findFirst()
                .orElseThrow()
                .without();
    }

    private static boolean seen(NamedUnit one, ToldApart apart, List<Double> speeds) {
        int number = IntStream.range(0, apart.sweeps().get(0).size())
                .filter(i -> apart.sweeps().get(0).get(i).unit().equals(one.unit()))
                .findFirst()
                .orElseThrow();
        return !TellingReading.of(
                        apart.sweeps().stream().map(range -> range.get(number)).toList(),
                        apart.also(one.without(), speeds),
                        IntStream.range(0, speeds.size()).boxed().toList())
                .isEmpty();
    }

    private void checkSeen(List<NamedUnit> all, ToldApart apart, List<Double> speeds) {
        List<NamedUnit> faulty =
                all.stream().filter(one -> one.laid().isPresent()).toList();
        for (NamedUnit one : faulty) {
            if (!seen(one, apart, speeds)) {
                throw new WrongInputException(LessonPhrase.notSeen(
                        one.fault(),
                        allTried(all, apart),
                        larger(one, speeds),
                        faulty.stream()
                                .filter(other -> seen(other, apart, speeds))
                                .map(NamedUnit::fault)
                                .toList()));
            }
        }
    }

    /** The least size of those tried at which a fault shows, as it is written. */
    private Optional<String> larger(NamedUnit one, List<Double> speeds) {
        UnitFault fault = one.laid().orElseThrow().fault();
        Adjustable build = circuit.adjustable(one.without().build());
        return DoubleStream.of(0.25, 0.5, 0.75, 1)
                .mapToObj(way -> WrittenFault.rounded(fault, way))
                .filter(sized -> fault.kind().sizeOf() != FaultKind.SizeOf.NOTHING
                        && fault.in(build, sized.size())
                                .filter(unit -> ToldApart.of(List.of(one.without(), unit), speeds, 2)
                                        .alike()
                                        .isEmpty())
                                .isPresent())
                .findFirst()
                .map(WrittenFault::of);
    }

    private static boolean allTried(List<NamedUnit> all, ToldApart apart) {
        return apart.sweeps().size() < MOST_RANGES
                || apart.sweeps().size() == all.get(0).unit().ranges().size();
    }

    /** From the driving condition's own speed, so that a table begins at idle. */
    private static List<Double> speeds(double own) {
        return Stream.concat(
                        Stream.of(own),
                        OptionValues.series("--speed", SPEEDS, Dimension.SPEED).stream()
                                .filter(speed -> speed > own))
                .toList();
    }

    private List<NamedUnit> all() {
        List<NamedUnit> all = new ArrayList<>();
        Circuits.units(circuit, named())
                .forEach(unit -> all.add(new NamedUnit(unit, "", Optional.empty(), circuit.unit())));
        if (faults.given()) {
            Transmission sound = all.get(0).unit();
            Adjustable build = circuit.adjustable(sound.build());
            List<Transmission> faulty = faults.each(build);
            List<UnitFault.Sized> laid = faults.laid(build);
            for (int i = 0; i < faulty.size(); i++) {
                all.add(new NamedUnit(faulty.get(i), faults.written().get(i), Optional.of(laid.get(i)), sound));
            }
        }
        return all;
    }

    private static List<LessonUnit> units(
            List<NamedUnit> all, ToldApart apart, List<Double> speeds, List<List<UnitFault>> alike) {
        List<LessonUnit> units = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            int number = i;
            NamedUnit one = all.get(i);
            List<SpeedSweep> own =
                    apart.sweeps().stream().map(range -> range.get(number)).toList();
            units.add(new LessonUnit(
                    own,
                    one.fault(),
                    one.laid(),
                    TellingReading.of(
                            own,
                            apart.also(one.without(), speeds),
                            LessonAnswer.rows(own.get(0).shown().size())),
                    alike.get(number)));
        }
        return units;
    }

    private void warn(List<NamedUnit> all, ToldApart apart, PrintWriter err) {
        List<String> ranges = apart.sweeps().stream()
                .map(range -> range.get(0).duty().range())
                .toList();
        if (ranges.size() > 1) {
            err.println(LessonPhrase.moreRanges(ranges.get(0), ranges.subList(1, ranges.size())));
        }
        boolean tried = allTried(all, apart);
        apart.alike()
                .forEach(pair -> err.println(LessonPhrase.alike(
                        all.get(pair.one()).name(), all.get(pair.other()).name(), tried)));
    }

    private void check(List<NamedUnit> all) {
        if (all.size() > FigureChart.MOST_CURVES) {
            throw new WrongInputException("hotidle: a handout shows " + FigureChart.MOST_CURVES
                    + " units at most\nmend: name fewer builds and faults");
        }
        if (all.get(0).unit().taps().isEmpty()) {
            throw new WrongInputException("hotidle: " + circuit.name()
                    + " has no gauge ports, so there is nothing to read\nmend: add taps: to the circuit");
        }
    }

    private List<String> named() {
        return builds.isEmpty() && !faults.given()
                ? circuit.builds().stream()
                        .map(DescribedCircuit.Build::name)
                        .limit(FigureChart.MOST_CURVES)
                        .toList()
                : builds;
    }
}

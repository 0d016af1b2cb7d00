package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.report.LessonAnswer;
import hotidle.answer.report.LessonUnit;
import hotidle.answer.report.MadeOf;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.plots.FigureChart;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * Solves what a handout shows: units over engine speed, in an order that their names do not tell.
 *
 * @param builds as named; without faults those of the circuit where none is
 * @param faults each makes a unit of the first build beside the builds named
 * @param seed   of the order
 */
record LessonRun(DescribedCircuit circuit, List<String> builds, FaultOption faults, long seed) {

    private static final String SPEEDS = "500..3500/100rpm";

    /** A unit before it is solved. */
    private record NamedUnit(Transmission unit, String fault) {}

    /** The handout. */
    LessonAnswer answer(Quantity.UnitSystem shown, String file, List<String> head, MadeOf made) {
        return new LessonAnswer(shown, file, head, circuit, units(), ReportDrawing.ofLesson(shown, circuit), made);
    }

    private List<LessonUnit> units() {
        List<NamedUnit> all = new ArrayList<>();
        Circuits.units(circuit, named()).forEach(unit -> all.add(new NamedUnit(unit, "")));
        if (faults.given()) {
            List<Transmission> faulty =
                    faults.each(circuit.adjustable(all.get(0).unit().build()));
            for (int i = 0; i < faulty.size(); i++) {
                all.add(new NamedUnit(faulty.get(i), faults.written().get(i)));
            }
        }
        check(all);
        Collections.shuffle(all, new Random(seed));
        List<Double> speeds = OptionValues.series("--speed", SPEEDS, Dimension.SPEED);
        return all.stream()
                .map(one -> new LessonUnit(
                        SpeedSweep.run(one.unit(), one.unit().duties().get(0), speeds), one.fault()))
                .toList();
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

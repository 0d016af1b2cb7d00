package hotidle.cli;

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
 * Solves what a handout shows: builds over engine speed, in an order that their names do not tell.
 *
 * @param builds as named; those of the circuit where none is
 * @param seed   of the order
 */
record LessonRun(DescribedCircuit circuit, List<String> builds, long seed) {

    private static final String SPEEDS = "500..3500/100rpm";

    List<SpeedSweep> sweeps() {
        List<String> named = builds.isEmpty()
                ? circuit.builds().stream()
                        .map(DescribedCircuit.Build::name)
                        .limit(FigureChart.MOST_CURVES)
                        .toList()
                : builds;
        List<Transmission> all = new ArrayList<>(Circuits.units(circuit, named));
        if (all.size() > FigureChart.MOST_CURVES) {
            throw new WrongInputException(
                    "hotidle: a handout shows " + FigureChart.MOST_CURVES + " units at most\nmend: name fewer builds");
        }
        if (all.get(0).taps().isEmpty()) {
            throw new WrongInputException("hotidle: " + circuit.name()
                    + " has no gauge ports, so there is nothing to read\nmend: add taps: to the circuit");
        }
        Collections.shuffle(all, new Random(seed));
        List<Double> speeds = OptionValues.series("--speed", SPEEDS, Dimension.SPEED);
        return all.stream()
                .map(unit -> SpeedSweep.run(unit, unit.duties().get(0), speeds))
                .toList();
    }
}

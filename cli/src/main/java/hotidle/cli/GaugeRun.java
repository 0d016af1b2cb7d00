package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.gauge.GaugeAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.fault.UnitFaults;
import hotidle.study.gauge.GaugeDiagnosis;
import hotidle.study.gauge.UnsolvedPointException;
import hotidle.transmission.Adjustable;
import java.io.PrintWriter;

/**
 * Looks for faults that explain readings, and says how far it is.
 *
 * @param err   gets the progress
 * @param build as it was measured
 */
record GaugeRun(PrintWriter err, Adjustable build) {

    /**
     * What is answered.
     *
     * @param file of the readings
     * @throws WrongInputException where no state is found at one of them
     */
    GaugeAnswer answer(Quantity.UnitSystem units, DescribedCircuit circuit, String file, GaugeReadings read) {
        String name = build.unit().build();
        Progress progress = new Progress(
                err, "trying faults in " + name, UnitFaults.of(build).size());
        try {
            return GaugeAnswer.of(
                    units, circuit, build.unit(), file, GaugeDiagnosis.of(build, read.readings(), progress::step));
        } catch (UnsolvedPointException unsolved) {
            throw new WrongInputException("hotidle: no steady state was found for " + name + " in "
                    + unsolved.point().range() + " at "
                    + Math.round(unsolved.point().speed() * 60)
                    + " rpm, so nothing can be expected of its gauges there\nmend: leave these readings out");
        } finally {
            progress.end();
        }
    }
}

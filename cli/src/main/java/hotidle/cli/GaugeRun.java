package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.gauge.GaugeAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.fault.UnitFaults;
import hotidle.study.LowAtIdle;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeStudy;
import hotidle.study.gauge.NextReadings;
import hotidle.study.gauge.UnsolvedPointException;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Looks for faults that explain readings, and says how far it is.
 *
 * @param err   gets the progress
 * @param build as it was measured
 */
record GaugeRun(PrintWriter err, Adjustable build) {

    /** Readings that are proposed. */
    private static final int NEXT = 3;

    /**
     * What is answered.
     *
     * @param file of the readings
     * @throws WrongInputException where no state is found at one of them
     */
    GaugeAnswer answer(Quantity.UnitSystem units, DescribedCircuit circuit, String file, GaugeReadings read) {
        GaugeFindings found = findings(read);
        return new GaugeAnswer(
                units,
                circuit.name(),
                circuit.about(),
                unit().build(),
                file,
                found,
                NextReadings.of(build, found, NEXT),
                hardest(),
                unit().commanded().isPresent(),
                low(found),
                Optional.empty());
    }

    /**
     * What the readings say.
     *
     * @throws WrongInputException where no state is found at one of them
     */
    private GaugeFindings findings(GaugeReadings read) {
        Progress progress = new Progress(
                err, "trying faults in " + unit().build(), UnitFaults.of(build).size());
        GaugeFindings found = study(read, progress);
        progress.end();
        return found;
    }

    private GaugeFindings study(GaugeReadings read, Progress progress) {
        try {
            return GaugeStudy.of(build, read.readings(), progress::step);
        } catch (UnsolvedPointException unsolved) {
            throw new WrongInputException("hotidle: no steady state was found for " + unit().build() + " in "
                    + unsolved.point().range() + " at "
                    + Math.round(unsolved.point().speed() * 60)
                    + " rpm, so nothing can be expected of its gauges there\nmend: leave these readings out");
        }
    }

    /** Under what a fault in this unit shows most: the slowest driving condition and the highest line commanded. */
    GaugeAnswer.Hardest hardest() {
        DutyPoint idle = unit().duties().stream()
                .min(Comparator.comparingDouble(DutyPoint::speed))
                .orElseThrow();
        return new GaugeAnswer.Hardest(
                idle.speed(),
                Stream.ofNullable(idle.temperatures().get("sump"))
                        .mapToDouble(Double::doubleValue)
                        .findFirst(),
                unit().commanded().flatMap(Command::pilot).stream()
                        .mapToDouble(pilot -> pilot.lineByTorque().highest())
                        .findFirst());
    }

    /** The build's name where its line stays low at idle, as read or as solved. */
    List<String> low(GaugeFindings found) {
        if (unit().commanded().isEmpty()) {
            return List.of();
        }
        return found.lineLow(unit().command().line()) ? List.of(unit().build()) : LowAtIdle.of(List.of(unit()));
    }

    private Transmission unit() {
        return build.unit();
    }
}

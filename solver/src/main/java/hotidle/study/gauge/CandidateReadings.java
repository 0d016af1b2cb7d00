package hotidle.study.gauge;

import hotidle.part.Cooler;
import hotidle.transmission.Command;
import hotidle.transmission.Range;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Readings that can be taken of a unit beside those that were.
 *
 * <pre>
 * Meters       every tap, and the flow of the cooler
 * Points       every range at idle, 1000 and 1500 rpm; nothing at stall
 * Temperature  as warm as the warmest of the readings taken, and hot
 * Command      as it was, and at its highest, where a leak shows most; at 1500 rpm with no pilot pressure, too, where the spring alone
 *              holds the line, which tells spring, boost land and solenoid apart
 * Left out     what was read already
 * </pre>
 */
final class CandidateReadings {

    /** An engine speed between idle and {@link AcceptanceSheet#SPEED}: 1000 rpm (common practice) [rev/s]. */
    private static final double BETWEEN = 1000 / 60.0;

    private CandidateReadings() {}

    /** All of them. */
    static List<GaugeReading.Row> of(Transmission unit, List<GaugeReading> taken) {
        double idle = AcceptanceSheet.idle(unit).speed();
        double hot = AcceptanceSheet.idle(unit).temperatures().getOrDefault(TestPoint.SUMP, Double.NaN);
        TestPoint first = taken.get(0).at();
        double read = taken.stream()
                .mapToDouble(reading -> reading.at().temperature())
                .max()
                .orElse(hot);
        List<Double> temperatures = hot > read + SAME_TEMPERATURE ? List.of(read, hot) : List.of(read);
        List<OptionalDouble> commands = new ArrayList<>(List.of(first.commanded()));
        highest(unit, first).ifPresent(highest -> commands.add(OptionalDouble.of(highest)));
        OptionalDouble lowest = lowest(unit, first);
        lowest.ifPresent(pressure -> commands.add(lowest));
        List<GaugeReading.Row> rows = new ArrayList<>();
        for (Range range : unit.ranges()) {
            for (double speed : DoubleStream.concat(
                            DoubleStream.of(idle), DoubleStream.of(BETWEEN, AcceptanceSheet.SPEED))
                    .toArray()) {
                for (double temperature : temperatures) {
                    for (OptionalDouble command : commands) {
                        if (lowest.isPresent() && command.equals(lowest) && speed < AcceptanceSheet.SPEED) {
                            continue;
                        }
                        TestPoint at = new TestPoint(
                                speed,
                                temperature,
                                range.name(),
                                command,
                                command.isPresent() ? OptionalDouble.empty() : first.torque());
                        for (Meter meter : Meter.of(unit)) {
                            GaugeReading.Row row = new GaugeReading.Row(meter, at);
                            if (allowed(unit, meter) && taken.stream().noneMatch(one -> same(unit, one.row(), row))) {
                                rows.add(row);
                            }
                        }
                    }
                }
            }
        }
        return rows;
    }

    /** The highest line pressure commanded at any torque, where that is more than at a test point. */
    private static Optional<Double> highest(Transmission unit, TestPoint at) {
        return unit.commanded()
                .flatMap(Command::pilot)
                .filter(pilot -> pilot.lineByTorque().highest() > commanded(unit, pilot, at) + Command.AGREE)
                .map(pilot -> pilot.lineByTorque().highest());
    }

    /** The line pressure for which no pilot pressure is asked, where that is less than at a test point. */
    private static OptionalDouble lowest(Transmission unit, TestPoint at) {
        return unit.commanded().flatMap(Command::pilot).stream()
                .filter(pilot -> spring(pilot) < commanded(unit, pilot, at) - Command.AGREE)
                .mapToDouble(CandidateReadings::spring)
                .findFirst();
    }

    private static double spring(Command.Pilot pilot) {
        return pilot.pilotByLine().points().get(0).x();
    }

    private static double commanded(Transmission unit, Command.Pilot pilot, TestPoint at) {
        return at.commanded()
                .orElseGet(() -> pilot.lineByTorque()
                        .at(at.torque().orElseGet(() -> at.like(unit).engineTorque())));
    }

    /** Whether two test points command the same, however it is written: as a pressure, as a torque or as that of the duty. */
    private static boolean sameCommand(Transmission unit, TestPoint one, TestPoint other) {
        return unit.commanded()
                .flatMap(Command::pilot)
                .map(pilot -> Math.abs(commanded(unit, pilot, one) - commanded(unit, pilot, other)) <= Command.AGREE)
                .orElse(true);
    }

    /** Whether to take a reading would be to take another again. */
    private static boolean same(Transmission unit, GaugeReading.Row one, GaugeReading.Row other) {
        return one.meter().equals(other.meter())
                && one.at().range().equals(other.at().range())
                && sameCommand(unit, one.at(), other.at())
                && Math.abs(one.at().speed() - other.at().speed())
                        < SAME_SPEED * other.at().speed()
                && Math.abs(one.at().temperature() - other.at().temperature()) < SAME_TEMPERATURE;
    }

    /** Test points nearer to each other than this are one: a tenth of the speed (chosen) [-]. */
    private static final double SAME_SPEED = 0.1;

    /** And this: 5 K (chosen) [K]. */
    private static final double SAME_TEMPERATURE = 5;

    private static boolean allowed(Transmission unit, Meter meter) {
        return meter.reads() == Meter.Reads.PRESSURE
                || unit.network().part(meter.name()).orElseThrow().part() instanceof Cooler;
    }
}

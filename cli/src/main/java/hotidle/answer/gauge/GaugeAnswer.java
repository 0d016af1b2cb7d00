package hotidle.answer.gauge;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.gauge.FitsTogether;
import hotidle.study.gauge.GaugeDiagnosis;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.NextReading;
import hotidle.study.gauge.TestPoint;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What gauge readings say of a build.
 *
 * @param units    of the user
 * @param circuit  its name
 * @param about    what its file says of it; may be empty
 * @param build    its name
 * @param file     of the readings
 * @param findings what they say
 * @param next     readings that tell most, the best first
 * @param hardest  what takes the pump to its limit
 * @param commanded whether the unit is in a vehicle; a bench is not commanded
 * @param low      the build, where its idle pressure is low or any reading says so
 * @param fits     the most likely sizes of all fits together; empty where nobody asked
 */
public record GaugeAnswer(
        Quantity.UnitSystem units,
        String circuit,
        String about,
        String build,
        String file,
        GaugeFindings findings,
        List<NextReading> next,
        Hardest hardest,
        boolean commanded,
        List<String> low,
        Optional<FitsTogether> fits)
        implements Answer {

    /**
     * What takes the pump to its limit.
     *
     * @param speed       lowest engine speed [rev/s]
     * @param temperature of its sump [K]; empty where the file gives none
     * @param commanded   highest line pressure that can be commanded [Pa]; empty where none can be
     */
    public record Hardest(double speed, OptionalDouble temperature, OptionalDouble commanded) {

        /** As near to a speed, a share of it, and to a temperature [K], a reading is taken there (chosen). */
        private static final double SPEED = 1.1;

        private static final double WARMTH = 5;

        /** Whether a pressure was read under it, in whatever range. */
        boolean readAt(GaugeReading reading) {
            TestPoint at = reading.at();
            return reading.meter().reads() == Meter.Reads.PRESSURE
                    && at.speed() <= SPEED * speed
                    && at.temperature() >= temperature.orElse(0) - WARMTH
                    && (commanded.isEmpty() || at.commanded().orElse(0) >= commanded.getAsDouble() - Command.AGREE);
        }

        /** Under what a fault in a unit shows most: the slowest driving condition and the highest line commanded. */
        static Hardest of(Transmission unit) {
            DutyPoint idle = unit.duties().stream()
                    .min(Comparator.comparingDouble(DutyPoint::speed))
                    .orElseThrow();
            return new Hardest(
                    idle.speed(),
                    Stream.ofNullable(idle.temperatures().get("sump"))
                            .mapToDouble(Double::doubleValue)
                            .findFirst(),
                    unit.commanded().flatMap(Command::pilot).stream()
                            .mapToDouble(pilot -> pilot.lineByTorque().highest())
                            .findFirst());
        }
    }

    public GaugeAnswer {
        next = List.copyOf(next);
        low = List.copyOf(low);
    }

    /**
     * Without the most likely sizes of all fits together.
     *
     * @param unit as it was measured
     * @param file of the readings
     */
    public static GaugeAnswer of(
            Quantity.UnitSystem units,
            DescribedCircuit circuit,
            Transmission unit,
            String file,
            GaugeDiagnosis diagnosis) {
        return new GaugeAnswer(
                units,
                circuit.name(),
                circuit.about(),
                unit.build(),
                file,
                diagnosis.findings(),
                diagnosis.next(),
                Hardest.of(unit),
                unit.commanded().isPresent(),
                diagnosis.low() ? List.of(unit.build()) : List.of(),
                Optional.empty());
    }

    /** The same with the most likely sizes of all fits together. */
    public GaugeAnswer with(FitsTogether found) {
        return new GaugeAnswer(
                units, circuit, about, build, file, findings, next, hardest, commanded, low, Optional.of(found));
    }

    /** What is told of them sentence by sentence, for who asks again and again. */
    public ToldReadings told() {
        return new GaugeScreen(this).told();
    }

    @Override
    public String screen() {
        return new GaugeScreen(this).first();
    }

    @Override
    public String full() {
        return new GaugeScreen(this).full();
    }

    @Override
    public TextTable table() {
        return new GaugeRows(this).table();
    }

    @Override
    public Object json() {
        return GaugeRecord.of(this);
    }

    @Override
    public boolean complete() {
        return findings.notSolved().isEmpty();
    }
}

package hotidle.answer.live;

import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.oil.Oil;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.GaugesAt;
import hotidle.study.gauge.Meter;
import hotidle.transmission.Command;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Gauges at the taps of a unit.
 *
 * @param range            engaged while they are read
 * @param engineSpeedRpm   then
 * @param sumpTemperatureC then
 * @param commandedPa      line pressure commanded then; empty where nothing is
 * @param canBeCommanded   whether a pressure can be asked for
 * @param like             driving condition from which all else is taken
 * @param ranges           that can be engaged
 * @param gauges           at the taps
 * @param meters           all that can be read, taps and flows
 * @param readings         each beside what the unit would show there
 * @param unsolved         why there is no state, in words; empty where there is one
 */
public record LiveGaugesRecord(
        String range,
        double engineSpeedRpm,
        double sumpTemperatureC,
        OptionalDouble commandedPa,
        boolean canBeCommanded,
        String like,
        List<String> ranges,
        List<GaugeAtTap> gauges,
        List<MeterLine> meters,
        List<BesideModel> readings,
        Optional<String> unsolved) {

    /** A gauge. */
    public record GaugeAtTap(String tap, String port, String between, boolean line, OptionalDouble pressurePa) {}

    /** What can be read: {@code pressure_pa} or {@code flow_m3_s}. */
    public record MeterLine(String name, String reads) {}

    /**
     * A reading beside the model.
     *
     * @param taken         whether it counts
     * @param reads         pressure_pa or flow_m3_s
     * @param sense         exact, below or above
     * @param value         read [Pa] or [m³/s]
     * @param model         what the unit would show there [Pa] or [m³/s]; empty where no state was found, or the reading is left out
     * @param wrong         why it is left out; empty where it counts, or is yet to be taken
     * @param mend          how to mend that
     */
    public record BesideModel(
            boolean taken,
            String reads,
            String sense,
            OptionalDouble value,
            OptionalDouble model,
            String range,
            OptionalDouble engineSpeedRpm,
            OptionalDouble sumpTemperatureC,
            OptionalDouble commandedPa,
            String wrong,
            String mend) {

        /** One that is yet to be taken. */
        public static BesideModel notTaken() {
            return leftOut("", "");
        }

        /** One that cannot be taken as it is written. */
        public static BesideModel leftOut(String wrong, String mend) {
            OptionalDouble none = OptionalDouble.empty();
            return new BesideModel(false, "", "", none, none, "", none, none, none, wrong, mend);
        }

        public static BesideModel of(GaugeReading reading, OptionalDouble model) {
            return new BesideModel(
                    true,
                    word(reading.meter()),
                    reading.sense().name().toLowerCase(Locale.ROOT),
                    OptionalDouble.of(reading.value()),
                    model,
                    reading.at().range(),
                    OptionalDouble.of(Rpm.of(reading.at().speed())),
                    OptionalDouble.of(reading.at().temperature() - Oil.ZERO_CELSIUS),
                    reading.at().commanded(),
                    "",
                    "");
        }
    }

    public static LiveGaugesRecord of(
            Transmission unit, List<Meter> meters, GaugesAt shown, List<BesideModel> readings) {
        Optional<String> line = unit.commanded().map(Command::line);
        return new LiveGaugesRecord(
                shown.at().range(),
                Rpm.of(shown.at().speed()),
                shown.at().temperature() - Oil.ZERO_CELSIUS,
                unit.setPressure(shown.outcome().conditions()),
                unit.commanded().flatMap(Command::pilot).isPresent(),
                shown.at().like(unit).name(),
                unit.ranges().stream().map(one -> one.name()).toList(),
                unit.taps().stream()
                        .map(tap -> new GaugeAtTap(
                                tap.name(),
                                tap.port(),
                                tap.between(),
                                line.filter(tap.node()::equals).isPresent(),
                                shown.shown(new Meter(tap.name(), tap.node(), Meter.Reads.PRESSURE))))
                        .toList(),
                meters.stream()
                        .map(meter -> new MeterLine(meter.name(), word(meter)))
                        .toList(),
                List.copyOf(readings),
                shown.outcome()
                        .unsolved()
                        .map(why -> UnsolvedPhrase.nothingKnownHere(
                                UnsolvedPhrase.why(why.culprit(), why.residual(), why.tried()))));
    }

    private static String word(Meter meter) {
        return meter.reads() == Meter.Reads.PRESSURE ? "pressure_pa" : "flow_m3_s";
    }
}

package hotidle.answer.gauge;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.format.Rpm;
import hotidle.oil.Oil;
import hotidle.study.gauge.Cause;
import hotidle.study.gauge.FitsTogether;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.GaugeReading;
import hotidle.study.gauge.Meter;
import hotidle.study.gauge.NextReading;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What gauge readings say, as JSON. */
record GaugeRecord(
        String circuit,
        String build,
        boolean agrees,
        double chiSquare,
        int degreesOfFreedom,
        double probability,
        int readingsOnRegulator,
        List<Read> readings,
        List<CauseGroup> groups,
        double noneOfThese,
        List<FaultPair> pairs,
        List<FaultCause> causes,
        List<NextRead> nextReadings,
        Optional<FittedTogether> fitsTogether,
        List<String> notSolved) {

    /** Where something is read. */
    record ReadingPlace(
            String tap,
            String range,
            double speedRpm,
            double oilTemperatureC,
            OptionalDouble commandedPressurePa,
            @JsonProperty("engine_torque_n_m") OptionalDouble engineTorque) {
        static ReadingPlace of(GaugeReading.Row row) {
            return new ReadingPlace(
                    row.meter().name(),
                    row.at().range(),
                    Rpm.of(row.at().speed()),
                    row.at().temperature() - Oil.ZERO_CELSIUS,
                    row.at().commanded(),
                    row.at().torque());
        }
    }

    /** A reading; its value in Pa or m³/s, as {@code reads} says. */
    record Read(
            ReadingPlace place,
            String reads,
            String sense,
            double value,
            double gaugeDeviation,
            double soundMean,
            double soundDeviation,
            double offDeviations,
            boolean standsOut) {}

    /** Causes that the readings cannot tell apart, by fault. */
    record CauseGroup(double believed, List<String> faults) {}

    /** Two faults at once. */
    record FaultPair(
            String fault,
            double bestSize,
            String otherFault,
            double otherSize,
            double believed,
            double chiSquareLeft) {}

    /** A fault as a cause; its sizes count what {@code sizeCounts} says. */
    record FaultCause(
            String fault,
            String sizeCounts,
            double bestSize,
            double lowSize,
            double highSize,
            double chiSquareLeft,
            double believed,
            double hiddenUpTo,
            boolean canShow) {}

    /** A reading to take, with what each leading cause makes of it. */
    record NextRead(
            ReadingPlace place, String reads, double information, List<PredictedReading> predicted, double sound) {}

    /** What is read if a fault is the cause. */
    record PredictedReading(String fault, double value) {}

    /** The most likely sizes of all fits together; none where they were not found. */
    record FittedTogether(boolean found, double chiSquareLeft, List<LikelySize> sizes) {
        static FittedTogether of(FitsTogether fits) {
            return new FittedTogether(
                    fits.settled(),
                    fits.chiSquare(),
                    fits.sizes().stream().map(LikelySize::of).toList());
        }
    }

    /** A size in the unit that it names. */
    record LikelySize(
            String size,
            String unit,
            double asIs,
            double mostLikely,
            double low,
            double high,
            double movedDeviations,
            double deviationLeft,
            String heldBy) {
        static LikelySize of(FitsTogether.FittedSize fit) {
            return new LikelySize(
                    fit.size().name(),
                    fit.size().kind() == WearSize.SizeKind.AREA ? "m2" : "m",
                    fit.size().value(),
                    fit.value(),
                    fit.low(),
                    fit.high(),
                    fit.moved(),
                    fit.known(),
                    fit.held() ? "measurement" : "new_and_limit");
        }
    }

    static GaugeRecord of(GaugeAnswer answer) {
        GaugeFindings found = answer.findings();
        List<Read> readings = new ArrayList<>();
        for (int i = 0; i < found.readings().size(); i++) {
            GaugeReading reading = found.readings().get(i);
            GaugeFindings.ExpectedReading expected = found.expected().get(i);
            readings.add(new Read(
                    ReadingPlace.of(reading.row()),
                    reads(reading.meter()),
                    reading.sense().name().toLowerCase(Locale.ROOT),
                    reading.value(),
                    reading.deviation(),
                    expected.mean(),
                    expected.deviation(),
                    expected.off(),
                    found.standsOut(i)));
        }
        return new GaugeRecord(
                answer.circuit(),
                answer.build(),
                found.agreement().agrees(),
                found.agreement().chiSquare(),
                found.agreement().degrees(),
                found.agreement().probability(),
                found.regulated(),
                readings,
                found.groups().stream()
                        .map(group -> new CauseGroup(
                                group.share(),
                                group.causes().stream()
                                        .map(cause -> cause.fault().name())
                                        .toList()))
                        .toList(),
                found.none(),
                found.pairs().stream()
                        .map(pair -> new FaultPair(
                                pair.one().fault().name(),
                                pair.one().size(),
                                pair.other().fault().name(),
                                pair.other().size(),
                                pair.share(),
                                pair.chiSquare()))
                        .toList(),
                found.causes().stream().map(GaugeRecord::cause).toList(),
                answer.next().stream().map(GaugeRecord::next).toList(),
                answer.fits().map(FittedTogether::of),
                found.notSolved());
    }

    private static String reads(Meter meter) {
        return meter.reads() == Meter.Reads.PRESSURE ? "pressure_pa" : "flow_m3_s";
    }

    private static FaultCause cause(Cause cause) {
        return new FaultCause(
                cause.fault().name(),
                cause.fault().kind().sizeOf().name().toLowerCase(Locale.ROOT),
                cause.size(),
                cause.low(),
                cause.high(),
                cause.chiSquare(),
                cause.share(),
                cause.hidden(),
                cause.visible());
    }

    private static NextRead next(NextReading next) {
        return new NextRead(
                ReadingPlace.of(next.row()),
                reads(next.row().meter()),
                next.information(),
                next.predicted().stream()
                        .map(one -> new PredictedReading(one.cause().fault().name(), one.value()))
                        .toList(),
                next.sound());
    }
}

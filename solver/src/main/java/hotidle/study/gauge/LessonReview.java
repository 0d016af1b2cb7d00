package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.network.Network;
import hotidle.transmission.Adjustable;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How much readings of a unit told of the fault that it has, for who knows the fault.
 *
 * @param agrees whether they agree with a sound build, so that they tell of nothing
 * @param share  of what is believed that is that fault, or a leak of the same gallery, {@link Galleries} [-]
 * @param left   causes that no gauge tells apart counted once, among the leading ones
 * @param next   the reading expected to tell most of what is left; empty where none does
 */
public record LessonReview(boolean agrees, double share, int left, Optional<NextReading> next) {

    /** Believed by so much, a fault is found (chosen) [-]. */
    private static final double FOUND = 0.9;

    /** Readings asked for, of which those of pressures can be taken (ours). */
    private static final int MOST = 12;

    /** What readings told of a fault. */
    public static LessonReview of(Adjustable build, UnitFault hidden, List<GaugeReading> readings, Runnable step) {
        GaugeFindings found = GaugeStudy.of(build, readings, step);
        Network network = build.unit().network();
        String gallery = Galleries.of(network, hidden);
        double share = found.causes().stream()
                .filter(cause -> Galleries.of(network, cause.fault()).equals(gallery))
                .mapToDouble(Cause::share)
                .sum();
        Set<String> left = new HashSet<>();
        found.groups()
                .forEach(group -> group.causes().forEach(cause -> left.add(Galleries.of(network, cause.fault()))));
        Optional<NextReading> next = NextReadings.of(build, found, MOST).stream()
                .filter(reading -> reading.row().meter().reads() == Meter.Reads.PRESSURE)
                .findFirst();
        return new LessonReview(found.agreement().agrees(), share, left.size(), next);
    }

    /** Whether the fault is as good as found. */
    public boolean found() {
        return share >= FOUND;
    }

    /** A reading of a pressure gauge as a lesson takes it. */
    public static GaugeReading reading(GaugeReading.Row row, double value) {
        return new GaugeReading(row.meter(), row.at(), GaugeReading.Sense.EXACT, value, LessonFaults.GAUGE);
    }
}

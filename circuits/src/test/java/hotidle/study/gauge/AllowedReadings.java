package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.transmission.Adjustable;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;

/**
 * All that may be read of a unit: what was, and beside it every reading from which the next one is chosen, each tap and the flow of the
 * cooler in every range and at every speed of {@link NextReadings}. What a fault makes of all of it is solved once, when it is first
 * asked for; what some of the readings say is told by their share of that.
 */
final class AllowedReadings {

    /** Nearer to each other than this in all readings together two causes cannot be told apart, as in {@link GaugeStudy}. */
    private static final double ALIKE = 1;

    /** Sizes that are tried. */
    private static final int STEPS = 200;

    private final Twins twins;
    private final GaugeModel model;
    private final Expectation sound;
    private final Misfit misfit;
    private final Map<GaugeReading.Row, Integer> numbers = new LinkedHashMap<>();
    private final Map<String, CauseCurve> curves = new HashMap<>();

    /** Those beside the usual ones, of which no table holds the values. */
    final List<GaugeReading> further = new ArrayList<>();

    /** All readings of units of a build. */
    AllowedReadings(Twins twins) {
        this.twins = twins;
        Adjustable build = twins.build;
        CandidateReadings.of(build.unit(), twins.places).forEach(row -> further.add(place(row, twins.places)));
        List<GaugeReading> all = new ArrayList<>(twins.places);
        all.addAll(further);
        all.forEach(reading -> numbers.put(reading.row(), numbers.size()));
        Tolerances tolerances = Tolerances.of(build);
        model = new GaugeModel(tolerances, tolerances.shifts(), List.copyOf(numbers.keySet()));
        sound = model.sound(model.series());
        misfit = new Misfit(all);
    }

    /** Where a further reading is taken, with a gauge as good as those before on average. */
    static GaugeReading place(GaugeReading.Row row, List<GaugeReading> taken) {
        double usual = taken.stream()
                .filter(reading -> reading.meter().reads() == Meter.Reads.PRESSURE)
                .mapToDouble(GaugeReading::deviation)
                .average()
                .orElseThrow();
        return new GaugeReading(
                row.meter(),
                row.at(),
                GaugeReading.Sense.EXACT,
                0,
                row.meter().reads() == Meter.Reads.FLOW ? NextReadings.LEAST_FLOW : usual);
    }

    /** A further reading at random, of those at which a sound unit shows anything: nobody would take another. */
    GaugeReading any(Random random) {
        List<GaugeReading> shown = further.stream()
                .filter(place -> sound.mean().getEntry(numbers.get(place.row())) > place.deviation())
                .toList();
        return shown.get(random.nextInt(shown.size()));
    }

    /**
     * What is found of some of them.
     *
     * @param likely faults that are looked at
     */
    GaugeFindings found(List<UnitFault> likely, List<GaugeReading> read) {
        int[] rows =
                read.stream().mapToInt(reading -> numbers.get(reading.row())).toArray();
        return GaugeStudy.alone(
                new GaugeTable(
                        twins.build,
                        model,
                        some(sound, rows),
                        likely.stream().map(fault -> some(curve(fault), rows)).toList()),
                read);
    }

    private CauseCurve curve(UnitFault fault) {
        return curves.computeIfAbsent(fault.name(), name -> CauseCurve.of(fault, model, misfit, sound));
    }

    private static Expectation some(Expectation all, int[] rows) {
        return new Expectation(
                new ArrayRealVector(
                        IntStream.of(rows).mapToDouble(all.mean()::getEntry).toArray()),
                all.covariance().getSubMatrix(rows, rows));
    }

    private static CauseCurve some(CauseCurve all, int[] rows) {
        TreeMap<Double, Expectation> nodes = new TreeMap<>();
        all.nodes().forEach((way, expected) -> nodes.put(way, some(expected, rows)));
        return new CauseCurve(all.fault(), nodes);
    }

    /**
     * The causes that hold {@link GaugeFindings#LEADING} together, the likeliest of each gallery, whether or not all readings together
     * still agree: what one of a hundred shows counts little among all.
     */
    static List<Cause> told(Twins twins, GaugeFindings found) {
        Map<String, Cause> leaders = new LinkedHashMap<>();
        Map<String, Double> shares = new LinkedHashMap<>();
        double missing = 0;
        for (Cause cause : found.causes()) {
            leaders.putIfAbsent(twins.gallery(cause.fault()), cause);
            shares.merge(twins.gallery(cause.fault()), cause.share(), Double::sum);
            missing += GaugeFindings.LEADING * cause.share();
        }
        List<Cause> told = new ArrayList<>();
        for (String gallery : shares.keySet().stream()
                .sorted((one, other) -> Double.compare(shares.get(other), shares.get(one)))
                .toList()) {
            if (missing > 0) {
                told.add(leaders.get(gallery));
            }
            missing -= shares.get(gallery);
        }
        return told;
    }

    /** Causes that are told, those as one that no reading allowed can tell apart, whichever of both is behind the readings. */
    int told(GaugeFindings found) {
        List<Cause> apart = new ArrayList<>();
        for (Cause cause : told(twins, found)) {
            if (apart.stream().noneMatch(other -> imitates(cause, other) && imitates(other, cause))) {
                apart.add(cause);
            }
        }
        return apart.size();
    }

    /** Whether a cause can make all readings what another makes them. */
    private boolean imitates(Cause cause, Cause other) {
        CauseCurve curve = curve(cause.fault());
        CauseCurve made = curve(other.fault());
        if (!curve.known() || !made.known()) {
            return false;
        }
        Expectation at = made.at(other.fault().wayTo(other.size()));
        Whitened whitened = misfit.whitened(at);
        double first = curve.nodes().firstKey();
        double last = curve.nodes().lastKey();
        return IntStream.rangeClosed(0, STEPS).anyMatch(i -> {
            RealVector mean = curve.mean(first + (last - first) * i / STEPS);
            return whitened.square(mean.subtract(at.mean()).toArray()) < ALIKE * ALIKE;
        });
    }
}

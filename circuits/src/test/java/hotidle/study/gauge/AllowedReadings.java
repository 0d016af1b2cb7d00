package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.transmission.Adjustable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.RealVector;

/**
 * What may be read of a unit beside what was: every tap and the flow of the cooler in every range, at idle and commanded as high as can
 * be, where a leak shows most, but where a sound unit shows nothing. Which causes none of it can tell apart.
 */
final class AllowedReadings {

    /** Nearer to each other than this in all readings together two causes cannot be told apart, as in {@link GaugeStudy}. */
    private static final double ALIKE = 1;

    /** Sizes that are tried. */
    private static final int STEPS = 200;

    private final Twins twins;
    final List<GaugeReading> places;
    private final GaugeTable table;
    private final Misfit misfit;
    private final Map<String, CauseCurve> curves = new LinkedHashMap<>();

    /**
     * All readings beside those taken.
     *
     * @param likely faults that are looked at
     */
    AllowedReadings(Twins twins, List<UnitFault> likely, List<GaugeReading> taken) {
        this.twins = twins;
        Adjustable build = twins.build;
        double idle = AcceptanceSheet.idle(build.unit()).speed();
        List<GaugeReading.Row> rows = NextReadings.candidates(build.unit(), taken).stream()
                .filter(row -> row.at().speed() == idle && row.at().commanded().isPresent())
                .toList();
        Tolerances tolerances = Tolerances.of(build);
        GaugeModel model = new GaugeModel(tolerances, List.of(), rows);
        double[] sound = model.read(model.series(), build.unit()).orElseThrow();
        places = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            GaugeReading place = place(rows.get(i), taken);
            if (sound[i] > place.deviation()) {
                places.add(place);
            }
        }
        List<GaugeReading> all = new ArrayList<>(taken);
        all.addAll(places);
        table = GaugeTable.of(build, likely, all, () -> {});
        misfit = new Misfit(all);
        table.curves().forEach(curve -> curves.put(curve.fault().name(), curve));
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

    /** What is found with all of it read, those taken before in front. */
    GaugeFindings found(List<GaugeReading> read) {
        return GaugeStudy.alone(table, read);
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
        List<Cause> galleries = told(twins, found);
        List<Cause> apart = new ArrayList<>();
        for (Cause cause : galleries) {
            if (apart.stream().noneMatch(other -> imitates(cause, other) && imitates(other, cause))) {
                apart.add(cause);
            }
        }
        return apart.size();
    }

    /** Whether a cause can make all readings what another makes them. */
    private boolean imitates(Cause cause, Cause other) {
        CauseCurve curve = curves.get(cause.fault().name());
        CauseCurve made = curves.get(other.fault().name());
        if (curve == null || made == null || !curve.known() || !made.known()) {
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

package hotidle.answer.sweep;

import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.SweepWarningPhrase;
import hotidle.oil.Oil;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was asked for beyond what the circuit or the oil's viscosity line is good for. */
final class SweepWarnings {

    /** Sump temperatures between which a Walther line through 40 and 100 °C is taken as good (assumed) [°C]. */
    private static final double COLDEST = -40;

    private static final double HOTTEST = 160;

    /** Speeds beyond this multiple of the fastest duty point are remarked on (assumed). */
    private static final double FAR_BEYOND = 2.5;

    private SweepWarnings() {}

    static List<String> of(List<SpeedSweep> sweeps) {
        return sweeps.stream().flatMap(sweep -> of(sweep).stream()).distinct().toList();
    }

    private static List<String> of(SpeedSweep sweep) {
        List<String> found = new ArrayList<>();
        double sump = sweep.duty().temperatures().get("sump") - Oil.ZERO_CELSIUS;
        if (sump < COLDEST || sump > HOTTEST) {
            found.add(SweepWarningPhrase.temperature(sump, COLDEST, HOTTEST));
        }
        if (sweep.assessed().stream()
                .flatMap(Optional::stream)
                .anyMatch(one -> one.figures().reliefOpen())) {
            found.add(SweepWarningPhrase.relief(sweep.unit().build()));
        }
        double fastest = sweep.unit().duties().stream()
                .mapToDouble(DutyPoint::speed)
                .max()
                .orElseThrow();
        double asked =
                sweep.rising().get(sweep.rising().size() - 1).conditions().speed();
        if (fastest > 0 && asked > FAR_BEYOND * fastest) {
            found.add(SweepWarningPhrase.tooFast(Rpm.of(asked), Rpm.of(fastest)));
        }
        return found;
    }
}

package hotidle.answer.sweep;

import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.SweepWarningPhrase;
import hotidle.oil.Oil;
import hotidle.study.SpeedSweep;
import hotidle.study.SweepCaveat;
import java.util.List;

/** What was asked for beyond what the circuit or the oil's viscosity line is good for, a line each. */
final class SweepWarnings {

    private SweepWarnings() {}

    static List<String> of(List<SpeedSweep> sweeps) {
        return sweeps.stream()
                .flatMap(sweep -> sweep.caveats().stream())
                .map(SweepWarnings::of)
                .distinct()
                .toList();
    }

    private static String of(SweepCaveat caveat) {
        return switch (caveat.why()) {
            case OIL_OUT_OF_RANGE ->
                SweepWarningPhrase.temperature(
                        caveat.value().orElseThrow() - Oil.ZERO_CELSIUS,
                        caveat.low().orElseThrow() - Oil.ZERO_CELSIUS,
                        caveat.high().orElseThrow() - Oil.ZERO_CELSIUS);
            case RELIEF_OPENS -> SweepWarningPhrase.relief(caveat.build());
            case FAR_TOO_FAST ->
                SweepWarningPhrase.tooFast(
                        Rpm.of(caveat.value().orElseThrow()),
                        Rpm.of(caveat.high().orElseThrow()));
        };
    }
}

package hotidle.study;

import hotidle.oil.Oil;
import hotidle.transmission.DutyPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a sweep was asked for beyond what the circuit or the oil's viscosity line is good for.
 *
 * @param why   what it is
 * @param build that it is about; empty where it is about all
 * @param value asked for: sump temperature [K] or speed [rev/s]; empty where it is neither
 * @param low   the least that is good, in the same unit; empty without one
 * @param high  the most that is good, in the same unit; empty without one
 */
public record SweepCaveat(Excess why, String build, OptionalDouble value, OptionalDouble low, OptionalDouble high) {

    /** What it is. */
    public enum Excess {
        /** The sump is colder or hotter than the oil's viscosity line can be trusted. */
        OIL_OUT_OF_RANGE,
        /** The relief valve of the line opens at some speed, and holds the line in the regulator's place. */
        RELIEF_OPENS,
        /** Speeds far above those of the duty points. */
        FAR_TOO_FAST
    }

    /** Sump temperatures between which a Walther line through 40 and 100 °C is taken as good (assumed by us) [K]. */
    private static final double COLDEST = -40 + Oil.ZERO_CELSIUS;

    private static final double HOTTEST = 160 + Oil.ZERO_CELSIUS;

    /** Speeds beyond this multiple of the fastest duty point are remarked on (assumed by us) [-]. */
    private static final double FAR_BEYOND = 2.5;

    private static final OptionalDouble NONE = OptionalDouble.empty();

    /** All of a sweep. */
    static List<SweepCaveat> of(SpeedSweep sweep) {
        List<SweepCaveat> found = new ArrayList<>();
        double sump = sweep.duty().temperatures().get("sump");
        if (sump < COLDEST || sump > HOTTEST) {
            found.add(new SweepCaveat(
                    Excess.OIL_OUT_OF_RANGE,
                    "",
                    OptionalDouble.of(sump),
                    OptionalDouble.of(COLDEST),
                    OptionalDouble.of(HOTTEST)));
        }
        if (sweep.assessed().stream()
                .flatMap(Optional::stream)
                .anyMatch(one -> one.figures().reliefOpen())) {
            found.add(new SweepCaveat(Excess.RELIEF_OPENS, sweep.unit().build(), NONE, NONE, NONE));
        }
        double fastest = sweep.unit().duties().stream()
                .mapToDouble(DutyPoint::speed)
                .max()
                .orElseThrow();
        double asked =
                sweep.rising().get(sweep.rising().size() - 1).conditions().speed();
        if (fastest > 0 && asked > FAR_BEYOND * fastest) {
            found.add(new SweepCaveat(
                    Excess.FAR_TOO_FAST, "", OptionalDouble.of(asked), NONE, OptionalDouble.of(fastest)));
        }
        return found;
    }
}

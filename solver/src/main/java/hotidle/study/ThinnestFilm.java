package hotidle.study;

import hotidle.assess.HubReading;
import hotidle.result.Solution;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where over engine speed the hub's film is thinnest.
 *
 * @param speed      [rev/s]
 * @param film       [m]
 * @param allowed    the least one allowed [m]
 * @param unbalanced whether the secondary is unloaded there, so that the side load of the primary stands alone
 */
public record ThinnestFilm(double speed, double film, double allowed, boolean unbalanced) {

    /** Soon after the primary begins to bypass, the secondary is unloaded: up to this multiple of that speed (assumed by us) [-]. */
    private static final double UNLOADED_BY = 1.1;

    /** Whether it is thinner than allowed. */
    public boolean tooThin() {
        return film < allowed;
    }

    /** Of a sweep; empty without a hub, or where no film is known. Metal contact at other speeds is not told here. */
    static Optional<ThinnestFilm> of(SpeedSweep sweep) {
        return sweep.thinnestFilm().map(state -> of(sweep, state));
    }

    private static ThinnestFilm of(SpeedSweep sweep, Solution state) {
        HubReading hub = HubReading.of(sweep.roles(), state);
        double speed = state.conditions().speed();
        return new ThinnestFilm(
                speed,
                hub.least().orElseThrow(),
                hub.allowed(),
                unbalanced(speed, sweep.unloading(), sweep.bypassing()));
    }

    /** Whether at a speed the secondary no longer balances the primary's side load; all speeds in [rev/s]. */
    static boolean unbalanced(double speed, OptionalDouble unloading, OptionalDouble bypassing) {
        return unloading.isPresent()
                && bypassing.isPresent()
                && speed >= unloading.getAsDouble()
                && speed <= UNLOADED_BY * bypassing.getAsDouble();
    }
}

package hotidle.study;

import hotidle.study.TorqueHeld.Carrier;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The highest set pressure that still buys torque. Clutches hold more with pressure, what has a rating does not: from the crossing on
 * that gives first, in the range that loads it most, and a higher pressure buys leakage and heat alone.
 *
 * @param weakest  what by its rating carries least engine torque in any range; empty where nothing has a rating
 * @param range    in which it does; empty where nothing has a rating
 * @param pressure lowest set pressure tried at which every clutch holds that torque in every range [Pa]; empty where none does
 * @param lowest   tried [Pa]
 * @param highest  tried [Pa]
 * @param unsolved ranges in which a state looked for was not found, so that it counts as not holding
 */
public record UsefulPressure(
        Optional<Carrier> weakest,
        String range,
        OptionalDouble pressure,
        double lowest,
        double highest,
        List<String> unsolved) {

    public UsefulPressure {
        unsolved = List.copyOf(unsolved);
    }

    /**
     * Looks for it.
     *
     * @param unit      commanded
     * @param raised    makes it for each set pressure
     * @param pressures tried [Pa], rising, two or more
     * @param speed     of the engine [rev/s]
     * @throws IllegalArgumentException where no duty point under load gives the temperatures of all regions
     */
    public static UsefulPressure of(Transmission unit, Window.Raised raised, List<Double> pressures, double speed) {
        double lowest = pressures.get(0);
        double highest = pressures.get(pressures.size() - 1);
        Optional<ClutchTrial.Borne> least = ClutchTrial.leastRated(unit, speed);
        if (least.isEmpty()) {
            return new UsefulPressure(Optional.empty(), "", OptionalDouble.empty(), lowest, highest, List.of());
        }
        ClutchTrial trial = new ClutchTrial(raised, least.get().link().torque(), speed);
        OptionalDouble crossing = trial.lowest(pressures);
        return new UsefulPressure(
                Optional.of(least.get().link()),
                least.get().range(),
                crossing,
                lowest,
                highest,
                List.copyOf(trial.unsolved()));
    }

    /** Lowest set pressure tried where only the highest is asked for: 60 psi (chosen) [Pa]. */
    private static final double LOWEST = 60 * SetPressure.PSI;

    /**
     * Looks for it below a set pressure that is asked for.
     *
     * @param highest that pressure [Pa]
     * @return empty where torque cannot be asked of the unit, or the pressure is too low to look below it
     */
    public static Optional<UsefulPressure> below(Transmission unit, SetPressure.By by, double highest) {
        double lowest = Math.max(LOWEST, SetPressure.lowest(unit, by));
        return TorqueConditions.given(unit) && lowest < highest
                ? Optional.of(
                        of(unit, Window.Raised.by(unit, by), List.of(lowest, highest), TorqueConditions.USUAL_SPEED))
                : Optional.empty();
    }

    /** Whether it lies between two of the pressures tried; else clutches give first at all of them, or at none. */
    public boolean crosses() {
        return pressure.isPresent() && pressure.getAsDouble() > lowest;
    }
}

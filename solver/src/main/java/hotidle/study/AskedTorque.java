package hotidle.study;

import hotidle.study.TorqueHeld.Carrier;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From which set pressure on a build holds an engine torque in every range, under {@link TorqueConditions}: no pressure helps where
 * something bears less by its rating. What else a set pressure must leave alone, as relief valve, lubrication and hub, is not asked.
 *
 * @param torque   asked for [N·m]
 * @param range    of what gives before, whatever the pressure or at the highest one; empty where nothing does
 * @param gives    what by its rating bears less in any range; else the clutch that carries least at the highest pressure tried, where
 *                 clutches hold the torque at none; empty where they do, or where no state was found
 * @param from     lowest set pressure at which everything holds it [Pa]; empty where nothing that was tried does
 * @param to       highest one tried up to which it is held all the way [Pa]; the same as from where a higher one does not
 * @param lowest   tried [Pa]
 * @param highest  tried [Pa]
 * @param unsolved ranges in which a state looked for was not found, so that it counts as not holding
 */
public record AskedTorque(
        double torque,
        String range,
        Optional<Carrier> gives,
        OptionalDouble from,
        double to,
        double lowest,
        double highest,
        List<String> unsolved) {

    public AskedTorque {
        unsolved = List.copyOf(unsolved);
    }

    /**
     * Looks for it.
     *
     * @param torque    of the engine [N·m], above zero
     * @param unit      commanded
     * @param raised    makes it for each set pressure
     * @param pressures tried [Pa], rising, two or more
     * @param speed     of the engine [rev/s]
     * @throws IllegalArgumentException where no duty point under load gives the temperatures of all regions
     */
    public static AskedTorque of(
            double torque, Transmission unit, Window.Raised raised, List<Double> pressures, double speed) {
        Optional<ClutchTrial.Borne> rated =
                ClutchTrial.leastRated(unit, speed).filter(least -> least.link().torque() < torque);
        ClutchTrial trial = new ClutchTrial(raised, torque, speed);
        if (rated.isPresent()) {
            return answer(trial, pressures, rated, OptionalDouble.empty());
        }
        OptionalDouble from = trial.lowest(pressures);
        return answer(trial, pressures, from.isPresent() ? Optional.empty() : trial.weakest(last(pressures)), from);
    }

    private static AskedTorque answer(
            ClutchTrial trial, List<Double> pressures, Optional<ClutchTrial.Borne> gives, OptionalDouble from) {
        double to = from.orElse(pressures.get(0));
        for (double pressure : pressures) {
            if (from.isPresent() && pressure > to) {
                if (!trial.holds(pressure)) {
                    break;
                }
                to = pressure;
            }
        }
        return new AskedTorque(
                trial.torque(),
                gives.map(ClutchTrial.Borne::range).orElse(""),
                gives.map(ClutchTrial.Borne::link),
                from,
                to,
                pressures.get(0),
                last(pressures),
                List.copyOf(trial.unsolved()));
    }

    private static double last(List<Double> pressures) {
        return pressures.get(pressures.size() - 1);
    }

    /** Whether nothing gives before by its rating, so that pressure decides. */
    public boolean pressureDecides() {
        return gives.map(Carrier::clutch).orElse(true);
    }
}

package hotidle.geartrain;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** What a train does with some of its clutches applied. */
public sealed interface Drive {

    /**
     * It drives. Speeds are over the input's speed and torques over the input's torque, both positive in the input's sense.
     *
     * @param ratio        input speed over output speed [-]
     * @param torqueRatio  torque that the output delivers [-]; it is ratio times efficiency
     * @param speeds       of each member that something fixes, the case among them [-]
     * @param wheelTorques that the meshes put on each sun, ring and carrier, by {@code set.sun}, {@code set.ring} and so on [-]
     * @param loads        of each coupling that is engaged, by its name
     * @param slips        of each coupling that is not, where its speeds are fixed [-]
     * @param caseTorque   that the case puts on the train [-]; input torque and it add up to what the output delivers
     * @param meshLoss     share of the input's power that the meshes turn into heat [-]
     */
    record Driven(
            double ratio,
            double torqueRatio,
            Map<String, Double> speeds,
            Map<String, Double> wheelTorques,
            Map<String, Load> loads,
            Map<String, Double> slips,
            double caseTorque,
            double meshLoss)
            implements Drive {

        public Driven {
            speeds = Map.copyOf(speeds);
            wheelTorques = Map.copyOf(wheelTorques);
            loads = Map.copyOf(loads);
            slips = Map.copyOf(slips);
        }

        /** Power out over power in [-]. */
        public double efficiency() {
            return torqueRatio / ratio;
        }

        /** Speed of a member [-]; empty where nothing fixes it. */
        public OptionalDouble speed(String member) {
            return speeds.containsKey(member) ? OptionalDouble.of(speeds.get(member)) : OptionalDouble.empty();
        }
    }

    /**
     * What an engaged coupling carries.
     *
     * @param torque that it puts on its first member [-]; where it shares a load, what it carries where the others leave it most
     * @param shared whether it shares a load with others in a way that stiffness alone decides, as a brake beside a one-way clutch
     */
    record Load(double torque, boolean shared) {}

    /**
     * It does not drive, or how is not known.
     *
     * @param why   the reason
     * @param names members or couplings that are to blame
     */
    record NotDriven(DriveFault why, List<String> names) implements Drive {
        public NotDriven {
            names = List.copyOf(names);
        }
    }

    /** Why a train does not drive. */
    enum DriveFault {
        /** Nothing fixes the output's speed; the names are the members that are free. */
        OUTPUT_FREE,
        /** The engaged couplings contradict each other, so that the input cannot turn; the names are those couplings. */
        CONTRADICTION,
        /** The output stands while the input turns; no names. */
        OUTPUT_STANDS,
        /** With the losses of its meshes nothing balances: the train locks itself; no names. */
        SELF_LOCKING,
        /** Two directions of power through the meshes balance, so that the losses are not known; no names. */
        LOSS_AMBIGUOUS
    }
}

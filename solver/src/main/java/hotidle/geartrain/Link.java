package hotidle.geartrain;

import hotidle.geartrain.Drive.Driven;
import java.util.OptionalDouble;

/**
 * Something in the gear train that bears a torque and no oil pressure changes it: a shaft, a one-way clutch, planet pins, the case.
 *
 * @param name    for messages
 * @param carries what loads it: a coupling, {@code set.carrier}, {@code set.sun}, {@code case}, the input, the output or {@link #PUMP}
 * @param rating  the torque that it bears [N·m], above zero
 */
public record Link(String name, String carries, double rating) {

    /** In place of what carries: the drive of the pump, which the engine loads and not the turbine. */
    public static final String PUMP = "pump";

    public Link {
        if (!(rating > 0) || Double.isInfinite(rating)) {
            throw new IllegalArgumentException("rating of " + name + " is " + rating + " and must be above zero (N·m)");
        }
    }

    /** Torque on it over the turbine's torque, without sign [-]; empty where the range does not load it. */
    public OptionalDouble share(GearTrain train, Driven driven) {
        double share = Math.abs(torque(train, driven));
        return share > TorqueBalance.NIL ? OptionalDouble.of(share) : OptionalDouble.empty();
    }

    private double torque(GearTrain train, Driven driven) {
        if (carries.equals(train.input())) {
            return 1;
        }
        if (carries.equals(train.output())) {
            return driven.torqueRatio();
        }
        if (carries.equals(Coupling.CASE)) {
            return driven.caseTorque();
        }
        Drive.Load load = driven.loads().get(carries);
        return load == null ? driven.wheelTorques().getOrDefault(carries, 0.0) : load.torque();
    }
}

package hotidle.study;

import hotidle.part.Converter;
import hotidle.part.Setting;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Heat of a lockup that is applied over a time, against one that is held slipping, quasi-steadily: the engine keeps its torque, and while
 * it is applied the slip falls evenly from that of the duty point to nil.
 *
 * <pre>
 * Formula   applied: T·Δω·t/2; held slipping: T·Δω, in the same time twice the heat
 * </pre>
 *
 * @param duty    duty point whose turbine speed is given
 * @param torque  of the engine [N·m]
 * @param slip    there [rad/s]
 * @param applied heat of applying it [J]
 * @param held    heat of holding it slipping so [W]
 * @param slips   whether it is held slipping there; applied from open otherwise
 */
public record LockupHeat(String duty, double torque, double slip, double applied, double held, boolean slips) {

    /**
     * At each duty point that drives forward with a turbine that turns slower than the engine; none where nothing locks up.
     *
     * @param time over which it is applied [s], above zero
     */
    public static List<LockupHeat> of(Transmission unit, double time) {
        boolean locks = unit.network().parts().stream()
                .anyMatch(placed -> placed.part() instanceof Converter converter
                        && converter
                                .lockup()
                                .filter(clutch -> clutch.torqueArm() > 0)
                                .isPresent());
        return unit.duties().stream()
                .filter(duty -> locks && slip(duty).isPresent() && duty.lockup() != Setting.Lockup.ON)
                .map(duty -> {
                    double slip = slip(duty).getAsDouble();
                    double power = duty.engineTorque() * slip;
                    return new LockupHeat(
                            duty.name(),
                            duty.engineTorque(),
                            slip,
                            power * time / 2,
                            power,
                            duty.lockup() == Setting.Lockup.SLIPPING);
                })
                .toList();
    }

    /** Where the turbine turns; at stall nobody applies a lockup. */
    private static OptionalDouble slip(DutyPoint duty) {
        OptionalDouble turbine = duty.turbineSpeed();
        double slip = 2 * Math.PI * (duty.speed() - turbine.orElse(0));
        return turbine.orElse(0) > 0 && slip > 0 ? OptionalDouble.of(slip) : OptionalDouble.empty();
    }
}

package hotidle.part;

import hotidle.law.RatedPoint;
import java.util.List;
import java.util.Map;

/**
 * A torque converter with a lockup clutch. Oil enters on the release side and leaves on the apply side while lockup is off;
 * with lockup on the paths are reversed and only the piston's seal lets oil by. The lockup valve does the reversing.
 *
 * <pre>
 * Loss       a rated point between the two sides, one for each lockup state; {@link RatedPoint}
 * Capacity   T = μ·z·r·A·(p_apply − p_release), never below zero; the oil on both sides of a locked piston turns at one speed, so
 *            that its head cancels
 * </pre>
 *
 * @param losses         rated point for each lockup state
 * @param neededCharge   pressure that the converter needs on its entry side [Pa]
 * @param lockupArea     A of the lockup piston [m²]
 * @param lockupRadius   r, mean radius of its lining [m]
 * @param lockupSurfaces z
 * @param friction       μ [-]
 * @param factor         torque that the lockup should carry over the torque asked of it [-]
 */
public record Converter(
        Map<Setting.Lockup, RatedPoint> losses,
        double neededCharge,
        double lockupArea,
        double lockupRadius,
        int lockupSurfaces,
        double friction,
        double factor)
        implements Part {

    private static final Form FORM = new Form(List.of("release", "apply"), List.of(), List.of());

    public Converter {
        losses = Map.copyOf(losses);
        if (losses.size() != Setting.Lockup.values().length) {
            throw new IllegalArgumentException("a converter needs a rated point for each lockup state");
        }
        Check.notNegative("charge pressure needed", neededCharge);
        Check.notNegative("lockup piston area", lockupArea);
        Check.notNegative("lockup radius", lockupRadius);
        Check.within("lockup surfaces", lockupSurfaces, 1, 12);
        Check.within("coefficient of friction", friction, 0.01, 1);
        Check.within("capacity factor", factor, 0.1, 10);
    }

    /** Torque over apply less release pressure [m³]. */
    private double torqueArm() {
        return friction * lockupSurfaces * lockupRadius * lockupArea;
    }

    /** Apply less release pressure with which the lockup carries a torque [N·m] times its capacity factor [Pa]. */
    public double dropFor(double torque) {
        return factor * torque / torqueArm();
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public Law law(Setting setting) {
        Through through = new Through(losses.get(setting.lockup()).loss(), setting.oil());
        return new Law() {
            @Override
            public void evaluate(Reading in, Stamp out) {
                through.evaluate(in, out);
            }

            @Override
            public List<Stream> streams(Reading in) {
                return through.streams(in);
            }

            @Override
            public List<Measure> measures(Reading in) {
                double drop = in.pressure(1) - in.pressure(0);
                double capacity = torqueArm() * Math.max(drop, 0);
                return List.of(
                        new Measure("charge_pa", Math.max(in.pressure(0), in.pressure(1))),
                        new Measure("apply_less_release_pa", drop),
                        new Measure("lockup_capacity_n_m", capacity));
            }
        };
    }
}

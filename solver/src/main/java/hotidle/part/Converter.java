package hotidle.part;

import hotidle.law.RatedPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A torque converter, with or without a lockup clutch. Oil enters on the release side and leaves on the apply side while lockup is
 * off; with lockup on the paths are reversed and only the piston's seal lets oil by. The lockup valve does the reversing.
 *
 * <pre>
 * Loss       a rated point between the two sides, one for each lockup state; {@link RatedPoint}
 * Capacity   T = μ·z·r·A·(p_apply − p_release), never below zero; the oil on both sides of a locked piston turns at one speed, so
 *            that its head cancels
 * </pre>
 *
 * @param open         rated point with lockup off, and of a converter without lockup at all times
 * @param neededCharge pressure that the converter needs on its entry side [Pa]
 * @param lockup       its lockup clutch, where it has one
 */
public record Converter(RatedPoint open, double neededCharge, Optional<LockupClutch> lockup) implements Part {

    /** On the side where oil enters. */
    public static final Measure CHARGE =
            new Measure("charge_pa", Measure.QuantityKind.PRESSURE, "on the side where oil enters");

    /** That presses the lockup piston. */
    public static final Measure APPLY_LESS_RELEASE =
            new Measure("apply_less_release_pa", Measure.QuantityKind.PRESSURE, "that presses the lockup piston");

    /** That the lockup clutch carries. */
    public static final Measure LOCKUP_CAPACITY =
            new Measure("lockup_capacity_n_m", Measure.QuantityKind.TORQUE, "that the lockup clutch carries");

    @Override
    public List<Measure> measures() {
        return List.of(CHARGE, APPLY_LESS_RELEASE, LOCKUP_CAPACITY);
    }

    private static final Form FORM = new Form(List.of("release", "apply"), List.of(), List.of());

    /**
     * The lockup clutch of a converter.
     *
     * @param slipping rated point with lockup slipping
     * @param on       rated point with lockup on
     * @param area     A of its piston [m²]
     * @param radius   r, mean radius of its lining [m]
     * @param surfaces z
     * @param friction μ [-]
     * @param factor   torque that it should carry over the torque asked of it [-]
     */
    public record LockupClutch(
            RatedPoint slipping,
            RatedPoint on,
            double area,
            double radius,
            int surfaces,
            double friction,
            double factor) {
        public LockupClutch {
            Check.notNegative("lockup piston area", area);
            Check.notNegative("lockup radius", radius);
            Check.within("lockup surfaces", surfaces, 1, 12);
            Check.within("coefficient of friction", friction, 0.01, 1);
            Check.within("capacity factor", factor, 0.1, 10);
        }

        /** Torque over apply less release pressure [m³]; 0 where area or radius are not given, and then nothing can be judged. */
        public double torqueArm() {
            return friction * surfaces * radius * area;
        }

        /** Apply less release pressure with which the lockup carries a torque [N·m] times its capacity factor [Pa]. */
        public double dropFor(double torque) {
            return factor * torque / torqueArm();
        }
    }

    public Converter {
        Check.notNegative("charge pressure needed", neededCharge);
    }

    private RatedPoint loss(Setting.Lockup state) {
        return lockup.map(clutch -> switch (state) {
                    case OFF -> open;
                    case SLIPPING -> clutch.slipping;
                    case ON -> clutch.on;
                })
                .orElse(open);
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public Law law(Setting setting) {
        Through through = new Through(loss(setting.lockup()).loss(), setting.oil());
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
            public List<Measure.Reported> measures(Reading in) {
                List<Measure.Reported> measures = new ArrayList<>();
                measures.add(CHARGE.of(Math.max(in.pressure(0), in.pressure(1))));
                lockup.ifPresent(clutch -> {
                    double drop = in.pressure(1) - in.pressure(0);
                    measures.add(APPLY_LESS_RELEASE.of(drop));
                    measures.add(LOCKUP_CAPACITY.of(clutch.torqueArm() * Math.max(drop, 0)));
                });
                return measures;
            }
        };
    }
}

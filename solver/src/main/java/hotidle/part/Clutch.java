package hotidle.part;

import hotidle.law.Hole;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import java.util.List;

/**
 * A multi-plate clutch: what its piston seals let by, and the torque that it holds standing.
 *
 * <pre>
 * Capacity   T = μ·z·r·(p·A − F), r = ⅔·(ro³ − ri³)/(ro² − ri²) for uniform pressure; R. S. Khurmi, J. K. Gupta, Theory of
 *            Machines, §10.32 (from memory)
 * Leak       an annular gap along the piston's seals and a bleed hole side by side; {@link Slot}, {@link Hole}
 * </pre>
 *
 * @param pistonArea   A [m²]
 * @param returnForce  F of the return spring with the clutch applied [N]
 * @param surfaces     z, rubbing surfaces
 * @param inner        ri of the lining [m]
 * @param outer        ro of the lining [m]
 * @param friction     μ, static [-]
 * @param sealDiameter of the piston [m]
 * @param sealGap      that the seals leave, equivalent radial height [m]
 * @param sealLength   of the seal along the flow [m]
 * @param bleed        diameter of the bleed hole in piston or drum [m], 0 for none
 */
public record Clutch(
        double pistonArea,
        double returnForce,
        int surfaces,
        double inner,
        double outer,
        double friction,
        double sealDiameter,
        double sealGap,
        double sealLength,
        double bleed)
        implements Part {

    private static final double BLEED_DISCHARGE = 0.7;

    private static final Form FORM = new Form(List.of("piston", "drain"), List.of(), List.of());

    public Clutch {
        Check.positive("piston area", pistonArea);
        Check.notNegative("return force", returnForce);
        Check.within("number of rubbing surfaces", surfaces, 1, 40);
        Check.positive("inner lining radius", inner);
        Check.within("outer lining radius", outer, inner * 1.0001, 1);
        Check.within("coefficient of friction", friction, 0.01, 1);
        Check.positive("seal diameter", sealDiameter);
        Check.positive("seal gap", sealGap);
        Check.positive("seal length", sealLength);
        Check.notNegative("bleed hole", bleed);
    }

    /** Static torque capacity [N·m] at a piston pressure [Pa], never below zero. */
    public double capacity(double pressure) {
        double radius = 2.0 / 3 * (cube(outer) - cube(inner)) / (outer * outer - inner * inner);
        return friction * surfaces * radius * Math.max(pressure * pistonArea - returnForce, 0);
    }

    private static double cube(double value) {
        return value * value * value;
    }

    @Override
    public Form form() {
        return FORM;
    }

    @Override
    public Law law(Setting setting) {
        SeriesLoss seal = Slot.annular(sealDiameter, sealGap, sealLength, 0);
        SeriesLoss hole = bleed > 0 ? Hole.loss(bleed, 0, BLEED_DISCHARGE) : SeriesLoss.SHUT;
        return new Law() {
            @Override
            public void evaluate(Reading in, Stamp out) {
                out.pass(in, 0, 1, seal, setting.oil());
                out.pass(in, 0, 1, hole, setting.oil());
            }

            @Override
            public List<Stream> streams(Reading in) {
                return List.of(
                        Stream.through("seal", in, 0, 1, seal, setting.oil()),
                        Stream.through("bleed", in, 0, 1, hole, setting.oil()));
            }

            @Override
            public List<Measure> measures(Reading in) {
                return List.of(
                        new Measure("clamp_force_n", in.pressure(0) * pistonArea - returnForce),
                        new Measure("static_capacity_n_m", capacity(in.pressure(0))));
            }
        };
    }
}

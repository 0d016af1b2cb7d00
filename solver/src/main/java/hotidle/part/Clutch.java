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
        return friction * surfaces * meanRadius(false) * Math.max(pressure * pistonArea - returnForce, 0);
    }

    /**
     * Mean radius of the friction [m]: new linings press evenly, run-in ones wear evenly.
     *
     * @param wornIn whether the uniform-wear theory is asked for: (ro + ri)/2; Khurmi and Gupta §10.32 (from memory)
     */
    public double meanRadius(boolean wornIn) {
        return wornIn ? (outer + inner) / 2 : 2.0 / 3 * (cube(outer) - cube(inner)) / (outer * outer - inner * inner);
    }

    /**
     * Force of the oil's own rotation on a piston [N], against its return spring.
     *
     * <pre>
     * Formula   π·ρ·ω²·[(Ro⁴ − Ri⁴)/4 − r0²·(Ro² − Ri²)/2], free surface at r0
     * Source    J. F. Douglas, J. M. Gasiorek, J. A. Swaffield, Fluid Mechanics, Ex. 6.9
     * </pre>
     *
     * A balance chamber takes off the same expression with its own radii.
     *
     * @param density of the oil [kg/m³]
     * @param speed   of the drum [rev/s]
     * @param inside  Ri, inner radius of the piston [m]
     * @param outside Ro, its outer radius [m]
     * @param surface r0, radius of the free surface, where the oil enters [m], not above Ri
     */
    public static double centrifugalForce(double density, double speed, double inside, double outside, double surface) {
        Check.within("radius of the free surface", surface, 0, inside);
        Check.within("outer radius of the piston", outside, inside, 1);
        double omega = 2 * Math.PI * speed;
        double squares = outside * outside - inside * inside;
        double fourths = Math.pow(outside, 4) - Math.pow(inside, 4);
        return Math.PI * density * omega * omega * (fourths / 4 - surface * surface * squares / 2);
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

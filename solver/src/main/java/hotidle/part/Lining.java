package hotidle.part;

/**
 * The linings of a clutch: what torque a clamping force gives.
 *
 * <pre>
 * Torque    T = μ·z·r·N, N the clamping force
 * Radius    new linings press evenly: r = ⅔·(ro³ − ri³)/(ro² − ri²); run-in ones wear evenly: r = (ro + ri)/2, which is less;
 *           R. S. Khurmi, J. K. Gupta, Theory of Machines, §10.32 (from memory)
 * </pre>
 *
 * @param surfaces z, rubbing surfaces
 * @param inner    ri [m]
 * @param outer    ro [m]
 * @param friction μ at rest [-]
 * @param sliding  μ while it slips [-]
 * @param runIn    whether the linings are run in; new otherwise
 */
public record Lining(int surfaces, double inner, double outer, double friction, double sliding, boolean runIn)
        implements Grip {

    public Lining {
        Check.within("number of rubbing surfaces", surfaces, 1, 40);
        Check.positive("inner lining radius", inner);
        Check.within("outer lining radius", outer, inner * 1.0001, 1);
        Check.within("coefficient of friction", friction, 0.01, 1);
        Check.within("coefficient of sliding friction", sliding, 0.01, 1);
    }

    /** Mean radius of the friction [m]. */
    public double meanRadius() {
        return runIn ? (outer + inner) / 2 : 2.0 / 3 * (cube(outer) - cube(inner)) / (outer * outer - inner * inner);
    }

    @Override
    public double torqueArm(boolean slipping) {
        return (slipping ? sliding : friction) * surfaces * meanRadius();
    }

    private static double cube(double value) {
        return value * value * value;
    }
}

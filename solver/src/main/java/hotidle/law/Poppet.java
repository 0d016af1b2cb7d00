package hotidle.law;

/**
 * A ball or poppet on a spring: shut up to its cracking pressure, then lifting in proportion until its stop.
 *
 * <pre>
 * Lift      x = (Δp·A − F0)/k between 0 and its stop, A = π·d²/4
 * Cracking  F0/A; full lift at (F0 + k·stop)/A; A. Esposito, Fluid Power with Applications, Ex. 8-1 (found)
 * Flow      curtain area π·d·x as a sharp opening, {@link Hole}; creeping limit that of the round hole of the same area
 * Shut      the leak of an annular gap between ball and seat, both ways
 * </pre>
 *
 * @param seat                 d [m]
 * @param springRate           k [N/m]
 * @param preload              F0 [N]
 * @param stop                 largest lift [m]
 * @param dischargeCoefficient Cd [-]
 * @param leak                 leak past the seat, open or shut
 */
public record Poppet(
        double seat, double springRate, double preload, double stop, double dischargeCoefficient, SeriesLoss leak)
        implements Restriction {

    public Poppet {
        if (!(seat > 0 && springRate > 0 && preload >= 0 && stop > 0)) {
            throw new IllegalArgumentException("a poppet needs seat " + seat + " m, spring rate " + springRate
                    + " N/m and lift " + stop + " m above zero, and preload " + preload + " N not below it");
        }
        if (!(dischargeCoefficient >= 0.3 && dischargeCoefficient <= 1)) {
            throw new IllegalArgumentException(
                    "discharge coefficient is " + dischargeCoefficient + " and must lie between 0.3 and 1");
        }
    }

    @Override
    public void flow(double drop, double density, double viscosity, Flow out) {
        leak.flow(drop, density, viscosity, out);
        double lift = lift(drop);
        if (lift <= 0) {
            return;
        }
        double past = out.q();
        double pastByDrop = out.byDrop();
        double pastByViscosity = out.byViscosity();
        double pastByDensity = out.byDensity();
        double area = Math.PI * seat * lift;
        double diameter = Math.sqrt(4 * area / Math.PI);
        double viscous = Hole.viscous(diameter, 0);
        double kinetic = Hole.kinetic(area, dischargeCoefficient);
        new SeriesLoss(viscous, kinetic).flow(drop, density, viscosity, out);
        double liftSlope = lift < stop ? seatArea() / springRate : 0;
        double byLift = -(1.5 * viscous * out.byViscous() + 2 * kinetic * out.byKinetic()) / lift;
        out.set(
                past + out.q(),
                pastByDrop + out.byDrop() + byLift * liftSlope,
                pastByViscosity + out.byViscosity(),
                pastByDensity + out.byDensity());
    }

    /** Drop at which it begins to lift [Pa]. */
    public double cracking() {
        return preload / seatArea();
    }

    /** Lift [m] under a drop [Pa]. */
    public double lift(double drop) {
        return Math.min(Math.max((drop * seatArea() - preload) / springRate, 0), stop);
    }

    /** Drop at which it meets its stop [Pa]. */
    public double fullLiftPressure() {
        return (preload + springRate * stop) / seatArea();
    }

    private double seatArea() {
        return Math.PI * seat * seat / 4;
    }
}

package hotidle.law;

/**
 * A restriction known by one measured point instead of by its dimensions: a filter, a cooler, a converter.
 *
 * <pre>
 * Formula   viscous = (1 − s)·Δp/(μ·q), kinetic = s·Δp/(ρ·q²), s the turbulent share of the drop at the point
 * Blocked   a blocked share b of many equal paths leaves viscous/(1 − b) and kinetic/(1 − b)²
 * </pre>
 *
 * @param flow           q [m³/s]
 * @param drop           Δp [Pa]
 * @param viscosity      μ of the oil in the measurement [Pa·s]
 * @param density        ρ of the oil in the measurement [kg/m³]
 * @param turbulentShare s [-], 0 to below 1
 */
public record RatedPoint(double flow, double drop, double viscosity, double density, double turbulentShare) {

    public RatedPoint {
        if (!(flow > 0 && drop > 0 && viscosity > 0 && density > 0 && turbulentShare >= 0 && turbulentShare < 1)) {
            throw new IllegalArgumentException("a rated point needs flow, drop, viscosity and density above zero and a"
                    + " turbulent share from 0 to below 1");
        }
    }

    /** The loss that goes through the point. */
    public SeriesLoss loss() {
        return new SeriesLoss(
                (1 - turbulentShare) * drop / (viscosity * flow), turbulentShare * drop / (density * flow * flow));
    }

    /** The same with a share of its paths blocked, 0 to below 1. */
    public SeriesLoss loss(double blocked) {
        return loss().times(1 - blocked);
    }
}

package hotidle.law;

/** Anything that oil is pressed through: its flow follows from drop, density and viscosity. */
public interface Restriction {

    /**
     * Flow under a drop.
     *
     * @param drop      Δp [Pa], either sign; the flow has the same
     * @param density   [kg/m³]
     * @param viscosity [Pa·s]
     */
    Flow flow(double drop, double density, double viscosity);
}

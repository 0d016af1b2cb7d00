package hotidle.law;

/** Anything that oil is pressed through: its flow follows from drop, density and viscosity. */
public interface Restriction {

    /**
     * Flow under a drop.
     *
     * @param drop      Δp [Pa], either sign; the flow has the same
     * @param density   [kg/m³]
     * @param viscosity [Pa·s]
     * @param out       where the answer is written
     */
    void flow(double drop, double density, double viscosity, Flow out);

    /** The same, written into an answer of its own. */
    default Flow flow(double drop, double density, double viscosity) {
        Flow out = new Flow();
        flow(drop, density, viscosity, out);
        return out;
    }

    /** Two ways side by side under one drop. */
    static Restriction beside(Restriction one, Restriction other) {
        return (drop, density, viscosity, out) -> {
            one.flow(drop, density, viscosity, out);
            double q = out.q();
            double byDrop = out.byDrop();
            double byViscosity = out.byViscosity();
            double byDensity = out.byDensity();
            other.flow(drop, density, viscosity, out);
            out.set(q + out.q(), byDrop + out.byDrop(), byViscosity + out.byViscosity(), byDensity + out.byDensity());
        };
    }

    /** Several equal ways side by side. */
    static Restriction several(Restriction one, int count) {
        return (drop, density, viscosity, out) -> {
            one.flow(drop, density, viscosity, out);
            out.set(count * out.q(), count * out.byDrop(), count * out.byViscosity(), count * out.byDensity());
        };
    }
}

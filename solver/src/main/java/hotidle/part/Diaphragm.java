package hotidle.part;

/**
 * The diaphragm of a vacuum modulator: its spring pushes the valve, manifold vacuum pulls against the spring.
 *
 * <pre>
 * Balance   p·A = spring − vacuum·share·A_diaphragm: forces on one rod, no law of its own
 * </pre>
 *
 * @param area      A on which the valve's own pressure pushes back [m²]
 * @param spring    force without vacuum [N]
 * @param diaphragm effective area of the diaphragm [m²]
 * @param share     of the manifold's vacuum that comes to the diaphragm [-]: 0 with the hose off or the diaphragm torn
 */
public record Diaphragm(double area, double spring, double diaphragm, double share) implements SignalValve.Demand {

    public Diaphragm {
        Check.positive("area of a modulator valve", area);
        Check.positive("spring of a vacuum modulator", spring);
        Check.positive("area of a modulator's diaphragm", diaphragm);
        Check.within("share of the vacuum", share, 0, 1);
    }

    @Override
    public double pressure(Sensed sensed) {
        return Math.max(0, (spring - sensed.vacuum() * share * diaphragm) / area);
    }
}

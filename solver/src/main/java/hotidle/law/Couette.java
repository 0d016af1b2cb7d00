package hotidle.law;

/**
 * Drag of oil in a gap whose one wall moves: plane Couette flow.
 *
 * <pre>
 * Disc     P = π·μ·ω²·(ro⁴ − ri⁴)/(2·h): shear μ·ω·r/h on the area 2·π·r·dr at the arm r
 * Source   C. Schaschke, Fluid Mechanics: Worked Examples for Engineers, ex. 3.18 and 3.20 (found)
 * Range    laminar, oil of one temperature: in deep cold the film heats itself and drags less, by a quarter at 0.6 Pa·s and 4 m/s
 *          between walls that stay cold (Nahme number 5; by hand)
 * </pre>
 */
public final class Couette {

    private Couette() {}

    /**
     * Power that a turning face takes [W].
     *
     * @param viscosity μ [Pa·s]
     * @param speed     [rev/s]
     * @param inner     ri [m]
     * @param outer     ro [m]
     * @param height    h of the gap [m], above zero
     */
    public static double disc(double viscosity, double speed, double inner, double outer, double height) {
        double omega = 2 * Math.PI * speed;
        double fourths = Math.pow(outer, 4) - Math.pow(inner, 4);
        return Math.PI * viscosity * omega * omega * fourths / (2 * height);
    }
}

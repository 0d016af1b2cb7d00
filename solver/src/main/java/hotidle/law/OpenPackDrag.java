package hotidle.law;

/**
 * Drag of an open multi-plate pack in oil.
 *
 * <pre>
 * Torque    T = n·π·μ·Δω·(re⁴ − ri⁴)/(2·h): shear μ·Δω·r/h on the area 2·π·r·dr at the arm r, n gaps of height h
 * Film      the turning plate pumps oil out: with a linear profile of speed across the gap and no rise of pressure along it a gap
 *           that is full to the radius r passes q(r) = π·ρ·ω²·h³·r²/(20·μ) (derived here from the radial momentum balance,
 *           μ·u″ = −ρ·r·ω²·(z/h)²). Fed with less, the film ends at the radius re where q(re) is the flow fed to it
 * Source    of the shear: {@link Couette}; of the shrinking film: H. Kitabayashi, C. Y. Li, H. Hiraki, Analysis of the Various Factors
 *           Affecting Drag Torque in Multiple-Plate Wet Clutches, SAE 2003-01-1973 (from memory)
 * Range     laminar; grooves, waviness and mist beyond re are not counted
 * </pre>
 */
public final class OpenPackDrag {

    private OpenPackDrag() {}

    /**
     * Outer radius of the film [m].
     *
     * @param viscosity μ [Pa·s]
     * @param density   ρ [kg/m³]
     * @param slip      speed difference of the plates [rev/s]
     * @param inner     ri [m]
     * @param outer     ro [m]
     * @param height    h of a gap [m], above zero
     * @param fed       flow fed to one gap [m³/s]; infinite for a gap that is full
     */
    public static double filmRadius(
            double viscosity, double density, double slip, double inner, double outer, double height, double fed) {
        double omega = 2 * Math.PI * Math.abs(slip);
        double square = 20 * viscosity * fed / (Math.PI * density * omega * omega * height * height * height);
        return omega == 0 ? outer : Math.max(inner, Math.min(outer, Math.sqrt(square)));
    }

    /**
     * Torque of a pack [N·m], 0 or more.
     *
     * @param viscosity μ [Pa·s]
     * @param slip      speed difference of the plates [rev/s]
     * @param gaps      n
     * @param inner     ri [m]
     * @param film      re, outer radius of the film [m]
     * @param height    h of a gap [m], above zero
     */
    public static double torque(double viscosity, double slip, int gaps, double inner, double film, double height) {
        return slip == 0
                ? 0
                : gaps * Couette.disc(viscosity, slip, inner, film, height) / (2 * Math.PI * Math.abs(slip));
    }
}

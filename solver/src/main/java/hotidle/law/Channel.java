package hotidle.law;

/**
 * What the oil wets on its way, for its Reynolds number and regime of flow.
 *
 * <pre>
 * Formula   Re = ρ·v·D/μ on the hydraulic diameter D = 4·area/perimeter, so Re = 4·m/(perimeter·μ) whatever the area
 * Pipe      laminar below 2300, turbulent above 4000; F. White, Fluid Mechanics, §6 (from memory)
 * Slot      the same limits on D = twice the height; White §6 (from memory)
 * Hole      laminar below 10, the discharge coefficient settled above 260; Merritt 1967 §3-4 and §5-2 (from memory)
 * </pre>
 *
 * @param form      shape of the way
 * @param perimeter wetted, of all equal ways side by side [m]
 */
public record Channel(Geometry form, double perimeter) {

    /** Shape of a way, with the Reynolds numbers up to which it is laminar and from which it is turbulent. */
    public enum Geometry {
        PIPE(2300, 4000),
        SLOT(2300, 4000),
        HOLE(10, 260);

        private final double laminar;
        private final double turbulent;

        Geometry(double laminar, double turbulent) {
            this.laminar = laminar;
            this.turbulent = turbulent;
        }

        /** Highest Reynolds number of laminar flow. */
        public double laminar() {
            return laminar;
        }
    }

    /** How oil flows. */
    public enum Regime {
        LAMINAR,
        TRANSITIONAL,
        TURBULENT
    }

    public Channel {
        if (!(perimeter > 0)) {
            throw new IllegalArgumentException("wetted perimeter is " + perimeter + " m and must be above zero");
        }
    }

    /** A round passage, or several [m]. */
    public static Channel pipe(double diameter, double count) {
        return new Channel(Geometry.PIPE, Math.PI * diameter * count);
    }

    /** A round hole, or several [m]. */
    public static Channel hole(double diameter, double count) {
        return new Channel(Geometry.HOLE, Math.PI * diameter * count);
    }

    /** A thin gap of a width across the flow [m]. */
    public static Channel slot(double width) {
        return new Channel(Geometry.SLOT, 2 * width);
    }

    /**
     * Reynolds number [-], never negative.
     *
     * @param mass      mass flow, either way [kg/s]
     * @param viscosity dynamic viscosity [Pa·s]
     */
    public double reynolds(double mass, double viscosity) {
        return 4 * Math.abs(mass) / (perimeter * viscosity);
    }

    /** The regime at a Reynolds number. */
    public Regime regime(double reynolds) {
        if (reynolds <= form.laminar) {
            return Regime.LAMINAR;
        }
        return reynolds < form.turbulent ? Regime.TRANSITIONAL : Regime.TURBULENT;
    }

    /**
     * Reynolds number ρ·U·c/μ of a journal's film at which vortices appear: 41.3·√(R/c); G. I. Taylor, Phil. Trans. R. Soc. A
     * 223 (1923) 289 (from memory).
     *
     * @param radius    R [m]
     * @param clearance c, radial [m]
     */
    public static double vortices(double radius, double clearance) {
        return 41.3 * Math.sqrt(radius / clearance);
    }
}

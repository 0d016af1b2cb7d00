package hotidle.law;

/**
 * Side load of a chamber on its drive gear: pressure around the gear and the force of its teeth.
 *
 * <pre>
 * Pressure   that of the outlet from the contact of the teeth back to the angle where they begin to seal, falling in a straight line to
 *            the angle where they open to the inlet. A pressure p on a curve of the gear's outline from A to C pushes with p·b times
 *            the chord, turned by 90°; A is the mean of the points of the tip circle between both angles
 * Teeth      the driven gear is turned by its teeth against the pressure on it, M2 = p·b·(ra2² − ρ2²)/2, ρ2 from its centre to the
 *            contact; N = M2/rb2 along the line of action. The drive gear takes the reaction
 * Contact    runs along the line of action over a base pitch, π·m·cos α, half of it on either side of the pitch point
 * Factor     k = F/(p·b·da)
 * Source     derived here from statics; the torques of both forces add up to the displacement of {@link GearDisplacement#involute}
 * Range      one mesh seals somewhere on the full circle, two opposite ones each on their half: the drive gear carries oil from the
 *            inlet of one chamber to the outlet of the other. Trapped oil and the width of ports are left out
 * </pre>
 *
 * With 26 and 13 teeth of 3 mm, two opposite driven gears and teeth that seal over the middle of their half circle, the mean over a
 * mesh is 0.62; by where they seal it lies between 0.54 and 0.71, and over a mesh and with all that between 0.50 and 0.75. One mesh
 * that seals between 90° and 180° has 0.79, which is what is commonly taken (0.7 to 0.85).
 *
 * @param module  m [m]
 * @param driving teeth of the drive gear
 * @param driven  teeth of the driven gear
 * @param tip1    outside diameter of the drive gear [m]
 * @param tip2    outside diameter of the driven gear [m]
 */
public record GearSideLoad(double module, int driving, int driven, double tip1, double tip2) {

    private static final int STEPS = 200;

    /**
     * Side load over pressure, width and tip diameter [-], over a mesh.
     *
     * @param least    smallest
     * @param mean     size of the mean force, whose direction hardly turns
     * @param greatest largest
     */
    public record Factor(double least, double mean, double greatest) {}

    /**
     * The factor over a mesh.
     *
     * @param sealed angle from the mesh back to where the outlet ends and teeth begin to seal [rad]
     * @param opened angle from the mesh back to where the inlet begins [rad], not below it
     */
    public Factor factor(double sealed, double opened) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = 0;
        double x = 0;
        double y = 0;
        for (int i = 0; i <= STEPS; i++) {
            double[] force = force(sealed, opened, ((double) i / STEPS - 0.5) * basePitch());
            double size = Math.hypot(force[0], force[1]) / tip1;
            least = Math.min(least, size);
            greatest = Math.max(greatest, size);
            x += force[0] / (STEPS + 1);
            y += force[1] / (STEPS + 1);
        }
        return new Factor(least, Math.hypot(x, y) / tip1, greatest);
    }

    /**
     * Torque on the drive gear over pressure and width [m²].
     *
     * @param s of the contact along the line of action, from the pitch point [m]
     */
    public double torque(double s) {
        double rho = Math.hypot(contactX(s), contactY(s));
        return (tip1 * tip1 / 4 - rho * rho) / 2
                + teeth(s) * radius(driving) * Math.cos(GearDisplacement.PRESSURE_ANGLE);
    }

    /** π·m·cos α [m]. */
    public double basePitch() {
        return Math.PI * module * Math.cos(GearDisplacement.PRESSURE_ANGLE);
    }

    /** Force over pressure and width [m]: x from the drive gear's centre to the driven one's, y as the teeth move in the mesh. */
    private double[] force(double sealed, double opened, double s) {
        double x = tip1 / 2 * mean(Math.sin(opened) - Math.sin(sealed), opened - sealed, Math.cos(sealed));
        double y = -tip1 / 2 * mean(Math.cos(sealed) - Math.cos(opened), opened - sealed, Math.sin(sealed));
        double angle = GearDisplacement.PRESSURE_ANGLE;
        return new double[] {y - contactY(s) - teeth(s) * Math.sin(angle), contactX(s) - x - teeth(s) * Math.cos(angle)
        };
    }

    /** Mean of a function over an interval from its integral, or its value where there is no interval. */
    private static double mean(double integral, double interval, double value) {
        return interval > 1e-9 ? integral / interval : value;
    }

    /** Force between the teeth over pressure and width [m]. */
    private double teeth(double s) {
        double rho = Math.hypot(radius(driving) + radius(driven) - contactX(s), contactY(s));
        double arm = radius(driven) * Math.cos(GearDisplacement.PRESSURE_ANGLE);
        return (tip2 * tip2 / 4 - rho * rho) / 2 / arm;
    }

    private double contactX(double s) {
        return radius(driving) + s * Math.sin(GearDisplacement.PRESSURE_ANGLE);
    }

    private double contactY(double s) {
        return s * Math.cos(GearDisplacement.PRESSURE_ANGLE);
    }

    private double radius(int teeth) {
        return module * teeth / 2;
    }
}

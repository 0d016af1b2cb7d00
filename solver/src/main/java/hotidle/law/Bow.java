package hotidle.law;

/**
 * How the height of a gap between two faces rises and falls across the flow, and the mean of its cube, by which it leaks.
 *
 * <pre>
 * Height    h(s) = h + rise·shape(s), s from −1 to 1 across the flow; mean of h³ = h³ + 3·h²·rise·m1 + 3·h·rise²·m2 + rise³·m3,
 *           mk the mean of shape^k
 * ACROSS    1 − s²: a face bowed over its whole width; m = 2/3, 8/15, 16/35
 * BETWEEN   (1 − s²)²: the line of a beam clamped at both ends under an even load, which a face held by a row of bolts is between two
 *           of them, for by symmetry it does not tilt at a bolt; m = 8/15, 128/315, 1024/3003. S. Timoshenko, Strength of Materials,
 *           Part I, beam with built-in ends (from memory); means by integration
 * Example   a feeler of 35 µm midway between bolts and 4 µm at them: as an even gap of 25 µm
 * Range     gaps long against their height; any number of equal spans, since the mean does not depend on the pitch of the bolts
 * </pre>
 */
public enum Bow {
    /** Highest in the middle of the width. */
    ACROSS(2.0 / 3, 8.0 / 15, 16.0 / 35),
    /** Highest midway between each two bolts. */
    BETWEEN(8.0 / 15, 128.0 / 315, 1024.0 / 3003);

    private final double mean;
    private final double meanSquare;
    private final double meanCube;

    Bow(double mean, double meanSquare, double meanCube) {
        this.mean = mean;
        this.meanSquare = meanSquare;
        this.meanCube = meanCube;
    }

    /**
     * Mean of the cube of the height [m³].
     *
     * @param height h where it is least [m]
     * @param rise   height added where it is most [m], 0 or more
     */
    public double cube(double height, double rise) {
        return height * height * height
                + 3 * height * rise * (height * mean + rise * meanSquare)
                + rise * rise * rise * meanCube;
    }

    /** Mean height [m]. */
    public double height(double height, double rise) {
        return height + rise * mean;
    }
}

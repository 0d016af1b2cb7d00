package hotidle.study;

/**
 * A clutch that presses although the range does not apply it.
 *
 * @param duty     at which duty point
 * @param range    the range engaged there
 * @param clutch   its name
 * @param pressure at its piston [Pa]
 * @param yields   pressure at which its return spring yields [Pa], below {@code pressure}
 */
public record DraggingClutch(String duty, String range, String clutch, double pressure, double yields) {

    /** What is to spare until the spring yields, as a share of what is there [-]; below 0. */
    public double headroom() {
        return yields / pressure - 1;
    }
}

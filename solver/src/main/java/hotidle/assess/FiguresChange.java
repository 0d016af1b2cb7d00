package hotidle.assess;

/**
 * The figures of a build against those of the one before it, at the same duty.
 *
 * @param was of the build before
 * @param is  of the build after it
 */
public record FiguresChange(Figures was, Figures is) {

    /** A change smaller than this share is called no change (assumed by us: below it a gauge and the laws say nothing) [-]. */
    private static final double NOTHING = 0.02;

    /** Whether a figure has not changed to speak of; no two figures are the same of which one is not known. */
    public static boolean same(double was, double is) {
        return Math.abs(is - was) <= NOTHING * Math.max(Math.abs(was), Math.abs(is));
    }

    /** Whether more pressure is asked than before, and the pump cannot give it. */
    public boolean noMoreOil() {
        return is.commanded()
                && was.commanded()
                && is.set().getAsDouble() > was.set().getAsDouble() * (1 + NOTHING)
                && !is.regulated()
                && is.line() < was.line() * (1 + NOTHING);
    }
}

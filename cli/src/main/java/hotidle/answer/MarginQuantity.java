package hotidle.answer;

import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;

/** What a margin is counted in. */
public final class MarginQuantity {

    /** A need below this is shown with a digit more, so that its headroom can be read from it: about 0.2 gpm (chosen) [m³/s]. */
    private static final double SMALL_FLOW = 1.25e-5;

    private MarginQuantity() {}

    public static Quantity of(Margin margin) {
        return switch (margin.scale()) {
            case PRESSURE -> Quantity.PRESSURE;
            case FLOW -> margin.needed() < SMALL_FLOW ? Quantity.TRICKLE : Quantity.FLOW;
            case LENGTH -> Quantity.FILM;
            case SHARE -> Quantity.SHARE;
        };
    }
}

package hotidle.answer.format;

import hotidle.assess.Margin;

/** What a margin is counted in. */
public final class MarginQuantity {

    private MarginQuantity() {}

    public static Quantity of(Margin margin) {
        return switch (margin.scale()) {
            case PRESSURE -> Quantity.PRESSURE;
            case FLOW -> margin.trickle() ? Quantity.TRICKLE : Quantity.FLOW;
            case LENGTH -> Quantity.FILM;
            case SHARE -> Quantity.SHARE;
            case TEMPERATURE -> Quantity.TEMPERATURE;
            case TORQUE -> Quantity.TORQUE;
        };
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;

/** What a pump displaces, which a builder knows of his pump. */
public final class DisplacementPhrase {

    private DisplacementPhrase() {}

    /** One chamber [m³/rev]. */
    public static String of(String chamber, double displacement, Quantity.UnitSystem units) {
        return chamber + " displaces " + Quantity.DISPLACEMENT.with(units, displacement);
    }
}

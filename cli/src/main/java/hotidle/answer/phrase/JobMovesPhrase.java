package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;

/**
 * What is said of a job where it can be chosen.
 *
 * @param units of the user
 */
public record JobMovesPhrase(Quantity.UnitSystem units) {

    /** Where one of the two states is not found. */
    public static final String NOT_KNOWN = "No steady state was found, so that nothing is known of what it moves here.";

    /**
     * Of a job that cannot be done so.
     *
     * @param why of what makes it impossible, a sentence without its full stop
     */
    public static String impossible(String why) {
        return "Cannot be done so: " + why + ".";
    }

    /**
     * What a unit does.
     *
     * @param line pressure [Pa]
     * @param lost oil that slips and leaks [m³/s]
     * @param lube oil that the lubrication gets [m³/s]
     */
    public record UnitDoes(double line, double lost, double lube) {}

    /**
     * What a job moves at a driving condition, all else as it is.
     *
     * @param starves whether it takes oil from the lubrication that lives on it
     */
    public String moves(String duty, UnitDoes without, UnitDoes with, boolean starves) {
        String moved = "At " + duty + ": line "
                + from(Quantity.PRESSURE, without.line(), with.line()) + ", oil lost "
                + from(Quantity.TRICKLE, without.lost(), with.lost()) + ".";
        return starves
                ? moved + " NOT ALONE: the lubrication then gets LESS oil, "
                        + from(Quantity.TRICKLE, without.lube(), with.lube()) + "."
                : moved;
    }

    private String from(Quantity quantity, double before, double after) {
        String one = quantity.number(units, before);
        return one.equals(quantity.number(units, after))
                ? "still " + quantity.with(units, after)
                : "from " + one + " to " + quantity.with(units, after);
    }
}

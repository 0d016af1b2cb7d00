package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.heat.Warmed;
import java.util.List;
import java.util.Optional;

/** What is said where units are judged at the temperatures that their own heat brings them to. */
public record OwnHeatPhrase(Quantity.UnitSystem units) {

    /** Above what is judged so. */
    public static final String HERE =
            "Judged at the temperatures that each build's own heat brings it to, not at those of the file.";

    /** The same where set pressures are tried. */
    public static final String RAISED =
            "Each pressure is judged at the temperatures that its own heat brings the unit to, not at those of the file.";

    /** A driving condition of a build without a temperature, and when it reaches which limit [s]. */
    public static String none(String build, String duty, Warmed.WarmingEnd verdict, Optional<Double> seconds) {
        return build + " at " + duty + ": NOT JUDGED, its own heat brings it to no steady temperature ("
                + HeatPhrase.endsAt(verdict, seconds) + ").";
    }

    /** Set pressures that leave some driving conditions without a temperature, and the first that does [Pa]. */
    public String raised(String build, List<String> duties, double first) {
        return build + ": TOO HOT at " + String.join(", ", duties) + ", first seen at "
                + Quantity.PRESSURE.with(units, first)
                + ": its own heat brings it to no steady temperature there, so that nothing is judged and no pressure counts as"
                + " holding.";
    }
}

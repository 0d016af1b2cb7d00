package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;

/** What differs between one build and the one before it. */
public record ChangePhrase(Quantity.UnitSystem units) {

    /** Said where more is asked of a pump that has no more oil. */
    public static final String NO_MORE_OIL =
            "The pump has no more oil to give: a higher set pressure raises nothing here.";

    /** One figure, in SI, that is as good as the same. */
    public String stays(String what, Quantity quantity, double was, double is) {
        boolean alike = quantity.number(units, was).equals(quantity.number(units, is));
        return what + " "
                + (alike
                        ? "stays at " + quantity.with(units, is)
                        : "hardly moves, " + quantity.number(units, was) + " to " + quantity.with(units, is));
    }

    /** One figure, in SI, that is another. */
    public String moves(String what, Quantity quantity, double was, double is) {
        return what + (is > was ? " rises from " : " falls from ") + quantity.number(units, was) + " to "
                + quantity.with(units, is);
    }

    /** All figures that were looked at. */
    public static String against(String before, String duty, List<String> figures) {
        return "Against " + before + ", at " + duty + ": " + String.join("; ", figures) + ".";
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.assess.Doubt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What lies outside the range of the laws, in words. */
public final class DoubtPhrase {

    private DoubtPhrase() {}

    /** One doubt in a sentence without its stop. */
    public static String of(Doubt doubt, Quantity.UnitSystem units) {
        return switch (doubt.why()) {
            case OIL_EXTRAPOLATED ->
                "the oil has " + (doubt.value() < doubt.limit() ? "down to " : "up to ")
                        + Quantity.TEMPERATURE.with(units, doubt.value()) + " ("
                        + doubt.where() + "); its viscosity was measured "
                        + (doubt.value() < doubt.limit() ? "down" : "up")
                        + " to " + Quantity.TEMPERATURE.with(units, doubt.limit()) + " and is extrapolated from there";
            case OIL_TOO_THIN ->
                "the oil of region " + doubt.where() + " has " + Digits.four(doubt.value() * 1e6)
                        + " mm2/s; below " + Digits.four(doubt.limit() * 1e6)
                        + " mm2/s the line through its two viscosities is a few per cent off";
            case GAP_NOT_LAMINAR ->
                "the Reynolds number in " + doubt.where() + " is " + Digits.four(doubt.value())
                        + ", above " + Digits.four(doubt.limit())
                        + ": the law of a gap holds for laminar flow, the true flow is less";
            case PIECES_BIND ->
                "no clearance is left in " + doubt.where() + " at this temperature: the pieces would bind";
            case FILM_NOT_EVEN ->
                "the middle of the film in " + doubt.where() + " would be " + Digits.four(doubt.value())
                        + " K hotter than its walls: its viscosity is not even";
            case FILM_NOT_LAMINAR ->
                "the Reynolds number of the film in " + doubt.where() + " is "
                        + Digits.four(doubt.value()) + ", above " + Digits.four(doubt.limit())
                        + ": vortices, the law of the film holds for laminar flow";
            case OUTLET_NOT_AS_GIVEN ->
                "oil leaves " + doubt.where() + " at "
                        + Quantity.TEMPERATURE.with(units, doubt.value()) + ", but the driving condition gives it "
                        + Quantity.TEMPERATURE.with(units, doubt.limit());
        };
    }

    /**
     * Each doubt once, at its worst, with where it holds.
     *
     * @param doubts doubts by the name of the state that they are about
     */
    public static List<String> summary(Map<String, List<Doubt>> doubts, Quantity.UnitSystem units) {
        Map<String, Doubt> worst = new LinkedHashMap<>();
        Map<String, Set<String>> states = new LinkedHashMap<>();
        doubts.forEach((state, all) -> all.forEach(doubt -> {
            boolean oil = doubt.why() == Doubt.Why.OIL_EXTRAPOLATED;
            String key = doubt.why() + " " + (oil ? doubt.limit() : doubt.where());
            worst.merge(key, doubt, Doubt::worse);
            states.computeIfAbsent(key, name -> new LinkedHashSet<>()).add(state);
        }));
        List<String> lines = new ArrayList<>();
        worst.forEach((key, doubt) -> lines.add(String.join(", ", states.get(key)) + ": " + of(doubt, units) + "."));
        return lines;
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;

/** Words in the picture of torque held against set pressure; pressures in [Pa]. */
public record TorquePicturePhrase(Quantity.UnitSystem units) {

    /** In place of a torque where a state was not found. */
    public static final String MISSING = "not known";

    public static String title(String build) {
        return build + ": engine torque that each link carries in the range that loads it most";
    }

    /** A sentence as a title, which has no full stop. */
    public static String heading(String sentence) {
        return sentence.replaceFirst("[.]$", "");
    }

    public static String subtitle(String circuit) {
        return circuit
                + ": what each link carries in the range that loads it most, hot, at the line pressure that is really there; an estimate";
    }

    public static String across(String unit) {
        return "set pressure [" + unit + "]";
    }

    public static String axis(String unit) {
        return "engine torque [" + unit + "]";
    }

    /** At the set pressure of the build. */
    public String now(double set) {
        return "set now: " + Quantity.PRESSURE.with(units, set);
    }

    /** At the crossing. */
    public String crossing(double pressure, String link) {
        return Quantity.PRESSURE.with(units, pressure) + ": from here " + link + " gives first";
    }

    /** At the highest set pressure at which every limit holds. */
    public String end(double pressure, Margin.Kind kind, String part, String duty) {
        return "above " + Quantity.PRESSURE.with(units, pressure) + " fails: " + LimitPhrase.at(kind, part, duty);
    }

    /** A limit that fails at every pressure tried. */
    public String never(Margin.Kind kind, String part, String duty) {
        return "fails at every one: " + LimitPhrase.at(kind, part, duty);
    }
}

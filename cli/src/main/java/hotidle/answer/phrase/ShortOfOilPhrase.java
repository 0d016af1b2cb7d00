package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;

/** What of converter, cooler and lubrication gets less oil than it needs. */
public final class ShortOfOilPhrase {

    private ShortOfOilPhrase() {}

    /** What a part gets of what it needs, both in SI; only the need with its unit. */
    public static String part(Quantity.UnitSystem units, Quantity quantity, String name, double value, double needed) {
        return name + " " + quantity.number(units, value) + " of " + quantity.with(units, needed);
    }

    /** At a duty, of parts as {@link #part} has them. */
    public static String at(String duty, List<String> parts) {
        return "At " + duty + " too little (is, of needed) for " + String.join(", ", parts) + ".";
    }

    /** The cell of a table: how many, and the one that is worst off. */
    public static String cell(int count, String worst) {
        return switch (count) {
            case 0 -> "none";
            case 1 -> "SHORT: " + worst;
            default -> "SHORT: " + count + " (most: " + worst + ")";
        };
    }

    /**
     * Over which engine speeds [rev/s] something is short; empty without any.
     *
     * @param slowest speed of any driving condition [rev/s]: what is short below it alone is short where the unit is not judged
     */
    public static String speeds(Quantity.UnitSystem units, List<Double> speeds, double slowest) {
        String said = speeds(units, speeds);
        return said.isEmpty() || speeds.get(speeds.size() - 1) >= slowest
                ? said
                : said.substring(0, said.length() - 1) + ", slower than any driving condition (the slowest: "
                        + Quantity.SPEED.with(units, slowest) + ").";
    }

    /** The same where nothing is said of driving conditions. */
    public static String speeds(Quantity.UnitSystem units, List<Double> speeds) {
        String what = "Converter, cooler or lubrication short ";
        return switch (speeds.size()) {
            case 0 -> "";
            case 1 -> what + "at " + Quantity.SPEED.with(units, speeds.get(0)) + ".";
            default ->
                what + "from " + Quantity.SPEED.number(units, speeds.get(0)) + " to "
                        + Quantity.SPEED.with(units, speeds.get(speeds.size() - 1)) + ".";
        };
    }
}

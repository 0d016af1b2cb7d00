package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What gauge readings say of a unit.
 *
 * @param units of the user
 */
public record GaugePhrase(Quantity.UnitSystem units) {

    /** Over the causes. */
    public static final String CAUSES = "What explains them, each fault alone, and how sure that is:";

    /** Where nothing would tell leading causes apart. */
    public static final String NOTHING_NEXT = "No other reading at the taps tells these causes apart.";

    /** Where all fits together were not found. */
    public static final String NO_FITS = "All fits together: no most likely sizes were found.";

    /** Over the sizes that the readings tell of. */
    public static String fits(double chiSquare, int degrees) {
        return String.format(
                Locale.ROOT,
                "All fits together, no other fault: the most likely sizes leave a misfit of %.1f of %d. Nine in ten lie between from"
                        + " and to (to first order), where each fit alone may lie; what was measured is held near its measurement.",
                chiSquare,
                degrees);
    }

    /** By what a size is held, before the readings count. */
    public static String held(boolean measured) {
        return measured ? "its measurement" : "new and limit";
    }

    /** Sizes of which the readings tell nothing. */
    public static String untold(int sizes, int told) {
        if (sizes == 0) {
            return "These readings tell something of every fit.";
        }
        return "These readings tell nothing of " + (told == 0 ? "any of the " : "the other ")
                + CountPhrase.of(sizes, "size") + ".";
    }

    /** Taps of which no reading stands out. */
    public static String sound(List<String> taps) {
        return taps.isEmpty() ? "No tap reads as a sound build does." : "Read sound: " + String.join(", ", taps) + ".";
    }

    /** A tap with how many readings of it there are. */
    public static String tap(String name, int readings) {
        return readings == 1 ? name : name + " (" + readings + " readings)";
    }

    /** What is assumed. */
    public static final String ASSUMED =
            "Allowed for: the gauges; 1 % of engine speed, 2 K of the thermometer at each point and 3 K of thermometer and oil at all;"
                    + " 2 % of spring and pilot pressure; for each size what a shop's gauge or a maker's tolerance leaves open (all"
                    + " assumed). Before the readings every fault counts the same, small ones more than large ones. Shares hold among"
                    + " the faults that 'hotidle list faults' names.";

    /** The verdict, with the statistic it rests on. */
    public static String verdict(
            String build, int readings, String file, boolean agrees, double chiSquare, int degrees, double chance) {
        String test =
                String.format(Locale.ROOT, "chi-square %.1f of %d; by chance %s", chiSquare, degrees, chance(chance));
        return build + ", " + CountPhrase.of(readings, "reading") + " of " + file + ": "
                + (agrees ? "THEY AGREE with a sound build" : "THEY DO NOT AGREE with a sound build") + " (" + test
                + ").";
    }

    private static String chance(double chance) {
        return chance < 0.001
                ? "below 0.1 %"
                : String.format(Locale.ROOT, chance < 0.1 ? "%.1f %%" : "%.0f %%", 100 * chance);
    }

    /** A value of a gauge or a flow meter. */
    public String value(boolean pressure, double si) {
        return (pressure ? Quantity.PRESSURE : Quantity.FLOW).with(units, si);
    }

    /** What and where it was read. */
    public String place(String tap, boolean pressure, double speed, String range, double temperature) {
        return tap + (pressure ? "" : " flow") + " at " + Quantity.SPEED.with(units, speed) + " in " + range + ", "
                + Quantity.TEMPERATURE.with(units, temperature);
    }

    /**
     * A reading beside what a sound unit reads.
     *
     * @param sense empty, below or above
     */
    public String beside(String place, String sense, boolean pressure, double read, double low, double high) {
        return place + ": reads " + (sense.isEmpty() ? "" : sense + " ") + value(pressure, read) + ", a sound build "
                + (pressure ? Quantity.PRESSURE : Quantity.FLOW).number(units, Math.max(low, 0)) + " to "
                + value(pressure, high);
    }

    /** Over the readings that stand out. */
    public static String standsOut(List<String> lines, int more) {
        return lines.isEmpty()
                ? "No single reading stands out."
                : "Stands out: " + String.join("; ", lines) + (more > 0 ? "; and " + more + " more" : "") + ".";
    }

    /** A share of what is believed. */
    public static String share(double share) {
        return share < 0.01 ? "  <1 %" : String.format(Locale.ROOT, " %3.0f %%", 100 * share);
    }

    /** A cause with its size and the misfit that it leaves. */
    public static String cause(String name, String size, double chiSquare) {
        return name + (size.isEmpty() ? "" : ", " + size) + String.format(Locale.ROOT, "; misfit left %.1f", chiSquare);
    }

    /**
     * Causes that these readings cannot tell apart: none with a size, since which of them it is is not known.
     *
     * @param most       that are named
     * @param chiSquare  the misfit that the first leaves
     */
    public static String oneOf(List<String> causes, List<Double> shares, int most, double chiSquare) {
        int shown = Math.min(most, causes.size());
        String named = IntStream.range(0, shown)
                .mapToObj(i -> causes.get(i) + " " + share(shares.get(i)).strip())
                .collect(Collectors.joining(", "));
        int more = causes.size() - shown;
        return String.format(
                Locale.ROOT,
                "one of these %d, which these readings cannot tell apart: %s%s; misfit left %.1f",
                causes.size(),
                named,
                more > 0 ? " and " + more + " more" : "",
                chiSquare);
    }

    /** No fault alone; what the best leaves is told where this leads, and there is one. */
    public static String none(OptionalDouble misfit, boolean leading) {
        return "none of these"
                + (leading && misfit.isPresent()
                        ? String.format(Locale.ROOT, ": the best of them leaves a misfit of %.1f", misfit.getAsDouble())
                        : "");
    }

    /** A pair of faults. */
    public static String pair(String one, String other, double chiSquare) {
        return one + " together with " + other + String.format(Locale.ROOT, "; misfit left %.1f", chiSquare);
    }

    /** Causes that one reading does not tell apart: more than three are counted. */
    public static String anyOf(List<String> causes) {
        int shown = causes.size() > MOST_ALIKE ? MOST_ALIKE - 1 : causes.size();
        return String.join(" or ", causes.subList(0, shown))
                + (shown < causes.size() ? " or one of " + (causes.size() - shown) + " more" : "");
    }

    /** Causes named behind one predicted reading (chosen). */
    private static final int MOST_ALIKE = 3;

    /** The next reading, and what each cause predicts there. */
    public String next(String place, boolean pressure, String command, List<String> causes, List<Double> predicted) {
        StringBuilder text = new StringBuilder("Read next, engine without load: " + place + command + ": ");
        for (int i = 0; i < causes.size(); i++) {
            text.append(i == 0 ? "" : ", ")
                    .append(value(pressure, predicted.get(i)))
                    .append(" if ")
                    .append(causes.get(i));
        }
        return text.append(".").toString();
    }

    /** The command of the next reading, where it is not the usual one. */
    public String commanded(double pressure) {
        return " with " + Quantity.PRESSURE.with(units, pressure) + " commanded";
    }

    /** Readings that tell nothing of leaks. */
    public String onRegulator(int readings, String conditions) {
        String stands = readings == 1 ? "The reading stands" : "All " + readings + " readings stand";
        return stands + " on the regulator: it gives less back where more leaks, so "
                + (readings == 1 ? "it tells" : "they tell")
                + " nothing of leaks unless they are large. To learn of them read the line " + conditions + ".";
    }

    /** What takes the pump to its limit. */
    public String hardest(double speed, OptionalDouble temperature, OptionalDouble commanded) {
        return "at the lowest idle (" + Quantity.SPEED.with(units, speed)
                + " or less), with the oil as hot as it gets"
                + bracketed(Quantity.TEMPERATURE, temperature, " or more") + " and the highest command"
                + bracketed(Quantity.PRESSURE, commanded, "");
    }

    private String bracketed(Quantity quantity, OptionalDouble value, String behind) {
        return value.isPresent() ? " (" + quantity.with(units, value.getAsDouble()) + behind + ")" : "";
    }

    /** Faults that cannot show; where the readings agree with the build, they are why that proves little. */
    public static String hidden(boolean agrees, int invisible, int all) {
        return (agrees && invisible > 0 ? "That is no all-clear: " : "") + invisible + " of " + all
                + " possible faults cannot show in these readings, however large; what others may hide: --full.";
    }
}

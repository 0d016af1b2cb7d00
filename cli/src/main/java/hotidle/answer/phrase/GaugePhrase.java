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

    /**
     * Over the causes.
     *
     * @param nothingFits whether every cause fits poorly
     * @param degrees     readings that count in the misfit
     */
    public static String causes(boolean nothingFits, int degrees) {
        return (nothingFits
                        ? "NOTHING TRIED FITS THEM WELL. How sure each is among causes that all fit poorly, and the misfit left"
                        : "What explains them, how sure that is, and the misfit left")
                + (degrees == 0 ? "" : " (chance leaves about " + degrees + ")") + ":";
    }

    /** Where nothing would tell leading causes apart. */
    public static final String NOTHING_NEXT =
            "No other reading at the taps tells these causes apart: what tells them apart is to measure the parts.";

    /** Where there is but one single fault left. */
    public static final String ONE_LEFT =
            "Of single faults only one is left, which no further reading has to tell from others: look at the part.";

    /** Where no cause fits, so that to tell poor ones apart is of no use. */
    public static final String FIRST_CHECK =
            "No reading is proposed while nothing fits: check the gauge, the readings and the build first (--build, --job, --sheet).";

    /** The misfit of all readings, and what the column of single ones counts. */
    public static String misfit(double chiSquare, int degrees) {
        return String.format(Locale.ROOT, "Misfit of all readings with a sound build: %.1f", chiSquare)
                + "; chance alone leaves about " + degrees
                + " (chi-square). Column off: how far a reading lies from a sound build's, counted in what gauge and tolerances leave"
                + " open; beyond 2.5 it stands out.";
    }

    /** Where all fits together were not found. */
    public static final String NO_FITS = "All fits together: no most likely sizes were found.";

    /** Over the sizes that the readings tell of. */
    public static String fits(double chiSquare, int degrees) {
        return String.format(
                Locale.ROOT,
                "All fits together, no other fault: the most likely sizes leave a misfit of %.1f of %d. Nine in ten lie between from"
                        + " and to (an estimate), where each fit alone may lie; what was measured is held near its measurement.",
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

    /**
     * The verdict, with what it rests on.
     *
     * @param chance   of readings as far off, on a sound unit [-]
     * @param together whether it is that which decides; else one that is written as below or above a value
     */
    public static String verdict(
            String build, int readings, String file, boolean agrees, double chance, boolean together) {
        String rests = together
                ? chance(chance) + " of sound units read as far off"
                : "for one that is below or above what a sound build reads";
        return build + ", " + CountPhrase.of(readings, "reading") + " of " + file + ": "
                + (agrees ? "THEY AGREE with a sound build" : "THEY DO NOT AGREE with a sound build") + " (" + rests
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
        Quantity quantity = pressure ? Quantity.PRESSURE : Quantity.FLOW;
        String unit = " " + quantity.in(units).unit();
        int decimals = quantity.decimals(units, Math.max(low, 0), Math.max(high, 0));
        return place + ": reads " + (sense.isEmpty() ? "" : sense + " ") + quantity.rounded(units, read, decimals)
                + unit + ", a sound build " + sound(pressure, low, high) + unit;
    }

    /** What a sound build reads, which is never below nothing: two ends that read different. */
    public String sound(boolean pressure, double low, double high) {
        Quantity quantity = pressure ? Quantity.PRESSURE : Quantity.FLOW;
        double from = Math.max(low, 0);
        double to = Math.max(high, 0);
        int decimals = quantity.decimals(units, from, to);
        return quantity.rounded(units, from, decimals) + " to " + quantity.rounded(units, to, decimals);
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

    /** The misfit that a cause leaves. */
    public static String left(double chiSquare, boolean poorly) {
        return String.format(Locale.ROOT, "misfit %.1f", chiSquare) + (poorly ? ", FITS POORLY" : "");
    }

    /** A cause with its size and the misfit that it leaves. */
    public static String cause(String name, String size, String left) {
        return name + (size.isEmpty() ? "" : ", " + size) + "; " + left;
    }

    /**
     * Causes that these readings cannot tell apart: none with a size, since which of them it is is not known.
     *
     * @param most that are named
     * @param left the misfit that the first leaves
     */
    public static String oneOf(List<String> causes, List<Double> shares, int most, String left) {
        int shown = Math.min(most, causes.size());
        String named = IntStream.range(0, shown)
                .mapToObj(i -> causes.get(i) + " " + share(shares.get(i)).strip())
                .collect(Collectors.joining(", "));
        int more = causes.size() - shown;
        return "one of these " + causes.size() + ", which these readings cannot tell apart: " + named
                + (more > 0 ? " and " + more + " more" : "") + "; " + left;
    }

    /** No fault alone; what the best leaves is told where this leads, and there is one. */
    public static String none(OptionalDouble misfit, boolean leading) {
        return "none of these, each reading off in a way of its own"
                + (leading && misfit.isPresent()
                        ? String.format(
                                Locale.ROOT, ": the best single fault leaves a misfit of %.1f", misfit.getAsDouble())
                        : "");
    }

    /** What is left to causes that are not named. */
    public static final String REST = "other faults and pairs of faults that are not named here";

    /** A pair of faults. */
    public static String pair(String one, String other, String left) {
        return one + " together with " + other + "; " + left;
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

    /**
     * Readings that tell nothing of leaks.
     *
     * @param conditions under which the line would tell of them; empty where it was read under them already
     */
    public String onRegulator(int readings, String conditions) {
        String stands = readings == 1 ? "The reading stands" : "All " + readings + " readings stand";
        return stands + " on the regulator: it gives less back where more leaks, so "
                + (readings == 1 ? "it tells" : "they tell")
                + " nothing of leaks unless they are large."
                + (conditions.isEmpty()
                        ? " The line was read where it asks most of the pump, so no gauge here tells more of them."
                        : " To learn of them read the line " + conditions + ".");
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

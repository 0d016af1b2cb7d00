package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Quantity.UnitSystem;
import hotidle.heat.HeatItem;
import hotidle.heat.Warmed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What is said of heat. */
public final class HeatPhrase {

    /** Above the table of temperatures. */
    public static final String SETTLES = "Sump / oil from the converter, where each driving condition ends";

    /** Above a table of heat by source and sink. */
    public static final String FROM_AND_TO = "Where heat comes from and goes; what leaves the oil is negative";

    /** Beneath it all. */
    public static final String CAUTION =
            "An estimate. Hot oil burns skin: follow the unit maker's procedure, never hold a stall to find out.";

    /** Where a limit is named in the table of temperatures. */
    public static final String LIMIT =
            "Where a limit is named no steady temperature lies below it. The time counts from cold, or from the driving condition that"
                    + " it follows; nothing is judged there.";

    /** Why the heat of one driving condition is shown. */
    public static String most(String duty, String build) {
        return "Of the driving conditions that last, " + duty + " makes most heat in " + build
                + "; it comes from (and goes):";
    }

    /** Above the heat of a driving condition. */
    public static String at(UnitSystem units, String duty) {
        return duty + ", " + Quantity.HEAT.in(units).unit();
    }

    /**
     * Before all else: how hot a build gets where it settles or a driving condition ends.
     *
     * @param sump        hottest [K]
     * @param atSump      driving condition of that
     * @param converter   hottest oil from the converter [K]; empty without one
     * @param atConverter driving condition of that
     * @param endless     driving conditions at which a limit of the oil is reached or nothing is known
     */
    public static String hottest(
            UnitSystem units,
            String build,
            double sump,
            String atSump,
            OptionalDouble converter,
            String atConverter,
            List<String> endless) {
        String from = converter.stream()
                .mapToObj(one -> ", converter out " + Quantity.TEMPERATURE.with(units, one) + " (" + atConverter + ")")
                .findFirst()
                .orElse("");
        return build + ": hottest sump " + Quantity.TEMPERATURE.with(units, sump) + " (" + atSump + ")" + from
                + (endless.isEmpty() ? "." : "; BUT NO TEMPERATURE at " + String.join(", ", endless) + ".");
    }

    /** Where a build comes to no temperature at all. */
    public static String nowhere(String build) {
        return build + ": NO TEMPERATURE at any driving condition.";
    }

    /** Sources and sinks of one sort taken together. */
    public enum Sum {
        OIL("pump, oil on its way, film"),
        CONVERTER("converter"),
        TURNING("gears, packs, churning"),
        COOLER("to the cooler"),
        AIR("to the air");

        private final String words;

        Sum(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** The sum that a source or sink belongs to. */
        public static Sum of(HeatItem.Kind kind) {
            return switch (kind) {
                case PUMP, THROTTLING, FILM -> OIL;
                case CONVERTER, LOCKUP_SLIP -> CONVERTER;
                case OPEN_PACKS, MESHES, CHURNING -> TURNING;
                case COOLER -> COOLER;
                case CASE, HOUSING -> AIR;
            };
        }
    }

    private HeatPhrase() {}

    /** A source or sink. */
    public static String named(HeatItem.Kind kind) {
        return switch (kind) {
            case PUMP -> "pump drag and slip";
            case THROTTLING -> "oil on its way";
            case FILM -> "hub film";
            case CONVERTER -> "converter";
            case LOCKUP_SLIP -> "lockup slip";
            case OPEN_PACKS -> "open packs";
            case MESHES -> "gears and bearings";
            case CHURNING -> "churning";
            case COOLER -> "to the cooler";
            case CASE -> "to the air, case";
            case HOUSING -> "to the air, converter";
        };
    }

    /** How a driving condition ends: both temperatures [K], or what ends it. */
    public static String ends(UnitSystem units, double sump, OptionalDouble converter) {
        String unit = Quantity.TEMPERATURE.in(units).unit();
        return Quantity.TEMPERATURE.number(units, sump)
                + converter.stream()
                        .mapToObj(one -> " / " + Quantity.TEMPERATURE.number(units, one))
                        .findFirst()
                        .orElse("")
                + " " + unit;
    }

    /** Above how long each driving condition is held. */
    public static final String HELD = "lasts";

    /** Held until nothing warms or cools any more. */
    public static final String UNTIL_SETTLED = "until it settles";

    /** Held for a time [s] after another driving condition. */
    public static String heldFor(double seconds, String after) {
        return time(seconds) + " after " + after;
    }

    /**
     * Why a driving condition that is soon over ends cool although it makes more heat than any that lasts.
     *
     * @param most    of those that last, and what it makes [W]
     * @param seconds for which it is held
     */
    public static String soonOver(
            UnitSystem units, String build, String duty, double heat, double seconds, String most, double lasting) {
        return duty + " makes " + Quantity.HEAT.with(units, heat) + " in " + build + ", "
                + String.format(Locale.ROOT, "%.0f", heat / lasting) + " times what " + most
                + " makes, but only for " + time(seconds) + ": so it ends cooler.";
    }

    /** With which sump temperature [K] all other screens judge a driving condition. */
    public static String elsewhere(UnitSystem units, String duty, double sump) {
        return "Other screens take " + duty + " at " + Quantity.TEMPERATURE.with(units, sump)
                + " as the file has it; --temperature balance takes these.";
    }

    /** The same in a few words where no temperature is known. */
    public static String endsAt(Warmed.WarmingEnd verdict, Optional<Double> seconds) {
        return switch (verdict) {
            case SUMP_RUNS_AWAY -> "oil limit in " + time(seconds.orElseThrow());
            case CONVERTER_RUNS_AWAY -> "converter limit in " + time(seconds.orElseThrow());
            case START_NOT_KNOWN -> "start not known";
            case NOT_SOLVED -> "not solved";
            case SETTLED, SEVERAL -> throw new IllegalArgumentException(verdict + " has a temperature");
        };
    }

    /** Further temperatures at which a driving condition would settle [K]. */
    public static String several(UnitSystem units, String build, String duty, double cold, List<Double> others) {
        List<String> hotter = others.stream()
                .map(one -> Quantity.TEMPERATURE.with(units, one))
                .toList();
        return build + " at " + duty + " settles at " + Quantity.TEMPERATURE.with(units, cold)
                + " from cold; come hotter, it would stay at " + String.join(" or ", hotter) + ".";
    }

    /**
     * What a build's heat costs against another's.
     *
     * @param sump      as {@link #hotter} says it
     * @param converter likewise; empty without one
     * @param line      pressure gained by that [Pa]
     * @param lube      flow gained [m³/s]
     * @param film      film gained [m]
     */
    public static String cost(
            UnitSystem units,
            String build,
            String against,
            String duty,
            String sump,
            Optional<String> converter,
            double line,
            double lube,
            OptionalDouble film) {
        List<String> takes = new ArrayList<>();
        takes.add("line pressure by " + signed(Quantity.PRESSURE, units, line));
        takes.add("lubrication by " + signed(Quantity.TRICKLE, units, lube));
        film.ifPresent(value -> takes.add("hub film by " + signed(Quantity.FILM, units, value)));
        String warmer =
                converter.map(one -> " and " + one + " from the converter").orElse("");
        return duty + ": " + build + " differs from " + against + " by " + sump + " in the sump" + warmer + ". Against "
                + build + " at the temperatures of " + against + " that alone changes " + String.join(", ", takes)
                + ".";
    }

    /** How much hotter one temperature is than another [K], both as the table shows them. */
    public static String hotter(UnitSystem units, double one, double than) {
        return Quantity.TEMPERATURE.more(units, one, than) + " "
                + Quantity.RISE.in(units).unit();
    }

    private static String signed(Quantity quantity, UnitSystem units, double value) {
        boolean more = Double.parseDouble(quantity.number(units, value)) > 0;
        return (more ? "+" : "") + quantity.with(units, value);
    }

    /** A time. */
    public static String time(double seconds) {
        return seconds < 90
                ? String.format(Locale.ROOT, "%.0f s", seconds)
                : String.format(Locale.ROOT, seconds < 600 ? "%.1f min" : "%.0f min", seconds / 60);
    }
}

package hotidle.answer.format;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What a printed number is, and how each system of units shows it. SI keeps every digit; tables round to what the model can know.
 */
public enum Quantity {
    PRESSURE(Dimension.PRESSURE, "psi", 0, "bar", 2, "Pa", 0),
    FLOW(Dimension.FLOW, "gpm", 2, "L/min", 1, "m3/s", 7),
    TRICKLE(Dimension.FLOW, "gpm", 3, "L/min", 2, "m3/s", 8),
    SEEPAGE(Dimension.FLOW, "gpm", 4, "mL/min", 0, "m3/s", 10),
    FILM(Dimension.LENGTH, "thou", 3, "um", 1, "m", 8),
    TRAVEL(Dimension.LENGTH, "in", 4, "mm", 2, "m", 6),
    SIZE(Dimension.LENGTH, "in", 4, "mm", 3, "m", 7),
    /** A bore or a clearance among others, fine enough that a bore and its limit never look the same. */
    FIT(Dimension.LENGTH, "in", 5, "mm", 4, "m", 7),
    /** Of a piston, which a calliper measures. */
    PISTON_AREA(Dimension.AREA, "in2", 2, "cm2", 1, "m2", 6),
    AREA(Dimension.AREA, "in2", 5, "mm2", 2, "m2", 9),
    FORCE(Dimension.FORCE, "lbf", 0, "N", 0, "N", 0),
    SPRING_FORCE(Dimension.FORCE, "lbf", 1, "N", 0, "N", 2),
    SPRING_RATE(Dimension.SPRING_RATE, "lbf/in", 1, "N/mm", 2, "N/m", 0),
    POWER(Dimension.POWER, "hp", 2, "kW", 2, "W", 0),
    TORQUE(Dimension.TORQUE, "lbf.ft", 0, "N.m", 0, "N.m", 0),
    DISPLACEMENT(Dimension.DISPLACEMENT, "in3/rev", 3, "cm3/rev", 2, "m3/rev", 9),
    /** Of a whole: SI shows the bare number. */
    SHARE(new Shown("%", 100, 0, 1), new Shown("%", 100, 0, 1), new Shown("1", 1, 0, 5)),
    SPEED(Dimension.SPEED, "rpm", 0, "rpm", 0, "rpm", 0),
    HEAT(Dimension.POWER, "Btu/min", 0, "kW", 2, "W", 0),
    /** A difference of temperatures, which has no offset. */
    RISE(
            of(Dimension.TEMPERATURE, "degF", 0).withoutOffset(),
            of(Dimension.TEMPERATURE, "K", 0),
            of(Dimension.TEMPERATURE, "K", 1)),
    TEMPERATURE(Dimension.TEMPERATURE, "degF", 0, "degC", 0, "degC", 0);

    /** In the place of a value that is not there. */
    private static final String NONE = "-";

    private final Shown shop;
    private final Shown metric;
    private final Shown si;

    Quantity(Dimension dimension, String shop, int s, String metric, int m, String si, int i) {
        this(of(dimension, shop, s), of(dimension, metric, m), of(dimension, si, i));
    }

    Quantity(Shown shop, Shown metric, Shown si) {
        this.shop = shop;
        this.metric = metric;
        this.si = si;
    }

    /** How a system shows it: SI value times factor plus offset, rounded to decimals. */
    public record Shown(String unit, double factor, double offset, int decimals) {
        private Shown withoutOffset() {
            return new Shown(unit, factor, 0, decimals);
        }
    }

    /** As the table of units has it, by which files are read too. */
    private static Shown of(Dimension dimension, String unit, int decimals) {
        double zero = Units.parse("0 " + unit, dimension);
        double factor = 1 / (Units.parse("1 " + unit, dimension) - zero);
        return new Shown(unit, factor, zero == 0 ? 0 : -zero * factor, decimals);
    }

    /** A system of units. */
    public enum UnitSystem {
        SHOP,
        METRIC,
        SI
    }

    public Shown in(UnitSystem system) {
        return switch (system) {
            case SHOP -> shop;
            case METRIC -> metric;
            case SI -> si;
        };
    }

    /** The value in a system's unit. */
    public double value(UnitSystem system, double siValue) {
        Shown shown = in(system);
        return siValue * shown.factor() + shown.offset();
    }

    /** The value rounded, without its unit; a dash where there is none. */
    public String number(UnitSystem system, double siValue) {
        if (Double.isNaN(siValue)) {
            return NONE;
        }
        return rounded(system, siValue, in(system).decimals());
    }

    /** The same of a value that may be absent. */
    public String number(UnitSystem system, OptionalDouble siValue) {
        return siValue.isPresent() ? number(system, siValue.getAsDouble()) : NONE;
    }

    /** The decimals that a range takes so that its two ends read different: those of the table, and up to three more. */
    public int decimals(UnitSystem system, double low, double high) {
        int own = in(system).decimals();
        int most = low == high ? own : own + MORE;
        int decimals = own;
        while (decimals < most && rounded(system, low, decimals).equals(rounded(system, high, decimals))) {
            decimals++;
        }
        return decimals;
    }

    private static final int MORE = 3;

    /** The value with so many decimals, without its unit. */
    public String rounded(UnitSystem system, double siValue, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value(system, siValue));
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** A value that falls short of another one, with its unit: with a decimal more where both would read the same. */
    public String shortOf(UnitSystem system, double siValue, double wanted) {
        return beside(system, siValue, siValue, wanted);
    }

    /** The other one, so that it is seen to be more. */
    public String fallenShortOf(UnitSystem system, double siValue, double wanted) {
        return beside(system, wanted, siValue, wanted);
    }

    private String beside(UnitSystem system, double told, double less, double more) {
        Shown shown = in(system);
        boolean alike = less < more && number(system, less).equals(number(system, more));
        return alike
                ? String.format(Locale.ROOT, "%." + (shown.decimals() + 1) + "f", value(system, told)) + " "
                        + shown.unit()
                : with(system, told);
    }

    /**
     * What one value is more than another as a reader finds it who subtracts the two rounded numbers, with its sign and without its unit.
     */
    public String more(UnitSystem system, double siValue, double than) {
        BigDecimal more = new BigDecimal(number(system, siValue)).subtract(new BigDecimal(number(system, than)));
        return (more.signum() > 0 ? "+" : "") + more.toPlainString();
    }

    /** The value rounded, with its unit. */
    public String with(UnitSystem system, double siValue) {
        return number(system, siValue) + " " + in(system).unit();
    }
}

package hotidle.answer.format;

import java.util.Locale;

/**
 * What a printed number is, and how each system of units shows it. SI keeps every digit; tables round to what the model can know.
 */
public enum Quantity {
    PRESSURE(new Shown("psi", 1 / 6894.757293168, 0, 0), new Shown("bar", 1e-5, 0, 2), new Shown("Pa", 1, 0, 0)),
    FLOW(new Shown("gpm", 60 / 3.785411784e-3, 0, 2), new Shown("L/min", 6e4, 0, 1), new Shown("m3/s", 1, 0, 7)),
    TRICKLE(new Shown("gpm", 60 / 3.785411784e-3, 0, 3), new Shown("L/min", 6e4, 0, 2), new Shown("m3/s", 1, 0, 8)),
    SEEPAGE(new Shown("gpm", 60 / 3.785411784e-3, 0, 4), new Shown("mL/min", 6e7, 0, 0), new Shown("m3/s", 1, 0, 10)),
    FILM(new Shown("thou", 1 / 25.4e-6, 0, 3), new Shown("um", 1e6, 0, 1), new Shown("m", 1, 0, 8)),
    TRAVEL(new Shown("in", 1 / 0.0254, 0, 4), new Shown("mm", 1e3, 0, 2), new Shown("m", 1, 0, 6)),
    SIZE(new Shown("in", 1 / 0.0254, 0, 4), new Shown("mm", 1e3, 0, 3), new Shown("m", 1, 0, 7)),
    AREA(new Shown("in2", 1 / 0.00064516, 0, 5), new Shown("mm2", 1e6, 0, 2), new Shown("m2", 1, 0, 9)),
    FORCE(new Shown("lbf", 1 / 4.4482216152605, 0, 0), new Shown("N", 1, 0, 0), new Shown("N", 1, 0, 0)),
    SPRING_FORCE(new Shown("lbf", 1 / 4.4482216152605, 0, 1), new Shown("N", 1, 0, 0), new Shown("N", 1, 0, 2)),
    SPRING_RATE(
            new Shown("lbf/in", 0.0254 / 4.4482216152605, 0, 1),
            new Shown("N/mm", 1e-3, 0, 2),
            new Shown("N/m", 1, 0, 0)),
    POWER(new Shown("hp", 1 / 745.69987158227, 0, 2), new Shown("kW", 1e-3, 0, 2), new Shown("W", 1, 0, 0)),
    TORQUE(new Shown("lbf.ft", 1 / 1.3558179483314, 0, 0), new Shown("N.m", 1, 0, 0), new Shown("N.m", 1, 0, 0)),
    DISPLACEMENT(
            new Shown("in3/rev", 1 / 16.387064e-6, 0, 3),
            new Shown("cm3/rev", 1e6, 0, 2),
            new Shown("m3/rev", 1, 0, 9)),
    SHARE(new Shown("%", 100, 0, 1), new Shown("%", 100, 0, 1), new Shown("1", 1, 0, 5)),
    SPEED(new Shown("rpm", 60, 0, 0), new Shown("rpm", 60, 0, 0), new Shown("rpm", 60, 0, 0)),
    HEAT(new Shown("Btu/min", 60 / 1055.05585262, 0, 0), new Shown("kW", 1e-3, 0, 2), new Shown("W", 1, 0, 0)),
    RISE(new Shown("degF", 1.8, 0, 0), new Shown("K", 1, 0, 0), new Shown("K", 1, 0, 1)),
    TEMPERATURE(new Shown("degF", 1.8, -459.67, 0), new Shown("degC", 1, -273.15, 0), new Shown("degC", 1, -273.15, 0));

    private final Shown shop;
    private final Shown metric;
    private final Shown si;

    Quantity(Shown shop, Shown metric, Shown si) {
        this.shop = shop;
        this.metric = metric;
        this.si = si;
    }

    /** How a system shows it: SI value times factor plus offset, rounded to decimals. */
    public record Shown(String unit, double factor, double offset, int decimals) {}

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
            return "-";
        }
        String text = String.format(Locale.ROOT, "%." + in(system).decimals() + "f", value(system, siValue));
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** The value rounded, with its unit. */
    public String with(UnitSystem system, double siValue) {
        return number(system, siValue) + " " + in(system).unit();
    }
}

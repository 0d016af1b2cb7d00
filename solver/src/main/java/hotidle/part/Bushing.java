package hotidle.part;

import hotidle.film.JournalFilm;
import hotidle.film.LeastFilm;
import hotidle.law.Channel;
import hotidle.law.Slot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A plain bushing that carries the hub: a finite journal bearing, and a leak along it from the space behind the gear.
 *
 * <pre>
 * Load       vector sum of k·b·da·Δp of each chamber at its angle and of the weight
 * Film       W = μ·n·L·D·(R/c)²·Λ(ε), Λ = 1/S from the Reynolds equation, {@link JournalFilm}; state ε with the balance
 *            ln((1 + Λ(ε))/(1 + Λ*)), Λ* that of the load: the logarithm keeps Newton's steps in bounds. At the upper stop the
 *            film is no longer known: metal contact.
 * Leak       annular gap of eccentricity ε from behind to drain, {@link Slot}
 * Friction   μ·n·L·D·(R/c)·drag(ε)·surface speed, from the same table
 * Heat       what friction makes is carried off by side flow and end leak at the film's temperature: ρ·cp·(Qs + leak)·rise = power,
 *            steady-flow energy balance of the film. Walls take no heat, which makes the film hotter and thinner than it is. Where
 *            the film is heated so, the rise over its region's oil is a state of its own; else the region gives the film's
 *            temperature and the rise is only reported
 * Thinning   a polymer-thickened oil is thinner where it is sheared, {@link hotidle.oil.ShearThinning}: what carries the load by
 *            the rate in the narrowest place, U/(c·(1 − ε)), so that no load is promised too high; what is dragged by the mean
 *            rate, U/(c·√(1 − ε²)). What leaks along it passes on the wide side and is taken as at rest. One viscosity for all
 *            of a film, and these two rates for it, are ours
 * Edge       a tilted hub comes nearer to its bore at one end, {@link LeastFilm}; the balance is that of parallel axes
 * Core       μ·U²/(8·k), how much hotter the middle of the film is than its walls; Y. A. Çengel, Heat and Mass Transfer, Ex. 6-1
 * </pre>
 *
 * @param fit             bore and hub, diametral
 * @param length          L [m]
 * @param loads           side load of each chamber
 * @param weight          share of the converter's weight [N]
 * @param weightAngle     its direction [rad], counted as the chambers' angles are
 * @param permissibleFilm least film that the roughness of both surfaces allows [m]
 * @param permissibleLoad unit load W/(L·D) that the bushing's material allows [Pa]
 * @param tilt            of the hub against its bore [rad], 0 or more
 * @param heated          whether its own friction heats the film over its region's oil
 */
public record Bushing(
        Fit fit,
        double length,
        List<SideLoad> loads,
        double weight,
        double weightAngle,
        double permissibleFilm,
        double permissibleLoad,
        double tilt,
        boolean heated)
        implements Part {

    /** Of the shaft in its bore, over the radial clearance. */
    public static final Measure ECCENTRICITY = new Measure(
            "eccentricity", Measure.QuantityKind.NUMBER, "of the shaft in its bore, over the radial clearance");

    /** That the film carries. */
    public static final Measure LOAD = new Measure("load_n", Measure.QuantityKind.FORCE, "that the film carries");

    /** Where the load points. */
    public static final Measure LOAD_ANGLE =
            new Measure("load_angle_rad", Measure.QuantityKind.ANGLE, "where the load points");

    /** Load over length and diameter. */
    public static final Measure UNIT_LOAD =
            new Measure("unit_load_pa", Measure.QuantityKind.PRESSURE, "load over length and diameter");

    /** Unit load that the material bears. */
    public static final Measure PERMISSIBLE_LOAD =
            new Measure("permissible_load_pa", Measure.QuantityKind.PRESSURE, "unit load that the material bears");

    /** At temperature. */
    public static final Measure RADIAL_CLEARANCE =
            new Measure("radial_clearance_m", Measure.QuantityKind.LENGTH, "at temperature");

    /** Least film allowed. */
    public static final Measure PERMISSIBLE_FILM =
            new Measure("permissible_film_m", Measure.QuantityKind.LENGTH, "least film allowed");

    /** Least film by Trumpler's rule, for comparison. */
    public static final Measure TRUMPLER_FILM = new Measure(
            "trumpler_film_m", Measure.QuantityKind.LENGTH, "least film by Trumpler's rule, for comparison");

    /** 1 where shaft and bore touch, else 0. */
    public static final Measure METAL_CONTACT =
            new Measure("metal_contact", Measure.QuantityKind.NUMBER, "1 where shaft and bore touch, else 0");

    /** In the middle of the length; not given where metal touches. */
    public static final Measure LEAST_FILM = new Measure(
            "least_film_m", Measure.QuantityKind.LENGTH, "in the middle of the length, not given where metal touches");

    /** Least film at the edge to which the hub leans; {@link LeastFilm}, nil where the edge touches. */
    public static final Measure EDGE_FILM = new Measure(
            "edge_film_m",
            Measure.QuantityKind.LENGTH,
            "least film at the edge to which the hub leans, not given where metal touches");

    /** Highest in the film. */
    public static final Measure PEAK_PRESSURE =
            new Measure("peak_pressure_pa", Measure.QuantityKind.PRESSURE, "highest in the film");

    /** Sommerfeld number, infinite without a load. */
    public static final Measure SOMMERFELD =
            new Measure("sommerfeld", Measure.QuantityKind.NUMBER, "Sommerfeld number, infinite without a load");

    /** From the load to the line of centres. */
    public static final Measure ATTITUDE =
            new Measure("attitude_rad", Measure.QuantityKind.ANGLE, "from the load to the line of centres");

    /** Of the oil's viscosity at rest, where the film is narrowest; {@link hotidle.oil.ShearThinning}. */
    public static final Measure VISCOSITY_LEFT = new Measure(
            "viscosity_left",
            Measure.QuantityKind.NUMBER,
            "of the oil's viscosity at rest, where the film is narrowest");

    /** That the film turns out at its ends. */
    public static final Measure SIDE_FLOW =
            new Measure("side_flow_m3_s", Measure.QuantityKind.FLOW, "that the film turns out at its ends");

    /** That shearing the film takes. */
    public static final Measure FRICTION_POWER =
            new Measure("friction_power_w", Measure.QuantityKind.POWER, "that shearing the film takes");

    /** Of the film over the oil that feeds it. */
    public static final Measure FILM_RISE =
            new Measure("film_rise_k", Measure.QuantityKind.TEMPERATURE, "of the film over the oil that feeds it");

    /** Of the oil through the bushing that pressure drives. */
    public static final Measure END_LEAK_SHARE = new Measure(
            "end_leak_share", Measure.QuantityKind.NUMBER, "of the oil through the bushing that pressure drives");

    /** Of the middle of the film over its walls. */
    public static final Measure FILM_CORE_RISE = new Measure(
            "film_core_rise_k", Measure.QuantityKind.TEMPERATURE, "of the middle of the film over its walls");

    @Override
    public List<Measure> measures() {
        return List.of(
                ECCENTRICITY,
                LOAD,
                LOAD_ANGLE,
                UNIT_LOAD,
                PERMISSIBLE_LOAD,
                RADIAL_CLEARANCE,
                PERMISSIBLE_FILM,
                TRUMPLER_FILM,
                METAL_CONTACT,
                LEAST_FILM,
                EDGE_FILM,
                PEAK_PRESSURE,
                SOMMERFELD,
                ATTITUDE,
                SIDE_FLOW,
                FRICTION_POWER,
                FILM_RISE,
                END_LEAK_SHARE,
                VISCOSITY_LEFT,
                FILM_CORE_RISE);
    }

    /** Shortest bushing whose film is known, length over diameter. */
    public static final double SHORTEST = JournalFilm.SHORTEST;

    /** Longest bushing whose film is known, length over diameter. */
    public static final double LONGEST = JournalFilm.LONGEST;

    /** Largest eccentricity of the film's table; beyond it metal touches. */
    public static final double CONTACT = 0.995;

    /**
     * What service manuals let the bore of a hub bushing wear beyond its largest new size [m]: two units, 38.14 to 38.19 mm and
     * 43.138 to 43.188 mm (service limits, found). It guards alignment, seal and feed too, which no film tells of.
     */
    public static final double WEAR_ALLOWANCE = 0.05e-3;

    /** How far the shaft lies off centre, over the radial clearance [-]. */
    public static final OwnState OFF_CENTRE = new OwnState("eccentricity");

    /** How much hotter the film is than the oil that feeds it [K]. */
    public static final OwnState FILM_HEATING = new OwnState("film-rise");

    /**
     * Eccentricity: a film carries as (1 − ε)^-2 near the wall, so that the balance grows as 2·ln of the way to 1, which the steps of a
     * solve go along; its usual slope 2/(1 − ε) is that of nine tenths.
     */
    private static final Form.Unknown PLACE = new Form.Unknown(OFF_CENTRE, 0, CONTACT, 0.7, 20, 1).towards(1);

    /** Rise of the film's temperature [K]: some W/K carry off some tens of watts. */
    private static final Form.Unknown RISE = new Form.Unknown(FILM_HEATING, 0, 300, 0, 2, 10);

    /**
     * Side load of a chamber.
     *
     * @param area  k·b·da [m²]: share of the projected gear that the pressure loads
     * @param angle direction of the force on the hub [rad]
     */
    public record SideLoad(double area, double angle) {
        public SideLoad {
            Check.positive("loaded area", area);
        }
    }

    /**
     * How much hotter the middle of a film is than its walls, both equally warm [K]: μ·U²/(8·k).
     *
     * @param viscosity    [Pa·s]
     * @param surface      speed of the moving wall [m/s]
     * @param conductivity [W/(m·K)]
     */
    public static double coreRise(double viscosity, double surface, double conductivity) {
        return viscosity * surface * surface / (8 * conductivity);
    }

    public Bushing {
        loads = List.copyOf(loads);
        Check.positive("bushing length", length);
        Check.within("bushing length over hub diameter", length / fit.inner(), SHORTEST, LONGEST);
        Check.notNegative("weight", weight);
        Check.notNegative("permissible film", permissibleFilm);
        Check.positive("permissible load", permissibleLoad);
        Check.notNegative("tilt", tilt);
    }

    @Override
    public Map<String, Channel> channels() {
        return Map.of("", Channel.slot(Math.PI * fit.inner()));
    }

    @Override
    public Map<String, Fit> fits() {
        return Map.of("diametral clearance", fit);
    }

    @Override
    public Form form() {
        List<String> signals = new ArrayList<>();
        for (int i = 1; i <= loads.size(); i++) {
            signals.add("outlet-" + i);
            signals.add("inlet-" + i);
        }
        return new Form(List.of("behind", "drain"), List.of(PLACE, heated ? RISE : RISE.heldAt(0)), signals);
    }

    @Override
    public Law law(Setting setting) {
        return new Journal(this, setting);
    }
}

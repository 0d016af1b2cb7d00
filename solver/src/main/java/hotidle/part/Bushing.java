package hotidle.part;

import hotidle.film.JournalFilm;
import hotidle.law.Channel;
import hotidle.law.Flow;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
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
        boolean heated)
        implements Part {

    /** Of the shaft in its bore, over the radial clearance. */
    public static final Measure ECCENTRICITY = new Measure(
            "eccentricity", Measure.Dimension.NUMBER, "of the shaft in its bore, over the radial clearance");

    /** That the film carries. */
    public static final Measure LOAD = new Measure("load_n", Measure.Dimension.FORCE, "that the film carries");

    /** Where the load points. */
    public static final Measure LOAD_ANGLE =
            new Measure("load_angle_rad", Measure.Dimension.ANGLE, "where the load points");

    /** Load over length and diameter. */
    public static final Measure UNIT_LOAD =
            new Measure("unit_load_pa", Measure.Dimension.PRESSURE, "load over length and diameter");

    /** Unit load that the material bears. */
    public static final Measure PERMISSIBLE_LOAD =
            new Measure("permissible_load_pa", Measure.Dimension.PRESSURE, "unit load that the material bears");

    /** At temperature. */
    public static final Measure RADIAL_CLEARANCE =
            new Measure("radial_clearance_m", Measure.Dimension.LENGTH, "at temperature");

    /** Least film allowed. */
    public static final Measure PERMISSIBLE_FILM =
            new Measure("permissible_film_m", Measure.Dimension.LENGTH, "least film allowed");

    /** Least film by Trumpler's rule, for comparison. */
    public static final Measure TRUMPLER_FILM =
            new Measure("trumpler_film_m", Measure.Dimension.LENGTH, "least film by Trumpler's rule, for comparison");

    /** 1 where shaft and bore touch, else 0. */
    public static final Measure METAL_CONTACT =
            new Measure("metal_contact", Measure.Dimension.NUMBER, "1 where shaft and bore touch, else 0");

    /** Not given where metal touches. */
    public static final Measure LEAST_FILM =
            new Measure("least_film_m", Measure.Dimension.LENGTH, "not given where metal touches");

    /** Highest in the film. */
    public static final Measure PEAK_PRESSURE =
            new Measure("peak_pressure_pa", Measure.Dimension.PRESSURE, "highest in the film");

    /** Sommerfeld number, infinite without a load. */
    public static final Measure SOMMERFELD =
            new Measure("sommerfeld", Measure.Dimension.NUMBER, "Sommerfeld number, infinite without a load");

    /** From the load to the line of centres. */
    public static final Measure ATTITUDE =
            new Measure("attitude_rad", Measure.Dimension.ANGLE, "from the load to the line of centres");

    /** That the film turns out at its ends. */
    public static final Measure SIDE_FLOW =
            new Measure("side_flow_m3_s", Measure.Dimension.FLOW, "that the film turns out at its ends");

    /** That shearing the film takes. */
    public static final Measure FRICTION_POWER =
            new Measure("friction_power_w", Measure.Dimension.POWER, "that shearing the film takes");

    /** Of the film over the oil that feeds it. */
    public static final Measure FILM_RISE =
            new Measure("film_rise_k", Measure.Dimension.TEMPERATURE, "of the film over the oil that feeds it");

    /** Of the oil through the bushing that pressure drives. */
    public static final Measure END_LEAK_SHARE = new Measure(
            "end_leak_share", Measure.Dimension.NUMBER, "of the oil through the bushing that pressure drives");

    /** Of the middle of the film over its walls. */
    public static final Measure FILM_CORE_RISE =
            new Measure("film_core_rise_k", Measure.Dimension.TEMPERATURE, "of the middle of the film over its walls");

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
                PEAK_PRESSURE,
                SOMMERFELD,
                ATTITUDE,
                SIDE_FLOW,
                FRICTION_POWER,
                FILM_RISE,
                END_LEAK_SHARE,
                FILM_CORE_RISE);
    }

    /** Shortest bushing whose film is known, length over diameter. */
    public static final double SHORTEST = JournalFilm.SHORTEST;

    /** Longest bushing whose film is known, length over diameter. */
    public static final double LONGEST = JournalFilm.LONGEST;

    /** Largest eccentricity of the film's table; beyond it metal touches. */
    public static final double CONTACT = 0.995;

    /**
     * Least film by Trumpler's criterion for ground journals, 0.0002 in + 0.00004·d; in Shigley, Mechanical Engineering Design, §12-7
     * (from memory) [m] and [-].
     */
    private static final double TRUMPLER_BASE = 0.0002 * 0.0254;

    private static final double TRUMPLER_SLOPE = 0.00004;

    /** Slowest rotation for which a film is asked [rev/s]; below it the hub is taken as standing and in contact. */
    private static final double STANDING = 1e-6;

    /** Rise of the film's temperature [K]: some W/K carry off some tens of watts. */
    private static final Form.Unknown RISE = new Form.Unknown("film-rise", 0, 300, 0, 2, 10);

    /** Heat that leaves the film by other ways [W/K]: little beside the oil's 1 to 10, so that a film without flow has a temperature. */
    private static final double OTHER_WAYS = 0.02;

    /** A leak counts for the heat whichever way it runs; about its turn it is rounded over this [m³/s]. */
    private static final double TURN = 1e-9;

    /** A clearance that closes when cold is left this [m]: the bushing would seize before. */
    private static final double TIGHTEST = 1e-6;

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
        return new Form(
                List.of("behind", "drain"),
                List.of(new Form.Unknown("eccentricity", 0, CONTACT, 0.7, 1, 1), heated ? RISE : RISE.heldAt(0)),
                signals);
    }

    @Override
    public Law law(Setting setting) {
        return new Journal(this, setting);
    }

    private static final class Journal implements Law {
        private static final int BEHIND = 0;
        private static final int DRAIN = 1;

        private final Bushing bushing;
        private final OilAt oil;
        private final JournalFilm film;
        private final double clearance;
        private final double speed;

        /** n·L·D·(R/c)²: the load of a film with Λ = 1 over its viscosity [N/(Pa·s)]. */
        private final double unit;

        Journal(Bushing bushing, Setting setting) {
            this.bushing = bushing;
            oil = setting.oil();
            speed = Math.max(setting.speed(), STANDING);
            film = JournalFilm.of(bushing.length / bushing.fit.inner());
            clearance = Math.max(bushing.fit.gap(oil.temperature()) / 2, TIGHTEST);
            unit = unit();
        }

        private Journal(Journal other, double speed) {
            bushing = other.bushing;
            oil = other.oil;
            this.speed = Math.max(speed, STANDING);
            film = other.film;
            clearance = other.clearance;
            unit = unit();
        }

        private double unit() {
            double ratio = radius() / clearance;
            return speed * bushing.length * 2 * radius() * ratio * ratio;
        }

        private double radius() {
            return bushing.fit.inner() / 2;
        }

        @Override
        public Law atSpeed(double other) {
            return new Journal(this, other);
        }

        @Override
        public void evaluate(Reading in, Stamp out) {
            double e = in.state(0);
            OilAt hot = hot(in);
            double capacity = film.load(e);
            Load load = load(in);
            double strength = hot.viscosity() * unit;
            double asked = load.size() / strength;
            out.balance(0, Math.log1p(capacity) - Math.log1p(asked));
            out.balanceSlope(0, in.own(0), film.loadSlope(e) / (1 + capacity));
            for (int i = 0; i < bushing.loads.size(); i++) {
                SideLoad side = bushing.loads.get(i);
                double along = load.x * Math.cos(side.angle) + load.y * Math.sin(side.angle);
                double by = load.size() == 0 ? 0 : side.area * along / load.size() / strength / (1 + asked);
                out.balanceSlope(0, in.read(2 * i), -by);
                out.balanceSlope(0, in.read(2 * i + 1), by);
            }

            SeriesLoss leak = leak(e);
            Flow flow = out.pass(in, BEHIND, DRAIN, leak, hot);
            double mean = (in.pressure(BEHIND) + in.pressure(DRAIN)) / 2;
            double density = hot.density(mean);
            double byEccentricity = flow.byViscous() * -leak.viscous() * 3 * e / Slot.eccentricityFactor(e);
            out.moveSlope(BEHIND, DRAIN, in.own(0), density * byEccentricity);
            if (bushing.heated) {
                double thinning = hot.viscosityByTemperature() / hot.viscosity();
                out.balanceSlope(0, in.own(1), asked * thinning / (1 + asked));
                // the mixture's density falls with the liquid's
                double lighter =
                        hot.liquid().isEmpty() ? 0 : -hot.liquid().get().densitySlope() / hot.liquidDensity() * density;
                double byRise = flow.byViscosity() * hot.viscosity(mean) * thinning + flow.byDensity() * lighter;
                out.moveSlope(BEHIND, DRAIN, in.own(1), density * byRise + lighter * flow.q());
                heat(in, out, hot, flow, byEccentricity, byRise);
            }
        }

        /** Heat carried off less heat made. */
        private void heat(Reading in, Stamp out, OilAt hot, Flow leak, double leakByEccentricity, double leakByRise) {
            double e = in.state(0);
            double rise = in.state(1);
            double mean = (in.pressure(BEHIND) + in.pressure(DRAIN)) / 2;
            double made = power(hot, e);
            double carried = Math.hypot(leak.q(), TURN);
            double byLeak = leak.q() / carried * heatCapacity() * rise;
            double capacity = heatCapacity() * (sideFlow(e) + carried) + OTHER_WAYS;
            out.balance(1, capacity * rise - made);
            double side = film.sideFlowSlope(e) * sideUnit() * heatCapacity() * rise;
            out.balanceSlope(
                    1, in.own(0), side + byLeak * leakByEccentricity - made * film.dragSlope(e) / film.drag(e));
            double thinning = hot.viscosityByTemperature() / hot.viscosity();
            out.balanceSlope(1, in.own(1), capacity + byLeak * leakByRise - made * thinning);
            double byMean = leak.byDensity() * hot.densitySlope(mean) + leak.byViscosity() * hot.viscositySlope(mean);
            out.balanceSlope(1, in.port(BEHIND), byLeak * (leak.byDrop() + byMean / 2));
            out.balanceSlope(1, in.port(DRAIN), byLeak * (-leak.byDrop() + byMean / 2));
        }

        private OilAt hot(Reading in) {
            return bushing.heated ? oil.warmer(in.state(1)) : oil;
        }

        /** ρ·cp of the oil that comes to the film [J/(m³·K)]. */
        private double heatCapacity() {
            return oil.liquidDensity() * oil.specificHeat();
        }

        /** Friction power [W]. */
        private double power(OilAt hot, double e) {
            double friction = film.drag(e) * hot.viscosity() * unit * clearance / radius();
            return friction * 2 * Math.PI * radius() * speed;
        }

        private double sideUnit() {
            return radius() * clearance * speed * bushing.length;
        }

        private double sideFlow(double e) {
            return film.sideFlow(e) * sideUnit();
        }

        private SeriesLoss leak(double eccentricity) {
            return Slot.annular(bushing.fit.inner(), clearance, bushing.length, eccentricity);
        }

        private record Load(double x, double y) {
            double size() {
                return Math.hypot(x, y);
            }
        }

        private Load load(Reading in) {
            double x = bushing.weight * Math.cos(bushing.weightAngle);
            double y = bushing.weight * Math.sin(bushing.weightAngle);
            for (int i = 0; i < bushing.loads.size(); i++) {
                SideLoad side = bushing.loads.get(i);
                double force = side.area * (in.signal(2 * i) - in.signal(2 * i + 1));
                x += force * Math.cos(side.angle);
                y += force * Math.sin(side.angle);
            }
            return new Load(x, y);
        }

        @Override
        public List<Stream> streams(Reading in) {
            return List.of(Stream.through("", in, BEHIND, DRAIN, leak(in.state(0)), hot(in)));
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            double e = in.state(0);
            Load force = load(in);
            double load = force.size();
            double unitLoad = load / (bushing.length * 2 * radius());
            boolean contact = e >= CONTACT;
            List<Measure.Reported> measures = new ArrayList<>(List.of(
                    ECCENTRICITY.of(e),
                    LOAD.of(load),
                    LOAD_ANGLE.of(Math.atan2(force.y, force.x)),
                    UNIT_LOAD.of(unitLoad),
                    PERMISSIBLE_LOAD.of(bushing.permissibleLoad),
                    RADIAL_CLEARANCE.of(clearance),
                    PERMISSIBLE_FILM.of(bushing.permissibleFilm),
                    TRUMPLER_FILM.of(TRUMPLER_BASE + TRUMPLER_SLOPE * 2 * radius()),
                    METAL_CONTACT.of(contact ? 1 : 0)));
            if (!contact) {
                film(in, load, unitLoad, measures);
            }
            return measures;
        }

        private void film(Reading in, double load, double unitLoad, List<Measure.Reported> measures) {
            double e = in.state(0);
            OilAt hot = hot(in);
            double power = power(hot, e);
            double side = sideFlow(e);
            double fed = Math.abs(streams(in).get(0).volume());
            double surface = 2 * Math.PI * radius() * speed;
            measures.add(LEAST_FILM.of(clearance * (1 - e)));
            measures.add(PEAK_PRESSURE.of(unitLoad / film.loadOverPeak(e)));
            measures.add(SOMMERFELD.of(load == 0 ? Double.POSITIVE_INFINITY : hot.viscosity() * unit / load));
            measures.add(ATTITUDE.of(film.attitude(e)));
            measures.add(SIDE_FLOW.of(side));
            measures.add(FRICTION_POWER.of(power));
            if (side + fed > 0) {
                measures.add(FILM_RISE.of(bushing.heated ? in.state(1) : power / (heatCapacity() * (side + fed))));
                measures.add(END_LEAK_SHARE.of(fed / (side + fed)));
            }
            measures.add(FILM_CORE_RISE.of(coreRise(hot.viscosity(), surface, hot.conductivity())));
        }
    }
}

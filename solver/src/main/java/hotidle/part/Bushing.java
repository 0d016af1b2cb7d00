package hotidle.part;

import hotidle.film.JournalFilm;
import hotidle.law.Flow;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
import java.util.ArrayList;
import java.util.List;

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
 * Heat       what friction makes is carried off by side flow and end leak: rise = power/(ρ·cp·q), reported beside the film
 *            temperature that the duty assumes
 * </pre>
 *
 * @param fit             bore and hub, diametral
 * @param length          L [m]
 * @param loads           side load of each chamber
 * @param weight          share of the converter's weight [N]
 * @param weightAngle     its direction [rad], counted as the chambers' angles are
 * @param permissibleFilm least film that the roughness of both surfaces allows [m]
 * @param permissibleLoad unit load W/(L·D) that the bushing's material allows [Pa]
 */
public record Bushing(
        Fit fit,
        double length,
        List<SideLoad> loads,
        double weight,
        double weightAngle,
        double permissibleFilm,
        double permissibleLoad)
        implements Part {

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

    public Bushing {
        loads = List.copyOf(loads);
        Check.positive("bushing length", length);
        Check.notNegative("weight", weight);
        Check.notNegative("permissible film", permissibleFilm);
        Check.positive("permissible load", permissibleLoad);
    }

    @Override
    public Form form() {
        List<String> signals = new ArrayList<>();
        for (int i = 1; i <= loads.size(); i++) {
            signals.add("outlet-" + i);
            signals.add("inlet-" + i);
        }
        return new Form(
                List.of("behind", "drain"), List.of(new Form.State("eccentricity", 0, CONTACT, 0.7, 1, 1)), signals);
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

        /** μ·n·L·D·(R/c)²: the load of a film with Λ = 1 [N]. */
        private final double unit;

        Journal(Bushing bushing, Setting setting) {
            this.bushing = bushing;
            oil = setting.oil();
            speed = Math.max(setting.speed(), STANDING);
            double diameter = bushing.fit.inner();
            film = JournalFilm.of(bushing.length / diameter);
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
            double diameter = bushing.fit.inner();
            double ratio = diameter / 2 / clearance;
            return oil.viscosity() * speed * bushing.length * diameter * ratio * ratio;
        }

        @Override
        public Law atSpeed(double other) {
            return new Journal(this, other);
        }

        @Override
        public void evaluate(Reading in, Stamp out) {
            double e = in.state(0);
            double capacity = film.load(e);
            Load load = load(in);
            double asked = load.size() / unit;
            out.balance(0, Math.log1p(capacity) - Math.log1p(asked));
            out.balanceSlope(0, in.own(0), film.loadSlope(e) / (1 + capacity));
            for (int i = 0; i < bushing.loads.size(); i++) {
                SideLoad side = bushing.loads.get(i);
                double along = load.x * Math.cos(side.angle) + load.y * Math.sin(side.angle);
                double by = load.size() == 0 ? 0 : side.area * along / load.size() / unit / (1 + asked);
                out.balanceSlope(0, in.read(2 * i), -by);
                out.balanceSlope(0, in.read(2 * i + 1), by);
            }

            SeriesLoss leak = leak(e);
            Flow flow = out.pass(in, BEHIND, DRAIN, leak, oil);
            double viscousSlope = -leak.viscous() * 3 * e / Slot.eccentricityFactor(e);
            double density = oil.density((in.pressure(BEHIND) + in.pressure(DRAIN)) / 2);
            out.moveSlope(BEHIND, DRAIN, in.own(0), density * flow.byViscous() * viscousSlope);
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
            return List.of(Stream.through("", in, BEHIND, DRAIN, leak(in.state(0)), oil));
        }

        @Override
        public List<Measure> measures(Reading in) {
            double e = in.state(0);
            double load = load(in).size();
            double diameter = bushing.fit.inner();
            boolean contact = e >= CONTACT;
            List<Measure> measures = new ArrayList<>(List.of(
                    new Measure("eccentricity", e),
                    new Measure("load_n", load),
                    new Measure("unit_load_pa", load / (bushing.length * diameter)),
                    new Measure("permissible_load_pa", bushing.permissibleLoad),
                    new Measure("radial_clearance_m", clearance),
                    new Measure("permissible_film_m", bushing.permissibleFilm),
                    new Measure("metal_contact", contact ? 1 : 0)));
            if (!contact) {
                double surface = Math.PI * diameter * speed;
                double friction = film.drag(e) * unit * clearance / (diameter / 2);
                measures.add(new Measure("least_film_m", clearance * (1 - e)));
                double peak = load / (bushing.length * diameter) / film.loadOverPeak(e);
                measures.add(new Measure("peak_pressure_pa", peak));
                measures.add(new Measure("sommerfeld", load == 0 ? Double.POSITIVE_INFINITY : unit / load));
                measures.add(new Measure("attitude_rad", film.attitude(e)));
                double sideFlow = film.sideFlow(e) * diameter / 2 * clearance * speed * bushing.length;
                measures.add(new Measure("side_flow_m3_s", sideFlow));
                measures.add(new Measure("friction_power_w", friction * surface));
                double fed = Math.max(streams(in).get(0).volume(), 0);
                double carriedOff = oil.liquidDensity() * oil.specificHeat() * (sideFlow + fed);
                if (carriedOff > 0) {
                    measures.add(new Measure("heat_balance_rise_k", friction * surface / carriedOff));
                    measures.add(new Measure("end_leak_share", fed / (sideFlow + fed)));
                }
                measures.add(new Measure("trumpler_film_m", TRUMPLER_BASE + TRUMPLER_SLOPE * diameter));
            }
            return measures;
        }
    }
}

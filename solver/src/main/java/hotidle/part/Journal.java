package hotidle.part;

import hotidle.film.JournalFilm;
import hotidle.film.LeastFilm;
import hotidle.law.Flow;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import hotidle.oil.OilAt;
import hotidle.oil.ShearThinning;
import java.util.ArrayList;
import java.util.List;

/** The law of a {@link Bushing} settled at a duty: load against film, the leak along it, and the heat of the film; formulas there. */
final class Journal implements Part.Law {

    /** Slowest rotation for which a film is asked [rev/s]; below it the hub is taken as standing and in contact (ours). */
    private static final double STANDING = 1e-6;

    /** Heat that leaves the film by other ways [W/K]: little beside the oil's 1 to 10, so that a film without flow has a temperature (assumed). */
    private static final double OTHER_WAYS = 0.02;

    /** A leak counts for the heat whichever way it runs; about its turn it is rounded over this (ours) [m³/s]. */
    private static final double TURN = 1e-9;

    /** A clearance that closes when cold is left this [m]: the bushing would seize before (assumed). */
    private static final double TIGHTEST = 1e-6;

    private static final int BEHIND = 0;
    private static final int DRAIN = 1;

    private final Bushing bushing;
    private final OilAt oil;
    private final ShearThinning thinning;
    private final JournalFilm film;
    private final double clearance;
    private final double speed;

    /** n·L·D·(R/c)²: the load of a film with Λ = 1 over its viscosity [N/(Pa·s)]. */
    private final double unit;

    Journal(Bushing bushing, Setting setting) {
        this.bushing = bushing;
        oil = setting.oil();
        thinning = oil.thinning();
        speed = Math.max(setting.speed(), STANDING);
        film = JournalFilm.of(bushing.length() / bushing.fit().inner());
        clearance = Math.max(bushing.fit().gap(oil.temperature()) / 2, TIGHTEST);
        unit = unit();
    }

    private Journal(Journal other, double speed) {
        bushing = other.bushing;
        oil = other.oil;
        thinning = other.thinning;
        this.speed = Math.max(speed, STANDING);
        film = other.film;
        clearance = other.clearance;
        unit = unit();
    }

    private double unit() {
        double ratio = radius() / clearance;
        return speed * bushing.length() * 2 * radius() * ratio * ratio;
    }

    private double radius() {
        return bushing.fit().inner() / 2;
    }

    @Override
    public Part.Law atSpeed(double other) {
        return new Journal(this, other);
    }

    @Override
    public void evaluate(Reading in, Stamp out) {
        double e = in.state(0);
        OilAt hot = hot(in);
        double capacity = film.load(e);
        LoadAt load = load(in);
        double sheared = narrowest(hot, e);
        double strength = hot.viscosity() * thinning.left(sheared) * unit;
        double asked = load.size() / strength;
        double yielding = thinning.leftSlope(sheared);
        out.balance(0, Math.log1p(capacity) - Math.log1p(asked));
        out.balanceSlope(0, in.own(0), film.loadSlope(e) / (1 + capacity) + asked / (1 + asked) * yielding / (1 - e));
        for (int i = 0; i < bushing.loads().size(); i++) {
            Bushing.SideLoad side = bushing.loads().get(i);
            double along = load.x * Math.cos(side.angle()) + load.y * Math.sin(side.angle());
            double by = load.size() == 0 ? 0 : side.area() * along / load.size() / strength / (1 + asked);
            out.balanceSlope(0, in.read(2 * i), -by);
            out.balanceSlope(0, in.read(2 * i + 1), by);
        }

        SeriesLoss leak = leak(e);
        Flow flow = out.pass(in, BEHIND, DRAIN, leak, hot);
        double mean = (in.pressure(BEHIND) + in.pressure(DRAIN)) / 2;
        double density = hot.density(mean);
        double byEccentricity = flow.byViscous() * -leak.viscous() * 3 * e / Slot.eccentricityFactor(e);
        out.moveSlope(BEHIND, DRAIN, in.own(0), density * byEccentricity);
        if (bushing.heated()) {
            double byHeat = hot.viscosityByTemperature() / hot.viscosity();
            out.balanceSlope(0, in.own(1), asked * byHeat * (1 + yielding) / (1 + asked));
            // the mixture's density falls with the liquid's
            double lighter =
                    hot.liquid().isEmpty() ? 0 : -hot.liquid().get().densitySlope() / hot.liquidDensity() * density;
            double byRise = flow.byViscosity() * hot.viscosity(mean) * byHeat + flow.byDensity() * lighter;
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
        double yielding = thinning.leftSlope(mean(hot, e));
        double byDrag = made * (film.dragSlope(e) / film.drag(e) + yielding * e / (1 - e * e));
        out.balanceSlope(1, in.own(0), side + byLeak * leakByEccentricity - byDrag);
        double byHeat = hot.viscosityByTemperature() / hot.viscosity();
        out.balanceSlope(1, in.own(1), capacity + byLeak * leakByRise - made * byHeat * (1 + yielding));
        double byMean = leak.byDensity() * hot.densitySlope(mean) + leak.byViscosity() * hot.viscositySlope(mean);
        out.balanceSlope(1, in.port(BEHIND), byLeak * (leak.byDrop() + byMean / 2));
        out.balanceSlope(1, in.port(DRAIN), byLeak * (-leak.byDrop() + byMean / 2));
    }

    private OilAt hot(Reading in) {
        return bushing.heated() ? oil.warmer(in.state(1)) : oil;
    }

    /** ρ·cp of the oil that comes to the film [J/(m³·K)]. */
    private double heatCapacity() {
        return oil.liquidDensity() * oil.specificHeat();
    }

    /** Friction power [W]. */
    private double power(OilAt hot, double e) {
        double viscosity = hot.viscosity() * thinning.left(mean(hot, e));
        double friction = film.drag(e) * viscosity * unit * clearance / radius();
        return friction * surface();
    }

    /** Speed of the hub's surface [m/s]. */
    private double surface() {
        return 2 * Math.PI * radius() * speed;
    }

    /** μ0·γ where the film is narrowest [Pa], which tells what carries the load. */
    private double narrowest(OilAt hot, double e) {
        return hot.viscosity() * surface() / (clearance * (1 - e));
    }

    /** μ0·γ on the average round the film [Pa], which tells what is dragged: the mean of 1/(1 + ε·cos θ) is 1/√(1 − ε²). */
    private double mean(OilAt hot, double e) {
        return hot.viscosity() * surface() / (clearance * Math.sqrt(1 - e * e));
    }

    private double sideUnit() {
        return radius() * clearance * speed * bushing.length();
    }

    private double sideFlow(double e) {
        return film.sideFlow(e) * sideUnit();
    }

    private SeriesLoss leak(double eccentricity) {
        return Slot.annular(bushing.fit().inner(), clearance, bushing.length(), eccentricity);
    }

    private record LoadAt(double x, double y) {
        double size() {
            return Math.hypot(x, y);
        }
    }

    private LoadAt load(Reading in) {
        double x = bushing.weight() * Math.cos(bushing.weightAngle());
        double y = bushing.weight() * Math.sin(bushing.weightAngle());
        for (int i = 0; i < bushing.loads().size(); i++) {
            Bushing.SideLoad side = bushing.loads().get(i);
            double force = side.area() * (in.signal(2 * i) - in.signal(2 * i + 1));
            x += force * Math.cos(side.angle());
            y += force * Math.sin(side.angle());
        }
        return new LoadAt(x, y);
    }

    @Override
    public List<Stream> streams(Reading in) {
        return List.of(Stream.through("", in, BEHIND, DRAIN, leak(in.state(0)), hot(in)));
    }

    @Override
    public List<Measure.Reported> measures(Reading in) {
        double e = in.state(0);
        LoadAt force = load(in);
        double load = force.size();
        double unitLoad = load / (bushing.length() * 2 * radius());
        boolean contact = e >= Bushing.CONTACT;
        List<Measure.Reported> measures = new ArrayList<>(List.of(
                Bushing.ECCENTRICITY.of(e),
                Bushing.LOAD.of(load),
                Bushing.LOAD_ANGLE.of(Math.atan2(force.y, force.x)),
                Bushing.UNIT_LOAD.of(unitLoad),
                Bushing.PERMISSIBLE_LOAD.of(bushing.permissibleLoad()),
                Bushing.RADIAL_CLEARANCE.of(clearance),
                Bushing.PERMISSIBLE_FILM.of(bushing.permissibleFilm()),
                Bushing.TRUMPLER_FILM.of(LeastFilm.trumpler(2 * radius())),
                Bushing.METAL_CONTACT.of(contact ? 1 : 0)));
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
        double left = thinning.left(narrowest(hot, e));
        double least = clearance * (1 - e);
        measures.add(Bushing.LEAST_FILM.of(least));
        measures.add(Bushing.EDGE_FILM.of(LeastFilm.atEdge(least, bushing.tilt(), bushing.length())));
        measures.add(Bushing.PEAK_PRESSURE.of(unitLoad / film.loadOverPeak(e)));
        measures.add(
                Bushing.SOMMERFELD.of(load == 0 ? Double.POSITIVE_INFINITY : hot.viscosity() * left * unit / load));
        measures.add(Bushing.ATTITUDE.of(film.attitude(e)));
        measures.add(Bushing.SIDE_FLOW.of(side));
        measures.add(Bushing.FRICTION_POWER.of(power));
        if (side + fed > 0) {
            measures.add(
                    Bushing.FILM_RISE.of(bushing.heated() ? in.state(1) : power / (heatCapacity() * (side + fed))));
            measures.add(Bushing.END_LEAK_SHARE.of(fed / (side + fed)));
        }
        measures.add(Bushing.VISCOSITY_LEFT.of(left));
        double dragged = hot.viscosity() * thinning.left(mean(hot, e));
        measures.add(Bushing.FILM_CORE_RISE.of(Bushing.coreRise(dragged, surface(), hot.conductivity())));
    }
}

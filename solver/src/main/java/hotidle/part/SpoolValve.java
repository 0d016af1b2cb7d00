package hotidle.part;

import hotidle.law.Annulus;
import hotidle.law.Channel;
import hotidle.law.Flow;
import hotidle.oil.OilAt;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A spool on a spring: any number of metering openings and of pressure areas. Regulator, boost, converter limit, lockup and
 * solenoid-feed valves are all this part. Past 300 lines, since its dimensions, its law and the slopes of that law stand together.
 *
 * <pre>
 * Balance    Σ p·A − preload − k·x − Σ flow force = 0 between the stops; areas that open the valve count positive. The solver
 *            sees F = preload + k·x + Σ flow force − Σ p·A, which rises with x.
 * Opening    area √(A(a)² + (w·c)²), A = w·a for a ring of width w, the circle's segment for round holes, w then the sum of
 *            their diameters; Cd: H. E. Merritt, Hydraulic Control Systems, 1967, §5-2 (from memory), c the radial clearance;
 *            before it, in series, an annular gap of the overlap's length, {@link Annulus}
 * Flow force 2·Cd·Cv·cos 69°·A·Δp·(1 − s), always closing; Merritt 1967 eq. 5-93 (from memory). Δp is the kinetic share of the drop,
 *            which is the whole of it at any opening that matters. The share s is what the valve's form takes away: a turned stem or a
 *            shaped chamber that sends the jet back at a steeper angle; J. F. Blackburn, G. Reethof, J. L. Shearer, Fluid Power Control,
 *            1960, ch. 10, and Merritt §5-6 (from memory). It is measured or taken from a maker, not computed from the form.
 * Numerics   s = ±(x − edge); opening a = ½·(√(s² + c²) + s), b = ½·(√(s² + c²) − s), overlap b³/(b² + c²): an edge rounded over
 *            the clearance. Value and first slopes are continuous. At s = 10·c the opening is 0.25 % too large, at s = −10·c the
 *            overlap 0.7 % too short; past s = c the overlap adds less than 2 % to the slit's viscous loss.
 * </pre>
 *
 * @param ports    names of the ports
 * @param openings metering openings
 * @param areas    pressure areas
 * @param spring   spring, stops and friction
 * @param stuck    position in which it is stuck, if it is [m]
 */
public record SpoolValve(
        List<String> ports, List<Opening> openings, List<Area> areas, SpoolSpring spring, OptionalDouble stuck)
        implements Part {

    /** Of the spool, from where its spring is preloaded. */
    public static final Measure PLACE =
            new Measure("position_m", Measure.QuantityKind.LENGTH, "of the spool, from where its spring is preloaded");

    /** Of all pressures on the spool. */
    public static final Measure PRESSURE_FORCE =
            new Measure("pressure_force_n", Measure.QuantityKind.FORCE, "of all pressures on the spool");

    /** Of the spring. */
    public static final Measure SPRING_FORCE =
            new Measure("spring_force_n", Measure.QuantityKind.FORCE, "of the spring");

    /** Of the jets, closing. */
    public static final Measure FLOW_FORCE =
            new Measure("flow_force_n", Measure.QuantityKind.FORCE, "of the jets, closing");

    @Override
    public List<Measure> measures() {
        return List.of(PLACE, PRESSURE_FORCE, SPRING_FORCE, FLOW_FORCE);
    }

    /** Velocity coefficient of the jet, Merritt 1967 §5-2 (from memory). */
    private static final double VELOCITY = 0.98;

    private static final double JET_COSINE = Math.cos(Math.toRadians(69));

    /**
     * A metering opening of the spool.
     *
     * @param name         what it does, for example bypass
     * @param from         number of one port
     * @param to           number of the other
     * @param fit          bore and land, diametral
     * @param share        share of the circumference that is open [-], 1 for a full annulus
     * @param edge         position at which the overlap is zero [m]
     * @param opensUp      true where it opens as x rises
     * @param eccentricity of the land in its bore [-]
     * @param discharge    Cd [-]
     * @param holes        round holes that the land uncovers in place of a ring, 0 for a ring
     * @param holeDiameter their diameter [m]
     * @param compensation share of the flow force that the valve's form takes away [-], 0 for plain lands
     */
    public record Opening(
            String name,
            int from,
            int to,
            Fit fit,
            double share,
            double edge,
            boolean opensUp,
            double eccentricity,
            double discharge,
            int holes,
            double holeDiameter,
            double compensation) {

        /** An opening of a valve with plain lands. */
        public Opening(
                String name,
                int from,
                int to,
                Fit fit,
                double share,
                double edge,
                boolean opensUp,
                double eccentricity,
                double discharge,
                int holes,
                double holeDiameter) {
            this(name, from, to, fit, share, edge, opensUp, eccentricity, discharge, holes, holeDiameter, 0);
        }

        /** An opening that is a ring, or a share of one. */
        public Opening(
                String name,
                int from,
                int to,
                Fit fit,
                double share,
                double edge,
                boolean opensUp,
                double eccentricity,
                double discharge) {
            this(name, from, to, fit, share, edge, opensUp, eccentricity, discharge, 0, 0);
        }

        public Opening {
            Check.within("share of the circumference", share, 0.001, 1);
            Check.within("eccentricity", eccentricity, 0, 1);
            Check.within("discharge coefficient", discharge, 0.3, 1);
            Check.within("compensation of the flow force", compensation, 0, 1);
            Check.within("number of holes", holes, 0, 100);
            if (holes > 0) {
                Check.positive("hole diameter", holeDiameter);
            }
        }

        /** A part of this ring that opens at an edge of its own: what notches leave of it, or the notches themselves. */
        public Opening part(String other, double shareOf, double opensAt) {
            return new Opening(
                    other, from, to, fit, shareOf, opensAt, opensUp, eccentricity, discharge, 0, 0, compensation);
        }

        /** Length along which the land seals and first opens [m]. */
        public double width() {
            return holes > 0 ? holes * holeDiameter : Math.PI * fit.outer() * share;
        }

        /** Viscous coefficient of a length of overlap [1/m⁴] at a radial clearance [m]: its share of the whole annulus. */
        private double sealing(double c) {
            return Annulus.viscous(fit.outer() - 2 * c, c, eccentricity) * Math.PI * fit.outer() / width();
        }

        /** Flow force over area and drop, 2·Cd·Cv·cos 69°·(1 − s) [-]. */
        private double jet() {
            return 2 * discharge * VELOCITY * JET_COSINE * (1 - compensation);
        }

        /** Area uncovered [m²] by an opening a > 0 [m]: a strip of the ring, or a segment of each hole. */
        double uncovered(double a) {
            if (holes == 0) {
                return width() * a;
            }
            double r = holeDiameter / 2;
            if (a >= holeDiameter) {
                return holes * Math.PI * r * r;
            }
            return holes * (r * r * Math.acos(1 - a / r) - (r - a) * Math.sqrt(a * (holeDiameter - a)));
        }

        /** Slope of the area uncovered: the chord. */
        double chord(double a) {
            if (holes == 0) {
                return width();
            }
            return a >= holeDiameter ? 0 : holes * 2 * Math.sqrt(a * (holeDiameter - a));
        }
    }

    /**
     * A pressure area.
     *
     * @param port   number of the port whose pressure acts
     * @param area   [m²], positive where the pressure opens the valve
     * @param ranges ranges in which it is fed, empty for all; elsewhere it is drained to the sump
     */
    public record Area(int port, double area, Set<String> ranges) {
        public Area {
            ranges = Set.copyOf(ranges);
        }

        /** Whether the area is fed in a range. */
        public boolean fedIn(String range) {
            return ranges.isEmpty() || ranges.contains(range);
        }
    }

    public SpoolValve {
        ports = List.copyOf(ports);
        openings = List.copyOf(openings);
        areas = List.copyOf(areas);
    }

    /** The same on another spring. */
    public SpoolValve with(SpoolSpring other) {
        return new SpoolValve(ports, openings, areas, other, stuck);
    }

    /** The same stuck at a position [m]. */
    public SpoolValve stuckAt(double position) {
        return new SpoolValve(ports, openings, areas, spring, OptionalDouble.of(position));
    }

    /** The same with another area in the place of one. */
    public SpoolValve with(int index, Area other) {
        List<Area> all = new ArrayList<>(areas);
        all.set(index, other);
        return new SpoolValve(ports, openings, all, spring, stuck);
    }

    /** Net opening force of the pressures alone [N]. */
    public double pressureForce(String range, java.util.function.IntToDoubleFunction pressure) {
        double force = 0;
        for (Area area : areas) {
            if (area.fedIn(range)) {
                force += area.area() * pressure.applyAsDouble(area.port());
            }
        }
        return force;
    }

    @Override
    public Map<String, Channel> channels() {
        Map<String, Channel> channels = new LinkedHashMap<>();
        for (Opening opening : openings) {
            channels.put(opening.name(), new Channel(Channel.Geometry.HOLE, 2 * opening.width()));
        }
        return channels;
    }

    @Override
    public Map<String, Fit> fits() {
        Map<String, Fit> fits = new LinkedHashMap<>();
        openings.forEach(opening -> fits.put("diametral clearance at " + opening.name(), opening.fit()));
        return fits;
    }

    @Override
    public Form form() {
        double scale = Math.max(
                Math.abs(spring.preload()), spring.rate() * Math.max(Math.abs(spring.low()), Math.abs(spring.end())));
        Form.Unknown position = new Form.Unknown(
                        OwnState.POSITION,
                        spring.low(),
                        spring.end(),
                        spring.low(),
                        spring.rate(),
                        Math.max(scale, spring.rate() * 1e-3))
                .opening(openings.stream().map(Opening::edge).toList());
        return new Form(ports, List.of(stuck.isPresent() ? position.heldAt(stuck.getAsDouble()) : position), List.of());
    }

    @Override
    public Law law(Setting setting) {
        return new Spool(this, setting);
    }

    private static final class Spool implements Law {
        private final SpoolValve valve;
        private final String range;
        private final OilAt oil;
        private final double[] clearance;
        private final double[] sealing;
        private final Area[] fed;
        private final MeteringEdge edge = new MeteringEdge();

        Spool(SpoolValve valve, Setting setting) {
            this.valve = valve;
            range = setting.range();
            oil = setting.oil();
            fed = valve.areas.stream().filter(area -> area.fedIn(range)).toArray(Area[]::new);
            clearance = valve.openings.stream()
                    .mapToDouble(o -> Math.max(o.fit.gap(oil.temperature()) / 2, TIGHTEST))
                    .toArray();
            sealing = new double[clearance.length];
            for (int i = 0; i < clearance.length; i++) {
                sealing[i] = valve.openings.get(i).sealing(clearance[i]);
            }
        }

        /** A land that would bind when cold is left this radial clearance [m]; it must move to work at all (assumed). */
        private static final double TIGHTEST = 0.5e-6;

        @Override
        public void evaluate(Reading in, Stamp out) {
            double x = in.state(0);
            out.balance(0, valve.spring.preload() + valve.spring.rate() * x);
            out.balanceSlope(0, in.own(0), valve.spring.rate());
            for (Area area : fed) {
                out.balance(0, -area.area * in.pressure(area.port));
                out.balanceSlope(0, in.port(area.port), -area.area);
            }
            for (int i = 0; i < clearance.length; i++) {
                meter(valve.openings.get(i), i, in, out);
            }
        }

        private void meter(Opening opening, int i, Reading in, Stamp out) {
            double sign = opening.opensUp ? 1 : -1;
            edge.find(opening, clearance[i], sealing[i], sign * (in.state(0) - opening.edge));
            Flow flow = out.pass(in, opening.from, opening.to, edge.viscous, edge.kinetic, oil);
            double mean = (in.pressure(opening.from) + in.pressure(opening.to)) / 2;
            double density = oil.density(mean);
            double byOpening = flow.byViscous() * edge.viscousSlope + flow.byKinetic() * edge.kineticSlope;
            out.moveSlope(opening.from, opening.to, in.own(0), sign * density * byOpening);

            // force = g·D with g = 2·Cd·Cv·cos 69°·A and D = kinetic·ρ·q², the kinetic share of the drop
            double g = opening.jet() * edge.area;
            double gSlope = opening.jet() * edge.areaSlope;
            double q = flow.q();
            double head = edge.kinetic * density * q * q;
            double byFlow = 2 * edge.kinetic * density * q;
            double densitySlope = oil.densitySlope(mean);
            double meanSlope = edge.kinetic * densitySlope * q * q
                    + byFlow * (flow.byDensity() * densitySlope + flow.byViscosity() * oil.viscositySlope(mean));
            out.balance(0, sign * g * head);
            out.balanceSlope(0, in.port(opening.from), sign * g * (byFlow * flow.byDrop() + meanSlope / 2));
            out.balanceSlope(0, in.port(opening.to), sign * g * (-byFlow * flow.byDrop() + meanSlope / 2));
            out.balanceSlope(
                    0, in.own(0), gSlope * head + g * (edge.kineticSlope * density * q * q + byFlow * byOpening));
        }

        @Override
        public List<Stream> streams(Reading in) {
            List<Stream> streams = new ArrayList<>();
            MeteringEdge edge = new MeteringEdge();
            for (int i = 0; i < clearance.length; i++) {
                Opening opening = valve.openings.get(i);
                double s = (opening.opensUp ? 1 : -1) * (in.state(0) - opening.edge);
                edge.find(opening, clearance[i], sealing[i], s);
                streams.add(Stream.through(opening.name, in, opening.from, opening.to, edge.loss(), oil));
            }
            return streams;
        }

        @Override
        public List<Measure.Reported> measures(Reading in) {
            double flowForce = 0;
            MeteringEdge edge = new MeteringEdge();
            for (int i = 0; i < clearance.length; i++) {
                Opening opening = valve.openings.get(i);
                double sign = opening.opensUp ? 1 : -1;
                edge.find(opening, clearance[i], sealing[i], sign * (in.state(0) - opening.edge));
                double mean = (in.pressure(opening.from) + in.pressure(opening.to)) / 2;
                double density = oil.density(mean);
                double q = edge.loss()
                        .flow(in.pressure(opening.from) - in.pressure(opening.to), density, oil.viscosity(mean))
                        .q();
                flowForce += sign * opening.jet() * edge.area * edge.loss().kineticDrop(q, density);
            }
            return List.of(
                    PLACE.of(in.state(0)),
                    PRESSURE_FORCE.of(valve.pressureForce(range, in::pressure)),
                    SPRING_FORCE.of(valve.spring.preload() + valve.spring.rate() * in.state(0)),
                    FLOW_FORCE.of(flowForce));
        }
    }
}

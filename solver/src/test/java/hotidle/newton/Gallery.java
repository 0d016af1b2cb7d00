package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Group;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.Orifice;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.Setting;
import hotidle.part.Stamp;
import hotidle.part.Stream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A made-up hydraulic gallery of any size, with laws simple enough to be written again for general-purpose libraries, so that they
 * can be timed on the same work: rows and columns of nodes, joined to their right and lower neighbours by orifices, gaps and check
 * valves in turn, each with a leak to the sump; every tenth node is fed.
 */
final class Gallery {

    private static final double DENSITY = 800;
    private static final double VISCOSITY = 0.0060;
    private static final double DISCHARGE = 0.7;

    /** Full feed of each node at speed 1 [m³/s]. */
    private static final double FEED = 2.5e-6;

    /** A place for each law: two ports, its dimensions unused. */
    private static final Part ANY = new Orifice(1e-3, 0, 0.7, 1);

    private final int nodes;
    private final Map<String, Part.Law> laws = new HashMap<>();
    private final List<Placed> parts = new ArrayList<>();
    private long random = 12345;
    private int links;

    Gallery(int rows, int columns) {
        nodes = rows * columns;
        for (int id = 0; id < nodes; id++) {
            if (id % columns < columns - 1) {
                link(id, id + 1);
            }
            if (id / columns < rows - 1) {
                link(id, id + columns);
            }
        }
        links = parts.size();
        for (int id = 0; id < nodes; id++) {
            add(new Gap(gap(14e-3, (20 + 40 * drawn()) * 1e-6, 8e-3)), name(id), "sump");
        }
        for (int id = 3; id < nodes; id += 7) {
            add(new Opening(opening((0.8 + 0.8 * drawn()) * 1e-3)), name(id), "sump");
        }
        int fed = (nodes + 9) / 10;
        for (int id = 0; id < nodes; id += 10) {
            add(new Feed(nodes * FEED / fed, 2e-13 / VISCOSITY * 0.01, 1), "sump", name(id));
        }
        add(new Ceiling(1e-10, 2e6), name(nodes - 1), "sump");
    }

    private void link(int one, int other) {
        Part.Law law =
                switch (parts.size() % 3) {
                    case 0 -> new Opening(opening((1 + 2 * drawn()) * 1e-3));
                    case 1 -> new Gap(gap(12e-3, (40 + 60 * drawn()) * 1e-6, 6e-3));
                    default -> new OneWay(opening((2 + 2 * drawn()) * 1e-3), gap(6e-3, 8e-6, 3e-3));
                };
        add(law, name(one), name(other));
    }

    private void add(Part.Law law, String from, String to) {
        String name = "part-" + parts.size();
        laws.put(name, law);
        parts.add(Placed.of(name, ANY, "sump", Group.VALVE_BODY, from, to));
    }

    private double drawn() {
        random = (1103515245L * random + 12345L) % 2147483648L;
        return random / 2147483648.0;
    }

    static String name(int id) {
        return "node-" + id;
    }

    private static double opening(double diameter) {
        return DISCHARGE * Math.PI * diameter * diameter / 4 * Math.sqrt(2 / DENSITY);
    }

    private static double gap(double diameter, double clearance, double length) {
        return Math.PI * diameter * clearance * clearance * clearance / (12 * VISCOSITY * length);
    }

    int nodes() {
        return nodes;
    }

    /** Links between nodes and from nodes to the sump, as the sizes are usually given. */
    int links() {
        return links + nodes + (nodes + 3) / 7;
    }

    Network network() {
        List<Node> all = new ArrayList<>(List.of(Node.held("sump", 0)));
        for (int id = 0; id < nodes; id++) {
            all.add(Node.free(name(id)));
        }
        return new Network(all, parts);
    }

    Equations equations() {
        return new Equations(network(), (placed, setting) -> laws.get(placed.name()));
    }

    /** Conditions at a speed; the laws read nothing else. */
    static Conditions at(double speed) {
        Oil.Walther line = Oil.Walther.constant(VISCOSITY / DENSITY);
        Oil oil = new Oil("gallery", line, DENSITY, 0, 0, 0, 0);
        return new Conditions(
                speed, "", Setting.Lockup.OFF, oil, 101_325, Map.of("sump", Oil.ZERO_CELSIUS + 15), Map.of());
    }

    /** A law of one path between two ports: its volume flow and slope at a drop. */
    private interface Path extends Part.Law {
        @Override
        default Iterable<Stream> streams(Reading in) {
            return List.of();
        }
    }

    private static void pass(Reading in, Stamp out, double q, double slope) {
        out.move(0, 1, DENSITY * q);
        out.moveSlope(0, 1, in.port(0), DENSITY * slope);
        out.moveSlope(0, 1, in.port(1), -DENSITY * slope);
    }

    private static double drop(Reading in) {
        return in.pressure(0) - in.pressure(1);
    }

    /** Q = k·Δp/(Δp² + δ²)^¼. */
    private record Opening(double k) implements Path {
        private static final double ROUNDED = 100 * 100;

        @Override
        public void evaluate(Reading in, Stamp out) {
            double dp = drop(in);
            double square = dp * dp + ROUNDED;
            double share = k / Math.sqrt(Math.sqrt(square));
            pass(in, out, share * dp, share * (1 - 0.5 * dp * dp / square));
        }
    }

    private record Gap(double conductance) implements Path {
        @Override
        public void evaluate(Reading in, Stamp out) {
            pass(in, out, conductance * drop(in), conductance);
        }
    }

    /** A check valve: an orifice one way, a gap the other. */
    private record OneWay(Opening forwards, Gap backwards) implements Path {
        OneWay(double k, double conductance) {
            this(new Opening(k), new Gap(conductance));
        }

        @Override
        public void evaluate(Reading in, Stamp out) {
            if (drop(in) > 0) {
                forwards.evaluate(in, out);
            } else {
                backwards.evaluate(in, out);
            }
        }
    }

    /** A pump of fixed share, less its slip, from the sump into a node. */
    private record Feed(double full, double slip, double speed) implements Path {
        @Override
        public void evaluate(Reading in, Stamp out) {
            out.move(0, 1, DENSITY * (speed * full - slip * in.pressure(1)));
            out.moveSlope(0, 1, in.port(1), -DENSITY * slip);
        }

        @Override
        public Part.Law atSpeed(double other) {
            return new Feed(full, slip, other);
        }

        /** The whole feed at speed 1 is what the work asks the balance to be judged against. */
        @Override
        public double delivery() {
            return full;
        }
    }

    /** A relief valve: what is above its pressure flows out. */
    private record Ceiling(double conductance, double cracking) implements Path {
        @Override
        public void evaluate(Reading in, Stamp out) {
            if (drop(in) > cracking) {
                pass(in, out, conductance * (drop(in) - cracking), conductance);
            }
        }
    }
}

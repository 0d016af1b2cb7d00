package hotidle.newton;

import hotidle.network.Conditions;
import hotidle.network.Network;
import hotidle.network.Node;
import hotidle.network.Placed;
import hotidle.network.Signal;
import hotidle.part.Form;
import hotidle.part.Measure;
import hotidle.part.OwnState;
import hotidle.part.Part;
import hotidle.part.Reading;
import hotidle.part.Setting;
import hotidle.part.Stamp;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The equations of a network: mass balance of each free node, balance of each own state. Unknowns are the free pressures [Pa],
 * then the states. The pattern is found once; values are written into arrays that stay.
 */
final class Equations {

    /** The balance is judged against the pump's flow, but against this at least (ours) [m³/s]. */
    private static final double LEAST_SCALE = 1e-6;

    private Network network;
    private final Laws laws;
    private final Map<String, Integer> unknownOf = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final BoundPart[] bounds;
    private final Pattern pattern;
    private final int nodes;
    private final Form.Unknown[] states;

    /** Mass balance [kg/s] of each node, balance of each state; and their slopes in the pattern's order. One place more than needed. */
    final double[] value;

    final double[] slope;

    private Conditions conditions;

    /** Whether all laws are those of the conditions. */
    private boolean settled;

    private double massScale;
    private double scaleDensity;

    private final ComparedLaws compared;

    Equations(Network network, Laws laws) {
        this.network = network;
        this.laws = laws;
        compared = new ComparedLaws(laws);
        Map<String, Double> heldAt = new HashMap<>();
        for (Node node : network.nodes()) {
            if (node.held().isPresent()) {
                heldAt.put(node.name(), node.held().getAsDouble());
            } else {
                unknownOf.put(node.name(), names.size());
                names.add("node " + node.name());
            }
        }
        nodes = names.size();
        for (Placed placed : network.parts()) {
            for (Form.Unknown state : placed.part().form().states()) {
                unknownOf.put(placed.name() + "." + state.name(), names.size());
                names.add("part " + placed.name() + " (" + state.name() + ")");
            }
        }
        states = states(network);
        bounds = network.parts().stream().map(placed -> bind(placed, heldAt)).toArray(BoundPart[]::new);
        pattern = findPattern();
        value = new double[names.size() + 1];
        slope = new double[pattern.rows().length + 1];
        for (BoundPart bound : bounds) {
            bound.place(pattern, value, slope);
        }
    }

    private static Form.Unknown[] states(Network network) {
        return network.parts().stream()
                .flatMap(placed -> placed.part().form().states().stream())
                .toArray(Form.Unknown[]::new);
    }

    /** Whether another network has the same shape: nodes, of which the same are held, and parts of the same forms joined alike. */
    boolean alike(Network other) {
        if (other.nodes().size() != network.nodes().size()
                || other.parts().size() != network.parts().size()) {
            return false;
        }
        for (int i = 0; i < other.nodes().size(); i++) {
            Node one = network.nodes().get(i);
            Node like = other.nodes().get(i);
            if (!one.name().equals(like.name())
                    || one.held().isPresent() != like.held().isPresent()) {
                return false;
            }
        }
        for (int i = 0; i < bounds.length; i++) {
            if (!alike(bounds[i].placed, other.parts().get(i))) {
                return false;
            }
        }
        return true;
    }

    /**
     * Takes sizes and held pressures of another network of the same shape; names, pattern and arrays stay, and so do the laws of
     * parts that are the same objects in both.
     *
     * @throws IllegalArgumentException where nodes, parts or what they are joined to differ
     */
    void use(Network other) {
        if (!alike(other)) {
            throw new IllegalArgumentException(
                    "the nodes of the other network differ, or a part is joined or made up otherwise");
        }
        boolean held = !other.nodes().equals(network.nodes());
        for (int i = 0; i < bounds.length; i++) {
            take(bounds[i], other.parts().get(i));
        }
        network = other;
        settled = false;
        if (held) {
            Map<String, Double> heldAt = new HashMap<>();
            other.nodes().forEach(node -> node.held().ifPresent(pressure -> heldAt.put(node.name(), pressure)));
            for (BoundPart bound : bounds) {
                bound.hold(heldAt);
            }
        }
    }

    /** Takes another part of the same form, whose law is then settled anew. */
    @SuppressWarnings("ReferenceEquality") // only the same object is known to be equal at no cost
    private void take(BoundPart bound, Placed other) {
        if (bound.placed != other) {
            conditions = bound.placed.region().equals(other.region()) ? conditions : null;
            bound.placed = other;
            bound.law = null;
            List<Form.Unknown> own = other.part().form().states();
            for (int s = 0; s < own.size(); s++) {
                states[bound.rows[bound.form.ports().size() + s] - nodes] = own.get(s);
            }
        }
    }

    @SuppressWarnings("ReferenceEquality") // the same object is alike, others are looked at
    private static boolean alike(Placed one, Placed other) {
        if (one == other) {
            return true;
        }
        Form form = one.part().form();
        Form like = other.part().form();
        return one.name().equals(other.name())
                && one.nodes().equals(other.nodes())
                && one.signals().equals(other.signals())
                && form.ports().equals(like.ports())
                && form.signals().equals(like.signals())
                && form.states().stream()
                        .map(Form.Unknown::name)
                        .toList()
                        .equals(like.states().stream().map(Form.Unknown::name).toList());
    }

    private BoundPart bind(Placed placed, Map<String, Double> heldAt) {
        Form form = placed.part().form();
        int ports = form.ports().size();
        int own = form.states().size();
        int[] rows = new int[ports + own];
        int[] columns = new int[ports + own + form.signals().size()];
        double[] held = new double[columns.length];
        for (int p = 0; p < ports; p++) {
            String node = placed.nodes().get(p);
            rows[p] = columns[p] = unknownOf.getOrDefault(node, -1);
            held[p] = heldAt.getOrDefault(node, 0.0);
        }
        for (int s = 0; s < own; s++) {
            rows[ports + s] = columns[ports + s] =
                    unknownOf.get(placed.name() + "." + form.states().get(s).name());
        }
        for (int s = 0; s < form.signals().size(); s++) {
            Signal signal = placed.signals().get(s);
            String key = BoundPart.key(signal);
            if (!unknownOf.containsKey(key) && !heldAt.containsKey(key)) {
                throw new IllegalArgumentException(placed.name() + " reads " + key + ", which is not there");
            }
            columns[ports + own + s] = unknownOf.getOrDefault(key, -1);
            held[ports + own + s] = heldAt.getOrDefault(key, 0.0);
        }
        return new BoundPart(placed, rows, columns, held);
    }

    private Pattern findPattern() {
        @SuppressWarnings({"unchecked", "rawtypes"})
        TreeSet<Integer>[] columns = new TreeSet[names.size()];
        for (int j = 0; j < columns.length; j++) {
            columns[j] = new TreeSet<>(List.of(j));
        }
        for (BoundPart bound : bounds) {
            for (int column : bound.columns) {
                for (int row : bound.rows) {
                    if (column >= 0 && row >= 0) {
                        columns[column].add(row);
                    }
                }
            }
        }
        return Pattern.of(columns);
    }

    /** Settles what is given for a solve; laws whose oil and command are as before only take the speed. */
    void set(Conditions given) {
        set(given, laws);
    }

    private void set(Conditions given, Laws from) {
        Conditions before = conditions;
        boolean same = before != null && given.differsInSpeedAndCommandsOnly(before);
        double swept = 0;
        scaleDensity = same ? scaleDensity : 0;
        for (BoundPart bound : bounds) {
            if (same && bound.law != null && given.commandsAlike(bound.placed, before)) {
                bound.law = bound.law.atSpeed(given.speed());
            } else {
                Setting setting = given.setting(bound.placed);
                bound.law = from.law(bound.placed, setting);
                scaleDensity = Math.max(scaleDensity, setting.oil().liquidDensity());
            }
            swept += bound.law.delivery();
        }
        conditions = given;
        settled = true;
        massScale = scaleDensity * Math.max(swept, LEAST_SCALE);
    }

    /**
     * The equations as they are settled.
     *
     * @param laws  of the parts in their order
     * @param value as evaluated last
     * @param slope as evaluated last
     */
    @SuppressWarnings("ArrayRecordComponent") // handed from one method of this class to another, and kept by nobody
    record Settled(
            Part.Law[] laws,
            Conditions conditions,
            double massScale,
            double scaleDensity,
            double[] value,
            double[] slope) {}

    /** As they are settled now, to {@link #restore} later. */
    Settled settled() {
        Part.Law[] own = new Part.Law[bounds.length];
        for (int i = 0; i < own.length; i++) {
            own[i] = bounds[i].law;
        }
        return new Settled(own, conditions, massScale, scaleDensity, value.clone(), slope.clone());
    }

    /** Settles and evaluates them as they were, of the network that they have. */
    void restore(Settled before) {
        for (int i = 0; i < bounds.length; i++) {
            bounds[i].law = before.laws[i];
        }
        conditions = before.conditions;
        massScale = before.massScale;
        scaleDensity = before.scaleDensity;
        System.arraycopy(before.value, 0, value, 0, value.length);
        System.arraycopy(before.slope, 0, slope, 0, slope.length);
    }

    /** Settles what is given for a look aside that comes back for other networks alike: laws settled anew are kept. */
    void setAside(Conditions given) {
        compared.under(given);
        set(given, (placed, setting) -> compared.of(placed));
    }

    /** Evaluates all parts at the unknowns into {@link #value} and {@link #slope}. */
    void evaluate(double[] unknowns) {
        Arrays.fill(value, 0);
        Arrays.fill(slope, 0);
        for (BoundPart bound : bounds) {
            bound.read(unknowns);
            bound.law.evaluate(bound.reading, bound.stamp);
        }
    }

    /** Slopes by each unknown of the mass flow [kg/s] that leaves a node, held or not, into some of the parts. */
    double[] leaving(String node, Predicate<String> parts, double[] unknowns) {
        double[] slopes = new double[size()];
        for (BoundPart bound : bounds) {
            if (!parts.test(bound.placed.name())) {
                continue;
            }
            bound.read(unknowns);
            Stamp alone = bound.alone(bound.law);
            for (int port = 0; port < bound.placed.nodes().size(); port++) {
                for (int c = 0; c < bound.columns.length; c++) {
                    if (bound.columns[c] >= 0 && bound.placed.nodes().get(port).equals(node)) {
                        slopes[bound.columns[c]] += alone.slope(port, c);
                    }
                }
            }
        }
        return slopes;
    }

    /**
     * The equations of one network less those of another at the unknowns, under the conditions set. Both have this one's nodes and
     * parts; only parts that are not the same object in both are looked at.
     */
    @SuppressWarnings("ReferenceEquality") // the same object gives the same flow, others are looked at
    double[] difference(Network one, Network other, double[] unknowns) {
        compared.under(conditions);
        double[] difference = new double[size()];
        for (int i = 0; i < bounds.length; i++) {
            Placed here = one.parts().get(i);
            Placed there = other.parts().get(i);
            if (here != there) {
                bounds[i].read(unknowns);
                add(bounds[i], here, 1, difference);
                add(bounds[i], there, -1, difference);
            }
        }
        return difference;
    }

    private void add(BoundPart bound, Placed placed, double times, double[] sum) {
        Stamp alone = bound.alone(compared.of(placed));
        for (int r = 0; r < bound.rows.length; r++) {
            if (bound.rows[r] >= 0) {
                sum[bound.rows[r]] += times * alone.value(r);
            }
        }
    }

    /** Largest imbalance of any node, as evaluated last [kg/s]. */
    double imbalance() {
        double worst = 0;
        for (int i = 0; i < nodes; i++) {
            worst = Math.max(worst, Math.abs(value[i]));
        }
        return worst;
    }

    int size() {
        return names.size();
    }

    int nodes() {
        return nodes;
    }

    Form.Unknown state(int unknown) {
        return states[unknown - nodes];
    }

    Pattern pattern() {
        return pattern;
    }

    /** What a node's mass balance is judged against [kg/s]. */
    double massScale() {
        return massScale;
    }

    double scaleDensity() {
        return scaleDensity;
    }

    String name(int unknown) {
        return names.get(unknown);
    }

    Integer unknown(String name) {
        return unknownOf.get(name);
    }

    Network network() {
        return network;
    }

    Conditions conditions() {
        return conditions;
    }

    /** Visits each part with its reading at the unknowns. */
    void read(double[] unknowns, java.util.function.BiConsumer<Placed, LawAt> visitor) {
        for (BoundPart bound : bounds) {
            bound.read(unknowns);
            visitor.accept(bound.placed, new LawAt(bound.law, bound.reading, bound.form));
        }
    }

    /** What a part gives beside its flow at the unknowns; none for a part that is not there. */
    List<Measure.Reported> measures(String part, double[] unknowns) {
        return measuresAt(conditions.speed(), part, unknowns);
    }

    /** The same at another speed [rev/s], all other parts left as they are. */
    List<Measure.Reported> measuresAt(double speed, String part, double[] unknowns) {
        for (BoundPart bound : bounds) {
            if (bound.placed.name().equals(part)) {
                bound.read(unknowns);
                return bound.law.atSpeed(speed).measures(bound.reading);
            }
        }
        return List.of();
    }

    /** Whether all is settled for some conditions but for the speed. */
    boolean settledBut(Conditions given) {
        return settled && given.differsInSpeedOnly(conditions);
    }

    /** Takes over the own states of parts, by part and state; those that are not named there stay. */
    void takeStates(Map<String, Map<OwnState, Double>> from, double[] unknowns) {
        for (BoundPart bound : bounds) {
            List<Form.Unknown> own = bound.form.states();
            Map<OwnState, Double> given = own.isEmpty() ? null : from.get(bound.placed.name());
            for (int s = 0; given != null && s < own.size(); s++) {
                Double value = given.get(own.get(s).state());
                if (value != null) {
                    unknowns[bound.rows[bound.form.ports().size() + s]] = value;
                }
            }
        }
    }

    /** A law, what it reads and the form of both. */
    record LawAt(Part.Law law, Reading reading, Form form) {}
}

package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.network.Group;
import hotidle.network.Signal;
import hotidle.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A kind of part in the circuit language. Everything that the language knows of a kind stands in its one declaration.
 *
 * @param word  of the key {@code kind}
 * @param part  the solver's part
 * @param about what it is, in a sentence
 * @param group what its oil is booked under unless the file says otherwise
 * @param shape its keys, those that every part has among them
 * @param paths where oil can flow through it, as far as it was read without fault
 * @param needs notes what is missing of keys of which one or another is needed; asked of faulty parts too
 * @param rule  notes errors that concern several keys at once; asked of parts without fault
 * @param maker makes the solver's part
 * @param physics its law in a line, and where it comes from
 * @param facts what checks and commands need to know of it besides
 */
public record Kind(
        String word,
        Class<? extends Part> part,
        String about,
        Group group,
        Shape shape,
        Function<Attributes, List<FlowPath>> paths,
        Consumer<Attributes> needs,
        BiConsumer<Attributes, Context> rule,
        Maker maker,
        LawText physics,
        Facts facts) {

    /**
     * A way of oil through a part, or a node that it only reads.
     *
     * @param from   a node
     * @param to     a node; the same one where the part only reads it
     * @param ranges in which it is open, empty for all
     * @param oneWay whether it lets oil pass from the first to the second only, leaks aside
     * @param cell   the group of keys whose {@code ranges} say when it is open, where it has one
     */
    public record FlowPath(String from, String to, List<String> ranges, boolean oneWay, Optional<Attributes> cell) {
        public FlowPath {
            ranges = List.copyOf(ranges);
        }

        /** A way that is always open. */
        public static FlowPath between(String from, String to) {
            return new FlowPath(from, to, List.of(), false, Optional.empty());
        }
    }

    /**
     * A part ready to be placed.
     *
     * @param part    the solver's part
     * @param nodes   node at each port
     * @param signals source of each signal
     */
    public record MadePart(Part part, List<String> nodes, List<Signal> signals) {
        public MadePart {
            nodes = List.copyOf(nodes);
            signals = List.copyOf(signals);
        }
    }

    /** Makes the solver's part of what was read and found without fault. */
    public interface Maker {
        /**
         * Makes it.
         *
         * @param given  what was read, without fault
         * @param around the rest of the circuit
         */
        MadePart make(Attributes given, Context around);
    }

    /**
     * What a part may need of the rest of the circuit.
     *
     * @param parts           all parts without fault, by name
     * @param expansions      thermal expansion of each material [1/K]
     * @param permissibleLoad unit load of each bearing material [Pa]
     */
    public record Context(
            Map<String, Attributes> parts, Map<String, Double> expansions, Map<String, Double> permissibleLoad) {}

    /** A kind with two ports, {@code from} and {@code to}. */
    static Kind through(
            String word,
            Class<? extends Part> part,
            String about,
            Group group,
            String from,
            String to,
            List<Key> keys,
            ThroughMaker maker,
            LawText physics) {
        List<Key> all = new ArrayList<>();
        all.add(Key.node("from", from));
        all.add(Key.node("to", to));
        all.addAll(keys);
        return of(
                word,
                part,
                about,
                group,
                all,
                given -> paths(given, false),
                (given, around) -> new MadePart(
                        maker.make(given, around), List.of(given.word("from"), given.word("to")), List.of()),
                physics);
    }

    /** Makes a part whose two ports are {@code from} and {@code to}. */
    interface ThroughMaker {
        Part make(Attributes given, Context around);
    }

    /** Any kind. */
    static Kind of(
            String word,
            Class<? extends Part> part,
            String about,
            Group group,
            List<Key> keys,
            Function<Attributes, List<FlowPath>> paths,
            Maker maker,
            LawText physics) {
        List<Key> all = Stream.of(COMMON.subList(0, 1), keys, COMMON.subList(1, COMMON.size()))
                .flatMap(List::stream)
                .toList();
        return new Kind(
                word,
                part,
                about,
                group,
                new Shape(word, all),
                paths,
                given -> {},
                (given, around) -> {},
                maker,
                physics,
                Facts.NONE);
    }

    /** Whether keys elsewhere in the file can name it as this. */
    public boolean is(Names role) {
        return facts.role().filter(role::equals).isPresent();
    }

    /** Whether it is a pump: it raises pressure rather than losing it. */
    public boolean isPump() {
        return is(Names.PUMP_CHAMBER);
    }

    /** Whether it is applied in some ranges and holds torque there: a clutch, or a band. */
    public boolean isClutch() {
        return is(Names.CLUTCH);
    }

    /** Whether this of a duty, or of other parts, acts on it. */
    public boolean asks(DutyKey key) {
        return facts.alone().asks().contains(key);
    }

    /** Whether it carries a load on an oil film: it needs no pressure, and the film is what is asked about it. */
    public boolean carriesLoad() {
        return asks(DutyKey.LOAD);
    }

    /** The same kind; engine speed has an effect on it, or on what is asked of it. */
    Kind turning() {
        return with(new Facts(true, facts.stated(), facts.role(), facts.alone(), facts.drawn(), facts.example()));
    }

    /** The same kind, passing oil so. */
    Kind passing(Passing other) {
        return with(new Facts(
                facts.turns(), Optional.of(other), facts.role(), facts.alone(), facts.drawn(), facts.example()));
    }

    /** The same kind, named as this by keys elsewhere in the file. */
    Kind role(Names other) {
        return with(new Facts(
                facts.turns(), facts.stated(), Optional.of(other), facts.alone(), facts.drawn(), facts.example()));
    }

    /** The same kind, asked for so on its own. */
    Kind alone(Alone other) {
        return with(new Facts(facts.turns(), facts.stated(), facts.role(), other, facts.drawn(), facts.example()));
    }

    /** The same kind, with what may stand behind its word in the command {@code hotidle part}. */
    Kind example(String words) {
        return with(new Facts(facts.turns(), facts.stated(), facts.role(), facts.alone(), facts.drawn(), words));
    }

    /** The same kind with a symbol whose lines are the paths of oil through it. */
    Kind drawn(GraphicSymbol symbol) {
        return drawn(PartFigure.Drawn.by(symbol));
    }

    /** The same kind, drawn so. */
    Kind drawn(PartFigure.Drawn other) {
        return with(new Facts(facts.turns(), facts.stated(), facts.role(), facts.alone(), other, facts.example()));
    }

    /** A part of it as it is drawn, of what was read without fault. */
    public PartFigure figure(Attributes given) {
        return facts.drawn().of(given, paths.apply(given));
    }

    private Kind with(Facts other) {
        return new Kind(word, part, about, group, shape, paths, needs, rule, maker, physics, other);
    }

    /** The same kind, passing oil one way only. */
    Kind oneWay() {
        return new Kind(
                word, part, about, group, shape, given -> paths(given, true), needs, rule, maker, physics, facts);
    }

    /** The same kind with a rule that concerns several keys at once. */
    Kind rule(BiConsumer<Attributes, Context> other) {
        return new Kind(word, part, about, group, shape, paths, needs, other, maker, physics, facts);
    }

    /** The same kind with keys of which one or another is needed. */
    Kind needs(Consumer<Attributes> other) {
        return new Kind(word, part, about, group, shape, paths, other, rule, maker, physics, facts);
    }

    /** Notes all errors that concern several keys at once, as far as it was read without fault. */
    public void check(Attributes given, Context around) {
        needs.accept(given);
        if (!given.broken()) {
            rule.accept(given, around);
        }
    }

    private static List<FlowPath> paths(Attributes given, boolean oneWay) {
        return given.has("from") && given.has("to")
                ? List.of(new FlowPath(given.word("from"), given.word("to"), List.of(), oneWay, Optional.empty()))
                : List.of();
    }

    /** The keys that every part has. */
    public static final List<Key> COMMON = List.of(
            Key.of("kind", new Type.FreeText(), "what sort of part it is"),
            Key.of(
                            "like",
                            new Type.Name(Names.PART),
                            "a part whose keys it has too, but for those written here; builds change it on its own")
                    .optional(),
            Key.text("about", "what it is, in your own words"),
            Key.of("region", new Type.Name(Names.REGION), "whose temperature its oil has")
                    .byDefault("sump", "most parts lie in or near the pan (assumed)"),
            Key.choice(
                            "group",
                            "what its oil is booked under in the oil budget",
                            Stream.of(Group.values()).map(Group::label).toArray(String[]::new))
                    .optional(),
            Key.text("source", "where its dimensions come from"));
}

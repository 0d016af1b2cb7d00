package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Value;
import hotidle.network.Group;
import hotidle.part.Selector;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The words of a {@link Selector}. */
final class SelectorKind {

    private SelectorKind() {}

    private static final Shape PASSAGE = new Shape(
            "passage",
            List.of(
                    Key.of("from", new Type.FreeText(), "one of the ports"),
                    Key.of("to", new Type.FreeText(), "another of the ports"),
                    OrificeKind.diameter(),
                    Key.of("ranges", new Type.NameList(Names.RANGE), "ranges in which it is open")));

    private static final Alone ALONE = Alone.AS_IN_A_CIRCUIT
            .without("its ports are those that its passages name", "ports")
            .adding(SelectorKind::openAlways);

    static final Kind KIND = Kind.of(
                    "selector",
                    Selector.class,
                    "Manual and shift valves as a table: which ports are joined in which range. A port that is to be empty is joined to"
                            + " the sump.",
                    Group.VALVE_BODY,
                    List.of(
                            Key.of("ports", new Type.Ports(), "its ports and their nodes"),
                            Key.of("passages", new Type.NamedGroups(PASSAGE), "passages that it opens"),
                            FitKeys.bore().neededWhere("valve or land is given"),
                            FitKeys.valve().neededWhere("a bore is given"),
                            Key.quantity(
                                            "land",
                                            Dimension.LENGTH,
                                            "length of the land between two ports that shuts a passage")
                                    .neededWhere("a bore is given")
                                    .allowed("0.01 mm", "1 m")
                                    .usual("0.5 mm", "60 mm")
                                    .measured("depth gauge or calliper: where land and bore overlap"),
                            FitKeys.eccentricity(),
                            FitKeys.material("bore-material", "the bore", "aluminium"),
                            FitKeys.material("valve-material", "the valve", "steel"),
                            FitKeys.measuredAt()),
                    SelectorKind::paths,
                    SelectorKind::make,
                    physics())
            .example("passages.feed.from=in passages.feed.to=out passages.feed.diameter=3mm --at in=150psi --at "
                    + "out=140psi")
            .passing(Passing.BY_RANGE)
            .alone(ALONE)
            .needs(SelectorKind::needs)
            .rule((given, around) -> check(given))
            .drawn(ValveFigures::selector);

    private static LawText physics() {
        return LawText.of(
                        "each open passage q = 0.7·A·√(2·Δp/ρ), creeping flow by Sampson; with a bore each shut one leaks as an annular gap",
                        "H. E. Merritt, Hydraulic Control Systems, 1967, §3-4 (from memory); 0.7 for a passage that flows full (common practice);"
                                + " the gap: " + LawText.SLOT)
                .checkedIn("Orifice");
    }

    private static List<Kind.FlowPath> paths(Attributes given) {
        Map<String, String> nodes = given.nodes("ports");
        List<Kind.FlowPath> paths = new ArrayList<>();
        nodes.values().forEach(node -> paths.add(Kind.FlowPath.between(node, node)));
        for (Attributes passage : given.groups("passages").values()) {
            String from = nodes.get(passage.text("from"));
            String to = nodes.get(passage.text("to"));
            if (from != null && to != null) {
                paths.add(new Kind.FlowPath(from, to, passage.words("ranges"), false, Optional.of(passage)));
            }
        }
        return paths;
    }

    /** A land leaks past bore and valve over its length: all three or none. */
    private static void needs(Attributes given) {
        for (String key : LAND) {
            if (given.lacks(key) && LAND.stream().anyMatch(given::has)) {
                given.missing(
                        key,
                        "a shut passage leaks past its land by bore, valve and length of the land",
                        "add '" + key + ": ...' as measured, or leave out " + String.join(", ", LAND));
            }
        }
    }

    private static final List<String> LAND = List.of("bore", "valve", "land");

    private static void check(Attributes given) {
        if (LAND.stream().allMatch(given::has)) {
            ValveFitsItsBore.check(given, "bore", "valve");
        }
        Set<String> ports = given.nodes("ports").keySet();
        for (Attributes passage : given.groups("passages").values()) {
            for (String key : List.of("from", "to")) {
                String port = passage.word(key);
                if (!ports.contains(port)) {
                    String message = "has " + key + " '" + port + "', which is no port of it";
                    passage.error(ProblemCode.NO_PORT, key, message, "", Nearest.mend(port, ports));
                }
            }
        }
    }

    private static Kind.MadePart make(Attributes given, Kind.Context around) {
        List<String> ports = List.copyOf(given.nodes("ports").keySet());
        List<Selector.Connection> links = new ArrayList<>();
        given.groups("passages").forEach((name, passage) -> {
            int from = ports.indexOf(passage.word("from"));
            int to = ports.indexOf(passage.word("to"));
            Set<String> ranges = Set.copyOf(passage.words("ranges"));
            links.add(new Selector.Connection(name, from, to, passage.number("diameter"), ranges));
        });
        Optional<Selector.Land> land = given.has("bore")
                ? Optional.of(new Selector.Land(
                        FitKeys.fit(given, around, "bore", "valve"),
                        given.number("land"),
                        given.number("eccentricity")))
                : Optional.empty();
        return new Kind.MadePart(
                new Selector(ports, links, land),
                List.copyOf(given.nodes("ports").values()),
                List.of());
    }

    /** Its ports are the ends of its passages, and these are open in the one range there is. */
    private static Value.Entries openAlways(Value.Entries written) {
        Value passages = written.entry("passages").map(Value.Entry::value).orElse(null);
        if (!(passages instanceof Value.Entries all)) {
            return Alone.put(written, "ports", new Value.Entries(List.of(), Place.START));
        }
        Map<String, Value.Entry> ports = new LinkedHashMap<>();
        List<Value.Entry> open = new ArrayList<>();
        for (Value.Entry passage : all.entries()) {
            Value value = passage.value();
            if (value instanceof Value.Entries keys) {
                for (String end : List.of("from", "to")) {
                    if (keys.entry(end).map(Value.Entry::value).orElse(null) instanceof Value.Text port) {
                        String name = port.text();
                        ports.putIfAbsent(name, new Value.Entry(name, Place.START, Alone.text(name)));
                    }
                }
                value = keys.entry("ranges").isPresent() ? keys : Alone.put(keys, "ranges", Alone.text(Alone.RANGE));
            }
            open.add(new Value.Entry(passage.key(), passage.keyPlace(), value));
        }
        Value.Entries with = Alone.put(written, "ports", new Value.Entries(List.copyOf(ports.values()), Place.START));
        return Alone.put(with, "passages", new Value.Entries(open, all.place()));
    }
}

package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Value;
import hotidle.geartrain.Coupling;
import hotidle.geartrain.GearTrain;
import hotidle.geartrain.PlanetarySet;
import hotidle.geartrain.PlanetarySet.Central;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The gear train: keys, and how it is read. */
public final class GearSection {

    private GearSection() {}

    /** The words for how the planets lie. */
    static final String SINGLE = "single";

    static final String PAIRED = "paired";
    static final String RAVIGNEAUX = "ravigneaux";

    private static final String TWO_MEMBERS = "the two members that it joins, or one and the case";

    private static final Shape SET = new Shape(
            "planetary set",
            List.of(
                    Key.choice(
                                    "pinions",
                                    "single: one row between sun and ring; paired: two that mesh, one on the sun, one on the ring;"
                                            + " ravigneaux: long ones between sun and ring, short ones between the short sun and those",
                                    SINGLE,
                                    PAIRED,
                                    RAVIGNEAUX)
                            .neededWhere("the set is no simple one")
                            .byDefault(SINGLE, "a simple set (assumed)"),
                    member("sun", "member that carries the sun; of a Ravigneaux set the one on the long pinions"),
                    teeth("sun-teeth", "teeth of the sun"),
                    member("short-sun", "member that carries the sun on the short pinions")
                            .neededWhere("pinions is ravigneaux"),
                    teeth("short-sun-teeth", "teeth of that sun").neededWhere("pinions is ravigneaux"),
                    member("ring", "member that carries the ring"),
                    teeth("ring-teeth", "teeth of the ring"),
                    member("carrier", "member that carries the pinions"),
                    teeth("pinion-teeth", "teeth of a pinion between sun and ring, to check that it fits")
                            .optional(),
                    Key.count(
                                    "pinion-count",
                                    "pinions, or pairs of them, round the set, to check that they can be put in")
                            .optional()
                            .allowed("1", "12"),
                    Key.quantity(
                                    "mesh-efficiency",
                                    Dimension.RATIO,
                                    "that of its meshes, where it is another than the train's")
                            .optional()
                            .allowed("80 %", "100 %")));

    private static final Shape JOIN = new Shape(
            "clutch",
            List.of(Key.of(
                    "joins",
                    new Type.NameList(Names.MEMBER),
                    TWO_MEMBERS + "; first the one that carries its piston or is its drum")));

    private static final Shape ONE_WAY = new Shape(
            "one-way clutch",
            LinkKeys.ofOneWay(Key.of(
                    "joins",
                    new Type.NameList(Names.MEMBER),
                    TWO_MEMBERS + "; the first can turn faster than the second, in the turbine's sense, not slower")));

    private static final Shape SHAFT =
            new Shape("shaft", LinkKeys.ofShaft(Key.of("joins", new Type.NameList(Names.MEMBER), TWO_MEMBERS)));

    static final Shape TRAIN = new Shape(
            "gear train",
            List.of(
                    member("input", "member that the turbine drives"),
                    member("output", "member that drives the vehicle"),
                    Key.quantity("mesh-efficiency", Dimension.RATIO, "power out over power in of one mesh")
                            .byDefault("99 %", "a pair of teeth loses 0.5 to 2 % under load (common practice)")
                            .allowed("80 %", "100 %")
                            .usual("97 %", "100 %"),
                    Key.of(
                            "sets",
                            new Type.NamedGroups(SET),
                            "planetary sets; those that name the same member share it"),
                    Key.of("clutches", new Type.NamedGroups(JOIN), "what each clutch, brake or band of the parts joins")
                            .neededWhere("a range applies one"),
                    Key.of("one-way-clutches", new Type.NamedGroups(ONE_WAY), "one-way clutches")
                            .neededWhere("a range leaves the output free without one"),
                    Key.of(
                                    "ratings",
                                    new Type.NamedGroups(LinkKeys.RATING),
                                    "what else bears a stated torque: planet pins, case, pump drive")
                            .optional(),
                    Key.of("shafts", new Type.NamedGroups(SHAFT), "shafts and what else joins two members for good")
                            .neededWhere("input or output stands on no set")));

    /** Sections that name what carries, with the keys of it that a build may change. */
    public static final Map<String, Shape> CARRYING = Map.of(
            "shafts", LinkKeys.strengthOf(SHAFT),
            "one-way-clutches", LinkKeys.strengthOf(ONE_WAY),
            "ratings", LinkKeys.strengthOf(LinkKeys.RATING));

    private static Key member(String name, String meaning) {
        return Key.of(name, new Type.Name(Names.MEMBER), meaning);
    }

    private static Key teeth(String name, String meaning) {
        return Key.count(name, meaning).allowed("8", "400").usual("12", "200");
    }

    /** The gear train of a file with what carries in it; empty where it has none or it is faulty. */
    public static Optional<Transmission.Gears> gears(Attributes file) {
        return file.group("gearsets").flatMap(GearSection::ofGroup);
    }

    /** The same with what a build changes of it. */
    public static Optional<Transmission.Gears> gears(ShapeReader reader, Value.Entry changed) {
        return ofGroup(reader.read(TRAIN, changed.key(), changed));
    }

    private static Optional<Transmission.Gears> ofGroup(Attributes group) {
        return of(group)
                .flatMap(train -> LinkKeys.links(group, train).map(links -> new Transmission.Gears(train, links)));
    }

    private static Optional<GearTrain> of(Attributes train) {
        List<PlanetarySet> sets = new ArrayList<>();
        for (Attributes set : train.groups("sets").values()) {
            needsShortSun(set);
            if (!set.broken()) {
                sets.add(set(set, train.numberIf("mesh-efficiency").orElse(1)));
            }
        }
        List<Coupling> couplings = new ArrayList<>();
        couple(couplings, train.groups("shafts"), Coupling.Kind.SHAFT);
        couple(couplings, train.groups("clutches"), Coupling.Kind.CLUTCH);
        couple(couplings, train.groups("one-way-clutches"), Coupling.Kind.ONE_WAY);
        if (train.groups("one-way-clutches").size() > GearTrain.MOST_ONE_WAYS) {
            train.error(
                    ProblemCode.TOO_MANY_ONE_WAYS,
                    "one-way-clutches",
                    "has too many one-way clutches",
                    "at most " + GearTrain.MOST_ONE_WAYS,
                    "");
        }
        if (!train.broken()) {
            notTwo(
                    train,
                    List.of(train.word("input"), train.word("output")),
                    "input",
                    "needs an input and an output, two members that turn");
        }
        return train.broken()
                ? Optional.empty()
                : Optional.of(new GearTrain(train.word("input"), train.word("output"), sets, couplings));
    }

    private static void needsShortSun(Attributes set) {
        if (set.text("pinions").equals(RAVIGNEAUX)) {
            for (String key : List.of("short-sun", "short-sun-teeth")) {
                if (!set.stands(key)) {
                    set.missing(
                            key,
                            "the short pinions of a Ravigneaux set mesh with a sun of their own",
                            "add '" + key + ": ...'");
                }
            }
        }
    }

    private static void couple(List<Coupling> couplings, Map<String, Attributes> groups, Coupling.Kind kind) {
        for (Attributes given : groups.values()) {
            List<String> joined = given.words("joins");
            if (!given.broken()) {
                notTwo(given, joined, "joins", "does not join two members");
            }
            if (!given.broken()) {
                couplings.add(new Coupling(given.name(), kind, joined.get(0), joined.get(1)));
            }
        }
    }

    private static void notTwo(Attributes given, List<String> members, String key, String says) {
        boolean ends = key.equals("input") && members.contains(Coupling.CASE);
        if (ends || members.size() != 2 || members.get(0).equals(members.get(1))) {
            given.error(
                    ProblemCode.NOT_TWO_MEMBERS,
                    key,
                    says,
                    ends ? "the case does not turn" : "a member is joined with another one, or with the case",
                    "");
        }
    }

    private static PlanetarySet set(Attributes set, double whole) {
        double efficiency = set.numberIf("mesh-efficiency").orElse(whole);
        Central sun = new Central(set.word("sun"), set.count("sun-teeth"));
        Central ring = new Central(set.word("ring"), set.count("ring-teeth"));
        String carrier = set.word("carrier");
        return switch (set.text("pinions")) {
            case PAIRED -> PlanetarySet.paired(set.name(), sun, ring, carrier, efficiency);
            case RAVIGNEAUX ->
                PlanetarySet.ravigneaux(
                        set.name(),
                        sun,
                        new Central(set.word("short-sun"), set.count("short-sun-teeth")),
                        ring,
                        carrier,
                        efficiency);
            default -> PlanetarySet.single(set.name(), sun, ring, carrier, efficiency);
        };
    }
}

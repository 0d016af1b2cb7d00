package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.Solenoid;
import java.util.List;

/** The words of a {@link Solenoid}. */
final class SolenoidKind {

    private SolenoidKind() {}

    static final Kind KIND = Kind.of(
                    "solenoid",
                    Solenoid.class,
                    "A pressure-control solenoid: it makes a pilot pressure from its supply.",
                    Group.SOLENOIDS,
                    List.of(
                            Key.node("supply", "where it is fed from"),
                            Key.node("pilot", "where its pilot pressure goes"),
                            Key.node("exhaust", "where it exhausts to"),
                            Key.choice(
                                            "type",
                                            "regulated opens the feed as it shuts the exhaust, both in part at once, so that oil passes all the time; bleed has a fixed feed and moves the exhaust",
                                            "regulated",
                                            "bleed")
                                    .byDefault("regulated", "assumed"),
                            hole("feed-diameter", "diameter of the feed opening"),
                            hole("exhaust-diameter", "diameter of the exhaust opening"),
                            droop("fall of the pilot pressure over the full stroke, which is met at half of it")),
                    SolenoidKind::paths,
                    (given, around) -> new Kind.MadePart(
                            new Solenoid(
                                    given.number("feed-diameter"),
                                    given.number("exhaust-diameter"),
                                    given.number("droop"),
                                    given.word("type").equals("bleed")),
                            List.of(given.word("supply"), given.word("pilot"), given.word("exhaust")),
                            List.of()),
                    physics())
            .passing(Passing.BY_STATE)
            .example("feed-diameter=0.8mm exhaust-diameter=1.2mm command=60psi --at supply=100psi")
            .role(Names.SOLENOID)
            .alone(Alone.asking(DutyKey.COMMAND).finding("pilot"))
            .drawn((given, paths) -> ValveFigures.piloting(GraphicSymbol.SOLENOID_VALVE, paths));

    private static LawText physics() {
        return LawText.of(
                "pilot = command − droop·(y − ½); feed and exhaust q = Cd·y·A·√(2·Δp/ρ), Cd of a sharp edge",
                "openings: H. E. Merritt, Hydraulic Control Systems, 1967, §3-4 (from memory); droop: our own form");
    }

    static Key droop(String meaning) {
        return Key.quantity("droop", Dimension.PRESSURE, meaning)
                .byDefault("0.3 bar", "assumed")
                .allowed("1 Pa", "100 bar")
                .usual("0.01 bar", "2 bar");
    }

    static Key hole(String name, String meaning) {
        return Key.quantity(name, Dimension.LENGTH, meaning)
                .allowed("0.01 mm", "50 mm")
                .usual("0.3 mm", "5 mm");
    }

    static List<Kind.FlowPath> paths(Attributes given) {
        return given.has("supply") && given.has("pilot") && given.has("exhaust")
                ? List.of(
                        Kind.FlowPath.between(given.word("supply"), given.word("pilot")),
                        Kind.FlowPath.between(given.word("pilot"), given.word("exhaust")))
                : List.of();
    }
}

package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.PumpInlet;
import java.util.List;
import java.util.OptionalDouble;

/** The words of a {@link PumpInlet}. */
final class PumpInletKind {

    private PumpInletKind() {}

    static final Kind KIND = Kind.of(
                    "pump-inlet",
                    PumpInlet.class,
                    "The pump's inlet: where the pressure in the spaces between the teeth falls to that at which air comes out, the"
                            + " chambers fill in part.",
                    Group.PUMP,
                    List.of(
                            Key.node("node", "the node at which the chambers draw"),
                            Key.quantity(
                                            "port-area",
                                            Dimension.AREA,
                                            "narrowest area of the port, all chambers together")
                                    .byDefault("8 cm2", "2 m/s with 20 cm3/rev at 5000 rpm (assumed)")
                                    .allowed("1 mm2", "1000 cm2")
                                    .usual("1 cm2", "30 cm2"),
                            Key.quantity("port-loss", Dimension.RATIO, "velocity heads that the port takes")
                                    .byDefault(
                                            "1.5",
                                            "a sharp-edged entry 0.5, and 1 for the speed itself (common practice)")
                                    .allowed("0", "20")
                                    .usual("0.5", "5"),
                            Key.quantity(
                                            "ram-recovery",
                                            Dimension.RATIO,
                                            "share of the head of the teeth's speed that presses oil into them")
                                    .byDefault("10 %", "not known, little of it (assumed)")
                                    .allowed("0 %", "100 %")),
                    given -> given.has("node")
                            ? List.of(Kind.FlowPath.between(given.word("node"), given.word("node")))
                            : List.of(),
                    (given, around) -> new Kind.MadePart(inlet(given, around), List.of(given.word("node")), List.of()),
                    physics())
            .turning()
            .passing(Passing.LEAK)
            .example("--at node=-0.2bar")
            .role(Names.PUMP_INLET)
            .drawn(GraphicSymbol.NONE);

    private static LawText physics() {
        return LawText.of(
                        "full while p − ρ·n²·(ζ/2·(V/A)² + 2·π²·(ra² − rf² − κ·ra²)) is above the pressure at which air is released, part"
                                + " filled at it",
                        "port: B. S. Massey, Mechanics of Fluids, §7.6 (from memory); teeth: oil that turns as a solid body (our own form)")
                .checkedIn("Pump");
    }

    /** Height of a tooth over its module: 1 and 1.25 times, ISO 53 (from memory). */
    private static final double TOOTH = 2.25;

    /** Height of a tooth over its gear's diameter where no module is given (assumed). */
    private static final double STOUT = 0.1;

    /** By the chambers that draw at it; those that are faulty are left out, as nothing is then solved. */
    private static PumpInlet inlet(Attributes given, Kind.Context around) {
        double swept = 0;
        double spun = 0;
        for (Attributes chamber : around.parts().values()) {
            if (chamber.text("inlet").equals(given.name()) && !chamber.broken()) {
                swept += PumpKeys.displacement(chamber, OptionalDouble.of(geometry(chamber)));
                spun = Math.max(spun, spun(chamber, given.number("ram-recovery")));
            }
        }
        double travelled = swept / given.number("port-area");
        return new PumpInlet(given.number("port-loss") / 2 * travelled * travelled, spun);
    }

    private static double geometry(Attributes chamber) {
        OptionalDouble displaced = chamber.has("driven-teeth")
                ? PumpChamberKind.geometry(chamber)
                : chamber.has("ring-teeth") ? CrescentPumpKind.geometry(chamber) : VanePumpKind.geometry(chamber);
        return displaced.orElse(0);
    }

    /** What the fastest spaces of a chamber spin, 2·π²·(ra² − rf² − κ·ra²) times the square of their speed over the engine's [m²]. */
    private static double spun(Attributes chamber, double ram) {
        double tip = chamber.number("tip-diameter");
        if (chamber.has("greatest-eccentricity")) {
            return spun(chamber.number("ring-diameter"), tip, 1, ram);
        }
        double height = chamber.has("module") ? TOOTH * chamber.number("module") : STOUT * tip;
        double own = spun(tip, tip - 2 * height, 1, ram);
        OptionalDouble ratio = GearKeys.ratio(chamber, "drive-teeth", "driven-teeth");
        if (ratio.isEmpty() || !chamber.has("driven-tip-diameter")) {
            return own;
        }
        double driven = chamber.number("driven-tip-diameter");
        return Math.max(own, spun(driven, driven - 2 * height, ratio.getAsDouble(), ram));
    }

    private static double spun(double outer, double inner, double ratio, double ram) {
        double root = Math.max(inner, 0);
        double squares = Math.max(outer * outer * (1 - ram) - root * root, 0);
        return Math.PI * Math.PI / 2 * squares * ratio * ratio;
    }
}

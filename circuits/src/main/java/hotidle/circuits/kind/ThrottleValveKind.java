package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.part.ThrottleSpring;
import java.util.List;

/** The words of a throttle valve worked by cable or lever, a {@link hotidle.part.SignalValve}. */
final class ThrottleValveKind {

    private ThrottleValveKind() {}

    static final Kind KIND = SignalKeys.kind(
                    "throttle-valve",
                    "A throttle valve: cable or lever presses its spring together, and it makes a pressure that rises with the"
                            + " throttle.",
                    DutyKey.THROTTLE,
                    List.of(
                            Key.quantity("spring-rate", Dimension.SPRING_RATE, "rate of the spring")
                                    .allowed("0.001 N/mm", "1000 N/mm")
                                    .usual("0.2 N/mm", "50 N/mm"),
                            Key.quantity("preload", Dimension.FORCE, "force of the spring with the throttle shut")
                                    .allowed("-1000 N", "10000 N")
                                    .usual("0 N", "100 N"),
                            Key.quantity(
                                            "travel",
                                            Dimension.LENGTH,
                                            "how much shorter cable or lever press the spring from shut to full throttle")
                                    .allowed("0.1 mm", "100 mm")
                                    .usual("2 mm", "30 mm"),
                            Key.quantity(
                                            "cable-offset",
                                            Dimension.LENGTH,
                                            "how much further the cable presses than it should; below zero where it is slack")
                                    .byDefault("0 mm", "a cable set as it should be (assumed)")
                                    .allowed("-50 mm", "50 mm")
                                    .usual("-5 mm", "5 mm")),
                    ThrottleValveKind::demand,
                    LawText.of(
                            "pressure·area = preload + spring-rate·(travel·throttle + cable-offset), less the droop; openings as of a"
                                    + " solenoid",
                            "balance of forces, no law of its own; openings: H. E. Merritt, Hydraulic Control Systems, 1967, §3-4"
                                    + " (from memory); droop: our own form"))
            .example("feed-diameter=1.2mm exhaust-diameter=1.4mm area=55mm2 spring-rate=4N/mm preload=4N travel=11mm"
                    + " throttle=50% --at supply=100psi");

    private static ThrottleSpring demand(Attributes given) {
        return new ThrottleSpring(
                given.number("area"),
                given.number("preload"),
                given.number("spring-rate"),
                given.number("travel"),
                given.number("cable-offset"));
    }
}

package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.part.Diaphragm;
import java.util.List;

/** The words of a throttle valve worked by manifold vacuum, a {@link hotidle.part.SignalValve}. */
final class VacuumModulatorKind {

    private VacuumModulatorKind() {}

    static final Kind KIND = SignalKeys.kind(
                    "vacuum-modulator",
                    "A modulator valve with its vacuum capsule: the capsule's spring pushes it, manifold vacuum pulls against that, so"
                            + " that its pressure rises as the throttle opens.",
                    DutyKey.VACUUM,
                    List.of(
                            Key.quantity("diaphragm-area", Dimension.AREA, "effective area of the diaphragm")
                                    .allowed("10 mm2", "1000 cm2")
                                    .usual("3 cm2", "60 cm2"),
                            Key.quantity("spring", Dimension.FORCE, "force of the capsule's spring without vacuum")
                                    .allowed("0.1 N", "10000 N")
                                    .usual("10 N", "400 N"),
                            Key.quantity(
                                            "vacuum-share",
                                            Dimension.RATIO,
                                            "share of the manifold's vacuum that comes to the diaphragm: 0 % with the hose off or the"
                                                    + " diaphragm torn")
                                    .byDefault("100 %", "hose and diaphragm tight (assumed)")
                                    .allowed("0 %", "100 %")),
                    VacuumModulatorKind::demand,
                    LawText.of(
                            "pressure·area = spring − manifold-vacuum·vacuum-share·diaphragm-area, less the droop; openings as of a"
                                    + " solenoid",
                            "balance of forces, no law of its own; openings: H. E. Merritt, Hydraulic Control Systems, 1967, §3-4"
                                    + " (from memory); droop: our own form"))
            .example("feed-diameter=1.2mm exhaust-diameter=1.4mm area=60mm2 diaphragm-area=12cm2 spring=80N"
                    + " manifold-vacuum=15inHg --at supply=100psi");

    private static Diaphragm demand(Attributes given) {
        return new Diaphragm(
                given.number("area"),
                given.number("spring"),
                given.number("diaphragm-area"),
                given.number("vacuum-share"));
    }
}

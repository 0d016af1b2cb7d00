package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.SealingRing;
import java.util.List;

/** The words of a {@link SealingRing}. */
final class SealingRingKind {

    private SealingRingKind() {}

    static final Kind KIND = Kind.through(
                    "sealing-ring",
                    SealingRing.class,
                    "Sealing rings between a shaft and a drum; they leak at the joint and past their side.",
                    Group.RINGS,
                    "side of higher pressure",
                    "side of lower pressure",
                    List.of(
                            FaceGapKind.diameter("diameter", "diameter of the bore that the ring runs in"),
                            Key.quantity("width", Dimension.LENGTH, "width of the ring along the shaft")
                                    .allowed("0.2 mm", "30 mm")
                                    .usual("1 mm", "5 mm"),
                            Key.size("end-gap", "gap at the joint, in its bore")
                                    .allowed("1 um", "10 mm")
                                    .usual("0.02 mm", "1.5 mm")
                                    .measured("feeler, ring pushed square into its bore"),
                            Key.size("radial-clearance", "between shaft and bore beside the ring")
                                    .allowed("1 um", "5 mm")
                                    .usual("0.03 mm", "0.6 mm")
                                    .measured("bore less shaft, halved"),
                            Key.size("side-gap", "between the side that seals and the wall of the groove")
                                    .byDefault("3 um", "roughness of ring and groove (assumed)")
                                    .allowed("0.01 um", "1 mm")
                                    .usual("0.5 um", "0.1 mm")
                                    .measured(
                                            "feeler between ring and groove is the side clearance, not this; judge it by wear marks"),
                            Key.quantity("contact", Dimension.LENGTH, "radial height on which the ring's side seals")
                                    .allowed("0.05 mm", "20 mm")
                                    .usual("0.5 mm", "5 mm"),
                            Key.count("count", "rings that leak side by side")
                                    .byDefault("1", "one ring (assumed)")
                                    .allowed("1", "8")),
                    (given, around) -> new SealingRing(
                            given.number("diameter"),
                            given.number("width"),
                            given.number("end-gap"),
                            given.number("radial-clearance"),
                            given.number("side-gap"),
                            given.number("contact"),
                            given.count("count")),
                    physics())
            .example("diameter=60mm width=2.4mm end-gap=0.2mm radial-clearance=0.1mm contact=2mm --drop 150psi")
            .passing(Passing.LEAK);

    private static LawText physics() {
        return LawText.of(
                "joint, and clearance then side gap, side by side, each q = w·h³·Δp/(12·μ·L) with the loss of entry and exit",
                LawText.SLOT);
    }
}

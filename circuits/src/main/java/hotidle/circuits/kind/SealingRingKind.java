package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.Fit;
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
                                    .allowed("1", "8"),
                            FitKeys.material("bore-material", "the bore", "steel"),
                            FitKeys.material("shaft-material", "the shaft", "steel"),
                            FitKeys.material("ring-material", "the ring", "cast-iron"),
                            FitKeys.measuredAt()),
                    SealingRingKind::make,
                    physics())
            .example("diameter=60mm width=2.4mm end-gap=0.2mm radial-clearance=0.1mm contact=2mm --drop 150psi")
            .passing(Passing.LEAK)
            .drawn(GraphicSymbol.SEALING_RING);

    private static SealingRing make(Attributes given, Kind.Context around) {
        double bore = given.number("diameter");
        double circumference = Math.PI * bore;
        return new SealingRing(
                fit(given, around, bore, bore - 2 * given.number("radial-clearance"), "shaft-material"),
                fit(given, around, circumference, circumference - given.number("end-gap"), "ring-material"),
                given.number("width"),
                given.number("side-gap"),
                given.number("contact"),
                given.count("count"));
    }

    /** What the bore leaves to a piece in it. */
    private static Fit fit(Attributes given, Kind.Context around, double outer, double inner, String material) {
        return new Fit(
                outer,
                inner,
                around.expansions().get(given.word("bore-material")),
                around.expansions().get(given.word(material)),
                given.number("measured-at"));
    }

    private static LawText physics() {
        return LawText.of(
                        "joint, a duct with four walls, end gap and clearance as they are when warm; beside it clearance then side gap,"
                                + " each q = w·h³·Δp/(12·μ·L); all with the loss of entry and exit",
                        "joint: J. Boussinesq, 1868, in R. K. Shah, A. L. London, Laminar Flow Forced Convection in Ducts, 1978, ch. VII"
                                + " (from memory); side: " + LawText.SLOT)
                .checkedIn("Gap");
    }
}

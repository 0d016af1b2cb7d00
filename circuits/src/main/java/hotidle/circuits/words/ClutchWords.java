package hotidle.circuits.words;

import hotidle.circuits.shape.Given;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.law.Channel;
import hotidle.network.Group;
import hotidle.part.Clutch;
import java.util.List;
import java.util.Map;

/** The words of a {@link Clutch}. */
final class ClutchWords {

    private ClutchWords() {}

    static final Kind KIND = Kind.through(
                    "clutch",
                    Clutch.class,
                    "A multi-plate clutch: what its piston seals let by, and the torque that it holds.",
                    Group.RINGS,
                    "the space behind its piston",
                    "the sump",
                    List.of(
                            Key.quantity("piston-area", Dimension.AREA, "area of the piston")
                                    .allowed("0.1 cm2", "5000 cm2")
                                    .usual("20 cm2", "300 cm2")
                                    .measured("pi/4 times outer less inner seal diameter, each squared"),
                            Key.quantity(
                                            "return-force",
                                            Dimension.FORCE,
                                            "force of the return spring with the clutch applied")
                                    .allowed("0 N", "20000 N")
                                    .usual("100 N", "3000 N"),
                            Key.count("surfaces", "rubbing surfaces")
                                    .allowed("1", "40")
                                    .usual("2", "16"),
                            FaceGapWords.diameter("lining-inner-diameter", "inside diameter of the lining"),
                            FaceGapWords.diameter("lining-outer-diameter", "outside diameter of the lining"),
                            friction(),
                            FaceGapWords.diameter("seal-diameter", "diameter of the piston's seal"),
                            Key.size("seal-gap", "radial gap that leaks as much as the seals do")
                                    .allowed("0.01 um", "1 mm")
                                    .usual("0.5 um", "60 um"),
                            Key.quantity("seal-length", Dimension.LENGTH, "length of the seal along the flow")
                                    .byDefault("2 mm", "a lip or square ring (assumed)")
                                    .allowed("0.05 mm", "50 mm")
                                    .usual("0.5 mm", "10 mm"),
                            Key.quantity(
                                            "bleed",
                                            Dimension.LENGTH,
                                            "diameter of a bleed hole in piston or drum, 0 mm for none")
                                    .byDefault("0 mm", "none (assumed)")
                                    .allowed("0 mm", "10 mm")
                                    .usual("0 mm", "1.5 mm")),
                    (given, around) -> make(given),
                    physics())
            .rule((given, around) -> FaceGapWords.rising(given, "lining-inner-diameter", "lining-outer-diameter"));

    private static Physics physics() {
        return Physics.of(
                        "static torque = μ·z·⅔·(ro³ − ri³)/(ro² − ri²)·(p·A − F); seals leak as an annular gap, a bleed as a hole",
                        "R. S. Khurmi, J. K. Gupta, Theory of Machines, §10.32 (from memory); leak: Merritt 1967 §2-5 and §3-4")
                .channels(Clutch.class, ClutchWords::channels);
    }

    private static Map<String, Channel> channels(Clutch clutch) {
        Channel seal = Channel.slot(Math.PI * clutch.sealDiameter());
        return clutch.bleed() > 0
                ? Map.of("seal", seal, "bleed", Channel.hole(clutch.bleed(), 1))
                : Map.of("seal", seal);
    }

    static Key friction() {
        return Key.quantity("friction", Dimension.RATIO, "static coefficient of friction of the lining")
                .byDefault("0.12", "0.11 to 0.12 is used for capacity (common practice)")
                .allowed("0.01", "1")
                .usual("0.07", "0.2");
    }

    private static Clutch make(Given given) {
        return new Clutch(
                given.number("piston-area"),
                given.number("return-force"),
                given.count("surfaces"),
                given.number("lining-inner-diameter") / 2,
                given.number("lining-outer-diameter") / 2,
                given.number("friction"),
                given.number("seal-diameter"),
                given.number("seal-gap"),
                given.number("seal-length"),
                given.number("bleed"));
    }
}

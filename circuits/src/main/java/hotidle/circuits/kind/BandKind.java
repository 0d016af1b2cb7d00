package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Names;
import hotidle.circuits.text.Dimension;
import hotidle.network.Group;
import hotidle.part.Band;
import hotidle.part.Clutch;
import java.util.List;

/** The words of a {@link Clutch} that is a band on a drum, with its servo. */
final class BandKind {

    private BandKind() {}

    private static final String HELPS = "to-servo";

    static final Kind KIND = Kind.through(
                    "band",
                    Clutch.class,
                    "A band on a drum, applied by a servo piston: what the piston's seals let by, and the torque that the band holds. Ranges"
                            + " name it among their clutches.",
                    Group.RINGS,
                    "the space behind its piston",
                    "the sump",
                    PumpKeys.all(List.of(ClutchKind.servo(), band(), ClutchKind.seal())),
                    (given, around) -> make(given),
                    physics())
            .example("piston-area=20cm2 return-force=200N drum-diameter=150mm wrap=320deg seal-diameter=50mm "
                    + "seal-gap=2um --drop 150psi")
            .turning()
            .passing(Passing.LEAK)
            .role(Names.CLUTCH)
            .drawn(GraphicSymbol.BAND);

    private static LawText physics() {
        return LawText.of(
                        "torque = i·r·(p·A − F)·(e^(μ·θ) − 1) where the drum turns to the servo, i·r·(p·A − F)·(1 − e^(−μ·θ)) where it"
                                + " turns to the anchor; seals leak as an annular gap, a bleed as a hole",
                        "R. G. Budynas, J. K. Nisbett, Shigley's Mechanical Engineering Design, ch. 16 (from memory); leak: Merritt 1967 §2-5"
                                + " and §3-4 (from memory)")
                .checkedIn("Clutch");
    }

    private static List<Key> band() {
        return List.of(
                FaceGapKind.diameter("drum-diameter", "outside diameter of the drum under the band"),
                Key.quantity(
                                "wrap",
                                Dimension.ANGLE,
                                "angle over which the band lies on the drum; twice round: above 360 deg")
                        .allowed("30 deg", "720 deg")
                        .usual("180 deg", "700 deg"),
                Key.quantity(
                                "lever",
                                Dimension.RATIO,
                                "pull on the band over force of the piston, by the lever between them")
                        .byDefault("1", "the piston pulls the band straight (assumed)")
                        .allowed("0.05", "20")
                        .usual("0.5", "5"),
                Key.choice(
                                "drum-turns",
                                "way in which the torque that it holds would turn the drum under the band: to-servo, from anchor to"
                                        + " servo, helps to pull it tight; to-anchor works against the servo, and is what to write"
                                        + " where ranges turn it both ways",
                                HELPS,
                                "to-anchor")
                        .byDefault("to-anchor", "the way in which it holds less (assumed)"),
                ClutchKind.friction(),
                ClutchKind.sliding(),
                ClutchKind.factor());
    }

    private static Clutch make(Attributes given) {
        return new Clutch(
                Clutch.Piston.plain(given.number("piston-area"), given.number("return-force")),
                new Band(
                        given.number("drum-diameter") / 2,
                        given.number("wrap"),
                        given.number("lever"),
                        given.word("drum-turns").equals(HELPS),
                        given.number("friction"),
                        given.number("sliding-friction")),
                given.number("capacity-factor"),
                ClutchKind.seal(given));
    }
}

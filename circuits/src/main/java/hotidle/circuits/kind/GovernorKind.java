package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.circuits.shape.Type;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.ProblemCode;
import hotidle.part.FlyWeights;
import java.util.List;

/** The words of a governor, a {@link hotidle.part.SignalValve} on the weights of {@link FlyWeights}. */
final class GovernorKind {

    private GovernorKind() {}

    private static final Shape WEIGHT = new Shape(
            "weight",
            List.of(
                    Key.quantity("mass", Dimension.MASS, "its mass")
                            .allowed("0.01 g", "10 kg")
                            .usual("1 g", "300 g")
                            .measured("scales"),
                    Key.quantity("radius", Dimension.LENGTH, "of its centre of mass from the governor's axis")
                            .allowed("0.5 mm", "500 mm")
                            .usual("5 mm", "80 mm"),
                    Key.quantity(
                                    "limit",
                                    Dimension.FORCE,
                                    "most that it pushes with: force of the spring through which it acts, pressed to its stop; left"
                                            + " out: none")
                            .optional()
                            .allowed("0.01 N", "10000 N")
                            .usual("1 N", "200 N")));

    static final Kind KIND = SignalKeys.kind(
                    "governor",
                    "A governor on the output shaft: weights push its valve outwards, and it makes a pressure that rises with road"
                            + " speed, in a second stage less steeply once a weight has pressed its spring to the stop.",
                    DutyKey.OUTPUT_SPEED,
                    List.of(
                            Key.of("weights", new Type.NamedGroups(WEIGHT), "its weights"),
                            Key.quantity(
                                            "spring",
                                            Dimension.FORCE,
                                            "force of a spring that holds its valve against the weights")
                                    .byDefault("0 N", "no such spring (assumed)")
                                    .allowed("0 N", "10000 N")
                                    .usual("0 N", "100 N"),
                            Key.quantity("ratio", Dimension.RATIO, "its speed over that of the output shaft")
                                    .byDefault("1", "on the shaft itself (assumed)")
                                    .allowed("0.05", "20")
                                    .usual("0.3", "4")),
                    GovernorKind::demand,
                    LawText.of(
                                    "pressure·area = Σ min(mass·radius·ω², limit) − spring, less the droop; openings as of a solenoid",
                                    "force on a mass that circles: I. Newton, Principia, 1687, book I, proposition 4 (from memory);"
                                            + " openings: H. E. Merritt, Hydraulic Control Systems, 1967, §3-4 (from memory); droop:"
                                            + " our own form")
                            .checkedIn("Governor"))
            .example(
                    "feed-diameter=1mm exhaust-diameter=1.4mm area=80mm2 weights.primary.mass=20g weights.primary.radius=28mm"
                            + " weights.primary.limit=14N weights.secondary.mass=4g weights.secondary.radius=25mm output-speed=2000rpm"
                            + " --at supply=100psi")
            .needs(GovernorKind::needs);

    private static void needs(Attributes given) {
        if (given.has("weights") && given.groups("weights").isEmpty()) {
            given.error(
                    ProblemCode.GOVERNOR_WITHOUT_WEIGHTS,
                    "weights",
                    "has no weights",
                    "nothing would push its valve",
                    "");
        }
    }

    private static FlyWeights demand(Attributes given) {
        List<FlyWeights.Weight> weights = given.groups("weights").values().stream()
                .map(weight ->
                        new FlyWeights.Weight(weight.number("mass"), weight.number("radius"), weight.numberIf("limit")))
                .toList();
        return new FlyWeights(given.number("area"), weights, given.number("spring"), given.number("ratio"));
    }
}

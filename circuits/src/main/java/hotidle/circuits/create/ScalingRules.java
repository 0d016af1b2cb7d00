package hotidle.circuits.create;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How the sizes of a ready circuit are scaled. Geometric similarity, but clearances, gaps and edges stay: they are made to a fit, not
 * to a scale.
 *
 * <pre>
 * pump        lengths times V^(1/3), areas and spring forces times V^(2/3), V the ratio of displacements; clearances kept
 * hub         diameters and length of the bushing times H, the ratio of hub diameters, else V^(1/3); clearance as asked for, else kept;
 *             weight times V
 * filter      rated flow times V
 * regulator   spring, boost areas and command times P, the ratio of set pressures; relief valve opens at P times as much
 * clutches    piston area and return force times T/(P·N·R), T the ratio of engine torques, N that of friction faces and R that of their
 *             mean radius, both 1 where not asked for: the clutch carries the same share of the torque; linings else kept
 * cooler      rated flow, need, heat and the orifice before it for C times the flow at the same pressure drop
 * lubrication need times L, bores of the branches times √L, the gap of one that is a bushing times ∛L as it stands hot, L the ratio of
 *             lubrication flows: each branch passes L times as much at the same pressure; then {@link LubricationFit}
 * bores       diameters times B with the clearance kept, lengths times B, B the ratio of bore diameters
 * </pre>
 */
final class ScalingRules {

    /** Of a bushing's hub; fits as made have a tenth of it to a third, and a decimal that slipped is more (chosen) [-]. */
    private static final double MOST_CLEARANCE = 0.01;

    private static final Set<String> PUMPS = Set.of("crescent-pump", "vane-pump", "pump-chamber");

    private static final Set<String> PUMP_LENGTHS = Set.of(
            "width",
            "module",
            "tip-diameter",
            "driven-tip-diameter",
            "ring-tip-diameter",
            "ring-diameter",
            "greatest-eccentricity",
            "least-eccentricity",
            "face-inner-diameter",
            "face-outer-diameter",
            "body-land",
            "tip-land");

    private final ScaleFactors by;
    private final UnitAnswers answers;
    private final Map<String, Double> hotGaps;

    /**
     * Rules for one unit.
     *
     * @param hotGaps of lube branches that are the gap of a bushing, at the oil of the slowest driving condition, diametral [m]
     */
    ScalingRules(ScaleFactors by, UnitAnswers answers, Map<String, Double> hotGaps) {
        this.by = by;
        this.answers = answers;
        this.hotGaps = Map.copyOf(hotGaps);
    }

    /** Whether a part is the orifice that the oil of converter and cooler has to pass. */
    static boolean beforeCooler(Map<String, Object> part) {
        return Draft.text(part, "kind").equals("orifice")
                && Draft.text(part, "group").equals("converter");
    }

    /** Scales a part by its kind. */
    void scale(String name, Map<String, Object> part, boolean regulator) {
        String kind = Draft.text(part, "kind");
        if (PUMPS.contains(kind)) {
            pump(part);
        } else if (regulator) {
            regulator(part);
        } else if (kind.equals("bushing")) {
            bushing(part);
        } else if (Draft.text(part, "group").equals("hub")) {
            all(part, List.of("width"), by.length());
            all(part, List.of("length", "inner-diameter", "outer-diameter", "diameter"), by.hub());
        } else if (Draft.text(part, "group").equals("pump")) {
            all(part, List.of("width", "length", "inner-diameter", "outer-diameter", "diameter"), by.length());
        } else {
            other(name, kind, part);
        }
    }

    private void other(String name, String kind, Map<String, Object> part) {
        switch (kind) {
            case "filter" -> all(part, List.of("flow"), by.pump());
            case "check-valve" -> all(part, List.of("seat"), by.length());
            case "relief-valve" -> {
                all(part, List.of("seat"), by.length());
                all(part, List.of("cracking-pressure"), by.pressure());
            }
            case "clutch", "band" -> clutch(name, part);
            case "converter" -> all(part, List.of("lockup-area"), by.piston());
            case "cooler" -> all(part, List.of("flow", "needs", "heat-flow", "heat"), by.cooler());
            case "lube-branch" -> {
                all(part, List.of("needs"), by.lube());
                pass(part, by.lube(), hotGaps.getOrDefault(name, 0.0));
            }
            case "annular-gap" -> {
                fit(part, "bore", "valve", by.bore());
                all(part, List.of("length"), by.bore());
            }
            case "orifice" -> {
                if (beforeCooler(part)) {
                    all(part, List.of("diameter"), Math.sqrt(by.cooler()));
                }
            }
            default -> {}
        }
    }

    /** The pump's hub in its bushing; a clearance that was asked for moves the bore and its limit alike. */
    private void bushing(Map<String, Object> part) {
        fit(part, "bore", "hub", by.hub());
        all(part, List.of("length"), by.hub());
        all(part, List.of("weight"), by.pump());
        answers.number("hub-clearance").ifPresent(asked -> {
            double most = MOST_CLEARANCE * Units.parse(Draft.text(part, "hub"), Dimension.LENGTH);
            if (asked > most) {
                throw new UnitAnswers.WrongAnswerException(
                        "hub-clearance",
                        String.format(
                                Locale.ROOT,
                                "a bushing of its hub runs with %.2f mm (%.3f in) at most, a hundredth of its diameter",
                                most * 1e3,
                                most / 0.0254));
            }
            wider(part, asked - clearance(part));
        });
    }

    private static double clearance(Map<String, Object> bushing) {
        String bore = Draft.map(bushing.get("bore"))
                .map(sizes -> Draft.text(sizes, "new"))
                .orElseGet(() -> Draft.text(bushing, "bore"));
        return Units.parse(bore, Dimension.LENGTH) - Units.parse(Draft.text(bushing, "hub"), Dimension.LENGTH);
    }

    private void clutch(String name, Map<String, Object> part) {
        double holds = 1;
        if (answers.facesOf(name).isPresent()) {
            UnitAnswers.Faces faces = answers.facesOf(name).get();
            double radius = faces.meanRadius().isPresent() ? faces.meanRadius().getAsDouble() / meanRadius(part) : 1;
            holds = radius
                    * faces.count()
                    / Amounts.number(Draft.text(part, "surfaces")).orElseThrow();
            part.put("surfaces", String.valueOf(faces.count()));
            all(part, List.of("lining-inner-diameter", "lining-outer-diameter"), radius);
        }
        double given = answers.clutch(name)
                .map(area -> area / squareMetres(Draft.text(part, "piston-area")))
                .orElse(by.piston() / holds);
        all(part, List.of("piston-area", "return-force"), given);
    }

    /** Half of the mean diameter of a clutch's linings [m]. */
    static double meanRadius(Map<String, Object> clutch) {
        return (Units.parse(Draft.text(clutch, "lining-inner-diameter"), Dimension.LENGTH)
                        + Units.parse(Draft.text(clutch, "lining-outer-diameter"), Dimension.LENGTH))
                / 4;
    }

    static double squareMetres(String text) {
        return Units.parse(text, Dimension.AREA);
    }

    private void pump(Map<String, Object> part) {
        all(part, PUMP_LENGTHS, by.length());
        all(part, List.of("orifice-slip-area", "control-area", "preload"), Math.pow(by.length(), 2));
        all(part, List.of("spring-rate"), by.length());
        all(part, List.of("displacement", "viscous-drag", "constant-torque"), by.pump());
    }

    private void regulator(Map<String, Object> part) {
        all(part, List.of("spring-rate", "preload", "set-pressure"), by.pressure());
        Draft.map(part.get("areas")).stream()
                .flatMap(areas -> areas.values().stream())
                .flatMap(area -> Draft.map(area).stream())
                .filter(area -> Draft.text(area, "acts").equals("close"))
                .forEach(area -> all(area, List.of("area"), by.pressure()));
    }

    private static void all(Map<String, Object> part, Iterable<String> keys, double factor) {
        for (String key : keys) {
            if (part.get(key) instanceof String text) {
                part.put(key, Amounts.times(text, factor));
            }
        }
    }

    /**
     * Makes a lube branch pass so many times as much at the same pressure.
     *
     * @param hotGap diametral, where it is the gap of a bushing [m]
     */
    static void pass(Map<String, Object> branch, double times, double hotGap) {
        all(branch, List.of("diameter"), Math.sqrt(times));
        wider(branch, hotGap * (Math.cbrt(times) - 1));
    }

    /** A bore that is wider by a length [m], what turns in it kept. */
    private static void wider(Map<String, Object> part, double more) {
        Draft.map(part.get("bore"))
                .ifPresent(all -> all.replaceAll((which, size) -> Amounts.longer(String.valueOf(size), more)));
        if (part.get("bore") instanceof String only) {
            part.put("bore", Amounts.longer(only, more));
        }
    }

    /** A bore and what turns or slides in it, both in one unit: the inner one times a factor, the clearances kept. */
    private static void fit(Map<String, Object> part, String bore, String inner, double factor) {
        Optional<Map<String, Object>> sizes = Draft.map(part.get(bore));
        String old = Draft.text(part, inner);
        String made = Amounts.plus(old, factor, 0);
        OptionalDouble difference = Amounts.difference(made, old);
        if (factor == 1 || difference.isEmpty()) {
            return;
        }
        double shift = difference.getAsDouble();
        part.put(inner, made);
        sizes.ifPresent(all -> all.replaceAll((which, size) -> Amounts.plus(String.valueOf(size), 1, shift)));
        if (part.get(bore) instanceof String only) {
            part.put(bore, Amounts.plus(only, 1, shift));
        }
    }
}

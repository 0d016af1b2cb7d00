package hotidle.circuits.create;

import java.util.List;
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
 * hub         diameters times V^(1/3) with the clearance kept; weight times V
 * filter      rated flow times V
 * regulator   spring, boost areas and command times P, the ratio of set pressures; relief valve opens at P times as much
 * clutches    piston area and return force times T/P, T the ratio of engine torques; linings kept
 * cooler      rated flow, need and the orifice before it for C times the flow at the same pressure drop
 * lubrication need times L, bores of the branches times √L, L the ratio of lubrication flows
 * bores       diameters times B with the clearance kept, lengths times B, B the ratio of bore diameters
 * </pre>
 */
final class ScalingRules {

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

    ScalingRules(ScaleFactors by, UnitAnswers answers) {
        this.by = by;
        this.answers = answers;
    }

    /** Scales a part by its kind. */
    void scale(String name, Map<String, Object> part, boolean regulator) {
        String kind = Draft.text(part, "kind");
        if (PUMPS.contains(kind)) {
            pump(part);
        } else if (regulator) {
            regulator(part);
        } else if (kind.equals("bushing")) {
            fit(part, "bore", "hub", by.length());
            all(part, List.of("length"), by.length());
            all(part, List.of("weight"), by.pump());
        } else if (Draft.text(part, "group").equals("hub")
                || Draft.text(part, "group").equals("pump")) {
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
            case "clutch", "band" -> {
                double area = answers.clutch(name)
                        .map(given -> given / squareMetres(Draft.text(part, "piston-area")))
                        .orElse(by.piston());
                all(part, List.of("piston-area", "return-force"), area);
            }
            case "converter" -> all(part, List.of("lockup-area"), by.piston());
            case "cooler" -> all(part, List.of("flow", "needs", "heat-flow"), by.cooler());
            case "lube-branch" -> {
                all(part, List.of("needs"), by.lube());
                all(part, List.of("diameter"), Math.sqrt(by.lube()));
            }
            case "annular-gap" -> {
                fit(part, "bore", "valve", by.bore());
                all(part, List.of("length"), by.bore());
            }
            case "orifice" -> {
                if (Draft.text(part, "group").equals("converter")) {
                    all(part, List.of("diameter"), Math.sqrt(by.cooler()));
                }
            }
            default -> {}
        }
    }

    static double squareMetres(String text) {
        return hotidle.circuits.text.Units.parse(text, hotidle.circuits.text.Dimension.AREA);
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

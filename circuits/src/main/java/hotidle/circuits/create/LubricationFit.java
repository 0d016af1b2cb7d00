package hotidle.circuits.create;

import hotidle.assess.Margin;
import hotidle.study.IdleMargins;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Sizes the branches of a lubrication whose needs were scaled so that all have the same headroom, each at the driving condition where it
 * has least: what comes from the cooler is shared by need. Where that is not enough, the orifice before the cooler is widened.
 *
 * <pre>
 * Step      a branch that passes r times what it needs, all together R times: its hole's area times R/r; the hot gap of one that is a
 *           bushing times ∛(R/r), since a gap passes oil with the cube of its clearance. Again until r is within 1 % of R
 * Orifice   in steps of 5 % until every branch has {@link #ENOUGH}, at most to two and a half times its diameter
 * </pre>
 *
 * @param headroom of every branch where it has least [-]
 * @param wider    by what the orifice before the cooler was widened; 1 where it was not
 */
record LubricationFit(double headroom, double wider) {

    /** More than narrow (chosen) [-]. */
    private static final double ENOUGH = 0.12;

    /** A branch and all together are alike within this [-]. */
    private static final double ALIKE = 0.01;

    /** Sharing again moves the pressure before the branches, so it takes some rounds; what is left after so many stays as told (chosen). */
    private static final int ROUNDS = 8;

    /** By what the orifice is widened at a time: its oil grows by about a tenth, about what is enough (chosen) [-]. */
    private static final double STEP = 1.05;

    /** So many steps are two and a half times the diameter, where an orifice holds next to nothing back (chosen). */
    private static final int STEPS = 19;

    /** Fits it; empty where no branch has a need, or no state is found by which to size it. */
    static Optional<LubricationFit> of(Draft draft) {
        if (!shared(draft)) {
            return Optional.empty();
        }
        List<Map<String, Object>> orifices = draft.section("parts").values().stream()
                .flatMap(part -> Draft.map(part).stream())
                .filter(ScalingRules::beforeCooler)
                .toList();
        List<Object> written =
                orifices.stream().map(part -> part.get("diameter")).toList();
        double best = 1;
        double most = least(draft);
        double factor = 1;
        for (int i = 0; i < STEPS && most < ENOUGH; i++) {
            factor *= STEP;
            put(orifices, written, factor);
            double now = least(draft);
            if (now > most + ALIKE) {
                best = factor;
                most = now;
            }
        }
        put(orifices, written, best);
        shared(draft);
        return Optional.of(new LubricationFit(least(draft), best));
    }

    /** The least headroom that a branch of a unit has at a driving condition. */
    static double least(Draft draft) {
        return draft.unit().map(LubricationFit::ratios).orElse(Map.of()).values().stream()
                        .mapToDouble(Double::doubleValue)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY)
                - 1;
    }

    /** What each branch passes over what it needs, at the driving condition where that is least [-]. */
    static Map<String, Double> ratios(Transmission unit) {
        Map<String, Double> least = new HashMap<>();
        for (DutyPoint duty : unit.judgedDuties()) {
            IdleMargins.of(unit.at(List.of(duty))).forEach((key, margin) -> {
                if (margin.kind() == Margin.Kind.LUBRICATION && Double.isFinite(margin.headroom())) {
                    least.merge(key.part(), 1 + margin.headroom(), Math::min);
                }
            });
        }
        return least;
    }

    /** Shares the oil by need; whether it could. */
    private static boolean shared(Draft draft) {
        for (int i = 0; i < ROUNDS; i++) {
            Optional<Transmission> unit = draft.unit();
            Map<String, Double> ratios = unit.map(LubricationFit::ratios).orElse(Map.of());
            if (ratios.isEmpty() || ratios.values().stream().anyMatch(ratio -> !(ratio > 0))) {
                return false;
            }
            double level = level(draft, ratios);
            if (ratios.values().stream().allMatch(ratio -> Math.abs(ratio / level - 1) < ALIKE)) {
                return true;
            }
            Map<String, Double> gaps = HotGaps.of(unit.orElseThrow());
            ratios.forEach((branch, ratio) ->
                    ScalingRules.pass(draft.part(branch), level / ratio, gaps.getOrDefault(branch, 0.0)));
        }
        return true;
    }

    /** What all branches pass over what they need. */
    private static double level(Draft draft, Map<String, Double> ratios) {
        double needed = 0;
        double passed = 0;
        for (Map.Entry<String, Double> one : ratios.entrySet()) {
            double needs = Amounts.number(Draft.text(draft.part(one.getKey()), "needs"))
                    .orElse(1);
            needed += needs;
            passed += needs * one.getValue();
        }
        return passed / needed;
    }

    private static void put(List<Map<String, Object>> orifices, List<Object> written, double factor) {
        for (int i = 0; i < orifices.size(); i++) {
            orifices.get(i).put("diameter", Amounts.times((String) written.get(i), factor));
        }
    }
}

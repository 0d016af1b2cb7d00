package hotidle.circuits.create;

import hotidle.assess.Margin;
import hotidle.circuits.text.AssumedMark;
import hotidle.study.IdleMargins;
import hotidle.study.Judgement;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which assumed sizes of the parts move most what decides: the worst margin that fails at any duty point as it is, or where none does
 * the least of the slowest duty point. Each is made a tenth larger alone, of a bore
 * its clearance, and the file read and solved again.
 *
 * @param limit   the margin
 * @param now     its headroom [-]
 * @param effects most first
 */
public record MeasureFirst(Judgement.Key limit, double now, List<SizeEffect> effects) {

    /** A size and by how much the headroom changes with a tenth more of it [-]. */
    public record SizeEffect(String path, double change) {}

    private static final double MORE = 0.1;

    /** Inner sizes of fits: their bores are varied in their place. */
    private static final List<String> INNER = List.of("valve", "hub");

    /** What a part is to get is no size of it that anybody could measure. */
    private static final List<String> NEEDS = List.of("needs", "charge-needed");

    public MeasureFirst {
        effects = List.copyOf(effects);
    }

    /** What decides; empty where the slowest duty point has no state or no margin, and none fails. */
    private static Optional<Map.Entry<Judgement.Key, Margin>> decides(Transmission unit) {
        return unit.judgedDuties().stream()
                .flatMap(duty -> IdleMargins.least(IdleMargins.of(unit, duty)).stream())
                .filter(entry -> entry.getValue().verdict() == Margin.Verdict.FAILS)
                .min(Comparator.comparingDouble(entry -> entry.getValue().headroom()))
                .or(() -> IdleMargins.least(IdleMargins.of(unit)));
    }

    /** Empty where nothing decides. */
    static Optional<MeasureFirst> of(Map<String, Object> root) {
        Optional<Map.Entry<Judgement.Key, Margin>> least = Draft.unit(root).flatMap(MeasureFirst::decides);
        if (least.isEmpty()) {
            return Optional.empty();
        }
        Judgement.Key key = least.get().getKey();
        double now = least.get().getValue().headroom();
        List<SizeEffect> effects = new ArrayList<>();
        Draft.map(root.get("parts")).orElseThrow().forEach((name, part) -> {
            Map<String, Object> keys = Draft.map(part).orElseThrow();
            for (String one : List.copyOf(keys.keySet())) {
                vary(root, keys, one, key, now)
                        .ifPresent(change -> effects.add(new SizeEffect(name + "." + one, change)));
            }
        });
        effects.sort(Comparator.comparingDouble((SizeEffect effect) -> Math.abs(effect.change()))
                .reversed());
        return Optional.of(new MeasureFirst(key, now, effects));
    }

    private static Optional<Double> vary(
            Map<String, Object> root, Map<String, Object> keys, String key, Judgement.Key limit, double now) {
        Object old = keys.get(key);
        Map<String, Object> sizes =
                Draft.map(old).filter(size -> size.containsKey("new")).orElse(null);
        Map<String, Object> holder = sizes == null ? keys : sizes;
        String in = sizes == null ? key : "new";
        if (!(holder.get(in) instanceof String text)
                || !AssumedMark.on(text)
                || INNER.contains(key)
                || NEEDS.contains(key)) {
            return Optional.empty();
        }
        holder.put(in, more(text, keys, key));
        Optional<Double> change = Draft.unit(root)
                .flatMap(unit -> unit.duty(limit.duty()).map(duty -> IdleMargins.of(unit, duty)))
                .map(all -> all.get(limit))
                .map(margin -> margin.headroom() - now)
                .filter(Double::isFinite);
        holder.put(in, text);
        return change;
    }

    private static String more(String text, Map<String, Object> keys, String key) {
        String inner = INNER.stream()
                .map(one -> Draft.text(keys, one))
                .filter(one -> !one.isEmpty())
                .findFirst()
                .orElse("");
        if (key.equals("bore") && !inner.isEmpty()) {
            OptionalDouble clearance = Amounts.difference(text, inner);
            return clearance.isPresent() ? Amounts.plus(text, 1, MORE * clearance.getAsDouble()) : text;
        }
        return Amounts.times(text, 1 + MORE);
    }
}

package hotidle.circuits.create;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Valve-body bores of one size between the same nodes, written once with their count. */
final class GatheredBores {

    private GatheredBores() {}

    /** All that are bores of the valve body: annular gaps of no other group. */
    static List<Map<String, Object>> of(Draft draft) {
        return draft.section("parts").values().stream()
                .flatMap(part -> Draft.map(part).stream())
                .filter(part -> Draft.text(part, "kind").equals("annular-gap") && !part.containsKey("group"))
                .toList();
    }

    /**
     * Gathers them, then counts the most frequent ones from the line so that there are as many in all as asked for.
     *
     * @throws UnitAnswers.WrongAnswerException where fewer are asked for than differ
     */
    static void gather(Draft draft, OptionalDouble asked) {
        Map<String, Object> parts = draft.section("parts");
        List<Map<String, Object>> bores = of(draft);
        int total = bores.size();
        Map<Map<String, Object>, Map<String, Object>> seen = new LinkedHashMap<>();
        Map<Map<String, Object>, Integer> counts = new LinkedHashMap<>();
        List<Object> gone = new ArrayList<>();
        for (Map<String, Object> bore : bores) {
            Map<String, Object> same = new LinkedHashMap<>(bore);
            same.remove("about");
            if (seen.containsKey(same) && !bore.containsKey("land-of")) {
                Map<String, Object> first = seen.get(same);
                first.put("about", first.getOrDefault("about", "bore") + "; " + bore.getOrDefault("about", "bore"));
                gone.add(bore);
            }
            seen.putIfAbsent(same, bore);
            counts.merge(same, 1, Integer::sum);
        }
        parts.values().removeIf(part -> gone.stream().anyMatch(one -> one == part));
        Map<String, Object> most = counts.keySet().stream()
                .filter(one -> !one.containsKey("land-of"))
                .reduce((one, other) -> counts.get(other) > counts.get(one) ? other : one)
                .orElse(null);
        if (asked.isPresent() && most != null) {
            int others = total - counts.get(most);
            if (asked.getAsDouble() <= others) {
                throw new UnitAnswers.WrongAnswerException(
                        UnitAnswers.BORES,
                        "the ready circuit has " + others + " bores that differ from these; write more than that");
            }
            counts.put(most, (int) asked.getAsDouble() - others);
        }
        seen.forEach((same, first) -> {
            if (counts.get(same) > 1 && !first.containsKey("land-of")) {
                first.put("count", String.valueOf(counts.get(same)));
            }
        });
    }
}

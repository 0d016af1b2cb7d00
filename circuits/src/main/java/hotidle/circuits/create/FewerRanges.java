package hotidle.circuits.create;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Leaves ranges out of a draft, and the clutches that no range is left to apply, with all that serves them alone. */
final class FewerRanges {

    private final Draft draft;
    private final String line;

    FewerRanges(Draft draft) {
        this.draft = draft;
        line = Draft.text(draft.section("command"), "line");
    }

    /**
     * Keeps driving ranges; park and neutral, which apply nothing, stay.
     *
     * @throws UnitAnswers.WrongAnswerException where a name is none of a range, or no forward range is left
     */
    void keep(List<String> kept) {
        Map<String, Object> ranges = draft.section("ranges");
        List<String> driving = ranges.keySet().stream()
                .filter(name -> !applied(ranges.get(name)).isEmpty())
                .toList();
        for (String name : kept) {
            if (!driving.contains(name)) {
                throw new UnitAnswers.WrongAnswerException(
                        "ranges",
                        name + " is no driving range of the ready circuit; it has " + String.join(", ", driving));
            }
        }
        List<String> forward =
                driving.stream().filter(name -> forward(ranges.get(name))).toList();
        List<String> left = forward.stream().filter(kept::contains).toList();
        if (left.isEmpty()) {
            throw new UnitAnswers.WrongAnswerException("ranges", "none of them is a forward range");
        }
        Set<String> before = clutches(ranges);
        Set<String> gone = new HashSet<>(driving);
        kept.forEach(gone::remove);
        ranges.keySet().removeAll(gone);
        draft.section("parts").values().forEach(part -> drop(part, gone));
        draft.section("duty")
                .values()
                .forEach(duty -> Draft.map(duty)
                        .filter(keys -> gone.contains(Draft.text(keys, "range")))
                        .ifPresent(keys -> keys.put("range", nearest(Draft.text(keys, "range"), forward, left))));
        before.removeAll(clutches(ranges));
        before.forEach(this::without);
    }

    private static boolean forward(Object range) {
        return Draft.text(Draft.map(range).orElseThrow(), "forward").equals("yes");
    }

    /** The range in which a driving condition of a range that is gone is driven: the next lower one that is left, or the lowest. */
    private static String nearest(String gone, List<String> forward, List<String> left) {
        int at = forward.indexOf(gone);
        return left.stream()
                .filter(name -> forward.indexOf(name) <= at)
                .reduce((lower, higher) -> higher)
                .orElse(left.get(0));
    }

    private static Map<String, Object> applied(Object range) {
        return Draft.map(range).flatMap(keys -> Draft.map(keys.get("clutches"))).orElse(Map.of());
    }

    private static Set<String> clutches(Map<String, Object> ranges) {
        Set<String> all = new LinkedHashSet<>();
        ranges.values().forEach(range -> all.addAll(applied(range).keySet()));
        return all;
    }

    /** Takes ranges out of every list of them; what is fed in none any more goes. */
    private static void drop(Object value, Set<String> gone) {
        Draft.map(value).ifPresent(keys -> {
            keys.values()
                    .removeIf(one -> Draft.map(one)
                            .flatMap(inner -> Draft.list(inner.get("ranges")))
                            .map(gone::containsAll)
                            .orElse(false));
            Draft.list(keys.get("ranges")).ifPresent(list -> list.removeAll(gone));
            keys.values().forEach(one -> drop(one, gone));
        });
    }

    private void without(String clutch) {
        Map<String, Object> parts = draft.section("parts");
        Set<String> nodes = new HashSet<>(Set.of(Draft.text(draft.part(clutch), "from")));
        boolean more = true;
        while (more) {
            more = false;
            for (Object one : parts.values()) {
                Map<String, Object> part = Draft.map(one).orElseThrow();
                String from = Draft.text(part, "from");
                String to = Draft.text(part, "to");
                if (nodes.contains(to) && !from.isEmpty() && !from.equals(line) && !held(from)) {
                    more |= nodes.add(from);
                }
            }
        }
        parts.values()
                .removeIf(one -> Draft.map(one)
                        .map(part -> nodes.contains(Draft.text(part, "from")) || nodes.contains(Draft.text(part, "to")))
                        .orElse(false));
        for (Object one : parts.values()) {
            Map<String, Object> part = Draft.map(one).orElseThrow();
            Draft.map(part.get("ports")).ifPresent(ports -> ports.values().removeIf(node -> nodes.contains(node)));
            Draft.map(part.get("passages"))
                    .ifPresent(passages -> passages.values()
                            .removeIf(passage -> Draft.map(passage)
                                    .map(keys -> nodes.contains(Draft.text(keys, "from"))
                                            || nodes.contains(Draft.text(keys, "to")))
                                    .orElse(false)));
        }
        draft.section("nodes").keySet().removeAll(nodes);
        Draft.map(draft.section("gearsets").get("clutches")).ifPresent(train -> train.remove(clutch));
        draft.section("taps")
                .values()
                .removeIf(tap -> Draft.map(tap)
                        .map(keys -> nodes.contains(Draft.text(keys, "node")))
                        .orElse(false));
        draft.section("ranges")
                .values()
                .forEach(range -> Draft.map(range)
                        .ifPresent(keys -> keys.values()
                                .forEach(value -> Draft.map(value).ifPresent(inner -> inner.remove(clutch)))));
    }

    private boolean held(String node) {
        return Draft.map(draft.section("nodes").get(node))
                .map(keys -> keys.containsKey("held"))
                .orElse(false);
    }
}

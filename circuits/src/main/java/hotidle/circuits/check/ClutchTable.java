package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Warns where the clutches that a range lists are not those that the selector feeds in it. Told of the file as written; a build that
 * changes the selector's table studies a fault.
 */
final class ClutchTable {

    private final Map<String, Attributes> ranges;
    private final List<Parts.DeclaredPart> clutches;
    private final Map<String, FlowGraph> ways = new LinkedHashMap<>();

    private ClutchTable(Attributes file, Parts parts) {
        ranges = file.groups("ranges");
        clutches = parts.all().values().stream()
                .filter(part -> part.kind().isClutch())
                .toList();
        ranges.keySet().forEach(range -> ways.put(range, new FlowGraph(file, parts, range)));
    }

    /**
     * Notes what does not agree.
     *
     * @param file  the circuit, without fault
     * @param parts without fault
     */
    static void check(Attributes file, Parts parts) {
        ClutchTable table = new ClutchTable(file, parts);
        boolean supplied =
                table.ways.values().stream().noneMatch(one -> one.fed().isEmpty());
        if (supplied) {
            for (Parts.DeclaredPart part : table.clutches) {
                table.ranges.values().forEach(range -> table.check(part, range));
            }
            table.clutches.stream()
                    .map(part -> part.given().word("from"))
                    .distinct()
                    .forEach(table::shutIn);
        }
    }

    private void check(Parts.DeclaredPart part, Attributes range) {
        Attributes clutch = part.given();
        String node = clutch.word("from");
        FlowGraph here = ways.get(range.name());
        Optional<Attributes> vent = here.vent(node);
        boolean fed = here.fed().containsKey(node);
        Attributes listed = range.groups("clutches").get(clutch.name());
        if (listed != null && vent.isPresent() && (fed || !here.perhapsFed().contains(node))) {
            NotFed.vented(listed, range, vent.get(), fed ? here.fed().get(node) : Optional.empty());
        } else if (listed != null && !here.perhapsFed().contains(node)) {
            NotFed.closed(listed, range, node, feeder(node));
        } else if (listed == null && fed && vent.isEmpty() && !here.perhapsDrained(node)) {
            NotListed.warn(clutch, range, here.fed().get(node));
        } else if (listed == null && fed && vent.isPresent()) {
            here.fed()
                    .get(node)
                    .filter(feed -> here.meet(feed, vent.get()))
                    .ifPresent(feed -> NotListed.fedAndVented(clutch, range, feed, vent.get()));
        }
    }

    /** The passage that feeds a node in another range. */
    private Optional<Attributes> feeder(String node) {
        return ways.values().stream()
                .flatMap(one -> one.fed().getOrDefault(node, Optional.empty()).stream())
                .findFirst();
    }

    private void shutIn(String node) {
        List<Attributes> behind = clutches.stream()
                .map(Parts.DeclaredPart::given)
                .filter(clutch -> clutch.word("from").equals(node))
                .toList();
        List<String> shut = ranges.values().stream()
                .filter(range -> behind.stream()
                        .noneMatch(clutch -> range.groups("clutches").containsKey(clutch.name())))
                .map(Attributes::name)
                .filter(range -> ways.get(range).shutIn(node))
                .toList();
        boolean drained = behind.stream().anyMatch(clutch -> clutch.number("bleed") > 0);
        if (!shut.isEmpty() && !drained) {
            Optional<Attributes> vent = ways.values().stream()
                    .flatMap(one -> one.vent(node).stream())
                    .findFirst();
            ShutIn.warn(behind, shut, vent, feeder(node));
        }
    }
}

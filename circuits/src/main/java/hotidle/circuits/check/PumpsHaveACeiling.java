package hotidle.circuits.check;

import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.kind.Passing;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** A pump's outlet has a relief valve that it can reach without passing a pump or a held node, or a check valve backwards. */
final class PumpsHaveACeiling implements Rule.OfCircuit {

    @Override
    public void check(Attributes file, Parts parts) {
        if (!parts.nodesKnown()) {
            return;
        }
        Map<String, Set<String>> next = new HashMap<>();
        List<String> relieved = new ArrayList<>();
        List<Attributes> pumps = new ArrayList<>();
        for (Parts.DeclaredPart part : parts.all().values()) {
            if (part.kind().isPump()) {
                pumps.add(part.given());
                continue;
            }
            if (part.kind().facts().passing() == Passing.RELIEF) {
                Reachable.paths(part).stream().limit(1).map(Kind.FlowPath::from).forEach(relieved::add);
            }
            Reachable.paths(part).forEach(path -> join(file, path, next));
        }
        for (Attributes pump : pumps) {
            if (pump.has("to")
                    && Reachable.spread(List.of(pump.word("to")), next).stream().noneMatch(relieved::contains)) {
                pump.error(
                        ProblemCode.PUMP_WITHOUT_RELIEF,
                        "to",
                        "has no relief valve at its outlet",
                        "with every valve shut the pressure must still end somewhere",
                        "add a relief-valve from '" + pump.word("to") + "' to the sump");
            }
        }
    }

    private static void join(Attributes file, Kind.FlowPath path, Map<String, Set<String>> next) {
        if (!held(file, path.from()) && !held(file, path.to())) {
            next.computeIfAbsent(path.from(), name -> new LinkedHashSet<>()).add(path.to());
            if (!path.oneWay()) {
                next.computeIfAbsent(path.to(), name -> new LinkedHashSet<>()).add(path.from());
            }
        }
    }

    private static boolean held(Attributes file, String node) {
        return file.groups("nodes").containsKey(node)
                && file.groups("nodes").get(node).has("held");
    }
}

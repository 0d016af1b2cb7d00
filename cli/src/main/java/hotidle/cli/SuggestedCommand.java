package hotidle.cli;

import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.SpoolValve;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What to write in a circuit that says of no valve that it regulates the line, so that regulation can be judged. */
final class SuggestedCommand {

    private SuggestedCommand() {}

    /** The section to write, with the circuit's own names where only one valve can be meant. */
    static String of(Transmission unit) {
        String line = Roles.of(unit).line();
        List<String> sections = unit.network().parts().stream()
                .filter(placed -> placed.part() instanceof SpoolValve)
                .flatMap(placed -> section(placed, line).stream())
                .toList();
        return sections.size() == 1
                ? sections.get(0)
                : "command: {line: <node>, regulator: <spool-valve>, edge: <its first opening>}";
    }

    /** Empty for a valve that the line does not push open, or that lets nothing out of the line. */
    private static Optional<String> section(Placed placed, String line) {
        SpoolValve valve = (SpoolValve) placed.part();
        boolean pushed = valve.areas().stream()
                .anyMatch(area ->
                        area.area() > 0 && placed.nodes().get(area.port()).equals(line));
        return valve.openings().stream()
                .filter(opening -> pushed
                        && opening.opensUp()
                        && placed.nodes().get(opening.from()).equals(line))
                .min(Comparator.comparingDouble(SpoolValve.Opening::edge))
                .map(first ->
                        "command: {line: " + line + ", regulator: " + placed.name() + ", edge: " + first.name() + "}");
    }
}

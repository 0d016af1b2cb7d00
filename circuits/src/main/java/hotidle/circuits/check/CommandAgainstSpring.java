package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import hotidle.transmission.Command;
import hotidle.transmission.Curve;
import hotidle.transmission.Range;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Warns where the tables of a command and the spring of its regulator do not mean the same line pressure. */
final class CommandAgainstSpring implements Rule.OfUnits {

    @Override
    public void check(Attributes command, List<Transmission> units) {
        Map<String, String> found = new LinkedHashMap<>();
        units.forEach(unit -> disagreement(unit).ifPresent(what -> found.putIfAbsent(unit.build(), what)));
        if (found.isEmpty()) {
            return;
        }
        String builds = found.keySet().stream().limit(6).collect(Collectors.joining(", "));
        command.warning(
                ProblemCode.COMMAND_AGAINST_SPRING,
                "line-pressure",
                found.values().iterator().next(),
                "its preload, spring-rate, edge and areas balance there in build " + builds
                        + "; within 10 psi is common practice",
                "correct preload, areas or pilot-pressure; a build may give its set-pressure, which sets the spring");
    }

    private static Optional<String> disagreement(Transmission unit) {
        Command command = unit.command();
        if (command.pilot().isEmpty() || !command.tablesHold()) {
            return Optional.empty();
        }
        Command.Pilot asked = command.pilot().get();
        for (Range range : unit.ranges()) {
            for (Curve.Knot row : asked.lineByTorque().points()) {
                double balance = command.setPressure(unit.network(), command.control(range.name(), row.y()));
                if (range.forward() && Math.abs(balance - row.y()) > Command.AGREE) {
                    return Optional.of(String.format(
                            Locale.ROOT,
                            "asks for %s at %.0f N.m, but its regulator balances at %s in %s",
                            SetPressure.told(row.y()),
                            row.x(),
                            SetPressure.told(balance),
                            range.name()));
                }
            }
        }
        return Optional.empty();
    }
}

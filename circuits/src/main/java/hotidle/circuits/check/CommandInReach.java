package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import hotidle.network.Placed;
import hotidle.part.PumpChamber;
import hotidle.part.ReliefValve;
import hotidle.part.SpoolValve;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Warns where what is commanded is out of reach whatever the pump delivers: the relief valve lifts below it, no commanded pressure
 * moves the slide of a variable pump, or the regulator lets oil go before the edge at which its set pressure is counted.
 */
final class CommandInReach implements Rule.OfUnits {

    /** A rule; empty where a unit keeps it. */
    private interface PressureRule {
        Optional<String> broken(Transmission unit);
    }

    @Override
    public void check(Attributes command, List<Transmission> units) {
        check(
                command,
                units,
                ProblemCode.COMMAND_ABOVE_RELIEF,
                CommandInReach::relief,
                "the relief valve then holds the line in place of the regulator",
                "raise its cracking-pressure, or command less");
        check(
                command,
                units,
                ProblemCode.COMMAND_BEYOND_SLIDE,
                CommandInReach::slide,
                "no pressure that is commanded makes the pump deliver less",
                "correct control-area, preload or the command");
        check(
                command,
                units,
                ProblemCode.COMMAND_BEFORE_EDGE,
                CommandInReach::edge,
                "the set pressure is counted where the regulator's first opening begins to open",
                "name that opening as edge, or correct the edges");
    }

    private static void check(
            Attributes command,
            Collection<Transmission> units,
            ProblemCode code,
            PressureRule rule,
            String why,
            String mend) {
        Map<String, String> found = new LinkedHashMap<>();
        units.forEach(unit -> rule.broken(unit).ifPresent(what -> found.putIfAbsent(unit.build(), what)));
        if (!found.isEmpty()) {
            String builds = found.keySet().stream().limit(6).collect(Collectors.joining(", "));
            command.warning(code, "regulator", found.values().iterator().next(), why + "; in build " + builds, mend);
        }
    }

    private static Optional<String> relief(Transmission unit) {
        return unit.reliefs(unit.command().line()).stream()
                .filter(placed -> ((ReliefValve) placed.part()).poppet().cracking() <= unit.highestSet())
                .map(placed -> String.format(
                        Locale.ROOT,
                        "asks for up to %s, but %s lifts at %s",
                        SetPressure.told(unit.highestSet()),
                        placed.name(),
                        SetPressure.told(((ReliefValve) placed.part()).poppet().cracking())))
                .findFirst();
    }

    private static Optional<String> slide(Transmission unit) {
        return unit.network().parts().stream()
                .flatMap(placed -> stuckSlide(unit, placed).stream())
                .findFirst();
    }

    private static Optional<String> stuckSlide(Transmission unit, Placed placed) {
        if (!(placed.part() instanceof PumpChamber pump)) {
            return Optional.empty();
        }
        return pump.slide()
                .filter(slide -> slide.area() * unit.highestSet() <= slide.preload())
                .map(slide -> String.format(
                        Locale.ROOT,
                        "asks for up to %s, which pushes the slide of %s with %.0f N; its spring holds %.0f N",
                        SetPressure.told(unit.highestSet()),
                        placed.name(),
                        slide.area() * unit.highestSet(),
                        slide.preload()));
    }

    private static Optional<String> edge(Transmission unit) {
        SpoolValve regulator = (SpoolValve)
                unit.network().part(unit.command().regulator()).orElseThrow().part();
        double counted = regulator.openings().stream()
                .filter(opening -> opening.name().equals(unit.command().edge()))
                .findFirst()
                .orElseThrow()
                .edge();
        return regulator.openings().stream()
                .filter(opening -> opening.opensUp() && opening.edge() < counted)
                .map(opening -> String.format(
                        Locale.ROOT,
                        "counts its set pressure at %s, %.2f mm, but %s opens before, at %.2f mm",
                        unit.command().edge(),
                        counted * 1e3,
                        opening.name(),
                        opening.edge() * 1e3))
                .findFirst();
    }
}

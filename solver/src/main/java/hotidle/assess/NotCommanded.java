package hotidle.assess;

import hotidle.network.Placed;
import hotidle.part.SpoolValve;
import hotidle.transmission.Transmission;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Nothing says which valve regulates the line of a unit, so that regulation cannot be judged.
 *
 * @param valves    whether there is a spool valve at all
 * @param regulator the valve that is meant, where only one can be
 */
public record NotCommanded(boolean valves, Optional<UncommandedRegulator> regulator) {

    /**
     * A valve that the line pushes open and that lets oil out of the line.
     *
     * @param line  node of the line
     * @param valve its name
     * @param edge  the opening that it uncovers first
     */
    public record UncommandedRegulator(String line, String valve, String edge) {}

    /** Empty where line pressure is commanded. */
    public static Optional<NotCommanded> of(Transmission unit) {
        if (unit.commanded().isPresent()) {
            return Optional.empty();
        }
        String line = Roles.of(unit).line();
        List<Placed> valves = unit.network().parts().stream()
                .filter(placed -> placed.part() instanceof SpoolValve)
                .toList();
        List<UncommandedRegulator> meant = valves.stream()
                .flatMap(placed -> regulator(placed, line).stream())
                .toList();
        return Optional.of(
                new NotCommanded(!valves.isEmpty(), meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty()));
    }

    private static Optional<UncommandedRegulator> regulator(Placed placed, String line) {
        SpoolValve valve = (SpoolValve) placed.part();
        boolean pushed = valve.areas().stream()
                .anyMatch(area ->
                        area.area() > 0 && placed.nodes().get(area.port()).equals(line));
        return valve.openings().stream()
                .filter(opening -> pushed
                        && opening.opensUp()
                        && placed.nodes().get(opening.from()).equals(line))
                .min(Comparator.comparingDouble(SpoolValve.Opening::edge))
                .map(first -> new UncommandedRegulator(line, placed.name(), first.name()));
    }
}

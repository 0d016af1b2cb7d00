package hotidle.study;

import hotidle.network.Placed;
import hotidle.newton.SteadySolver;
import hotidle.part.SpoolValve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * The line pressures between which a unit may stand because a spool sticks.
 *
 * <pre>
 * Formula   friction F may hold the spool against either side of its balance: it stands wherever the force left over is at most F.
 *           The ends are the states with the spring's preload raised and lowered by F, solved from the state without friction.
 * Source    Coulomb friction at rest (any textbook of mechanics; from memory)
 * Range     each valve sticks on its own: where several do at once the band may be wider. A valve stuck in place has none.
 * </pre>
 *
 * @param low  lowest line pressure [Pa]
 * @param high highest line pressure [Pa]
 */
public record FrictionBand(double low, double high) {

    /**
     * The band of a state.
     *
     * @param line node whose pressure is told
     * @return empty where no spool has friction, or an end of the band is not found
     */
    public static Optional<FrictionBand> of(Transmission unit, String line, Solution state) {
        List<Placed> sticky = sticky(unit);
        List<Outcome> ends = sticky.stream()
                .flatMap(placed -> Stream.of(1, -1).map(sign -> end(unit, state, placed, sign)))
                .toList();
        if (ends.isEmpty() || ends.stream().anyMatch(end -> end.state().isEmpty())) {
            return Optional.empty();
        }
        double[] pressures = DoubleStream.concat(
                        DoubleStream.of(state.pressure(line)),
                        ends.stream()
                                .mapToDouble(end -> end.state().orElseThrow().pressure(line)))
                .sorted()
                .toArray();
        return Optional.of(new FrictionBand(pressures[0], pressures[pressures.length - 1]));
    }

    /** Whether a spool of the unit has friction. */
    public static boolean asked(Transmission unit) {
        return !sticky(unit).isEmpty();
    }

    private static List<Placed> sticky(Transmission unit) {
        return unit.network().parts().stream()
                .filter(placed -> placed.part() instanceof SpoolValve valve
                        && valve.spring().friction() > 0
                        && valve.stuck().isEmpty())
                .toList();
    }

    private static Outcome end(Transmission unit, Solution state, Placed placed, int sign) {
        SpoolValve valve = (SpoolValve) placed.part();
        SpoolValve.Spring spring = valve.spring();
        SpoolValve pressed = valve.with(spring.withPreload(spring.preload() + sign * spring.friction()));
        return new SteadySolver(unit.network().with(placed.with(pressed)))
                .solve(state.conditions(), Optional.of(state));
    }
}

package hotidle.study;

import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.newton.Series;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.result.Solution;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
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
        return new Search(unit, line).of(state);
    }

    /** Finds the bands of a unit's states. Keep one for each thread. */
    static final class Search {
        private final List<Network> ends;
        private final String line;
        private final Series series;

        Search(Transmission unit, String line) {
            ends = sticky(unit).stream()
                    .flatMap(placed -> Stream.of(1, -1).map(sign -> pressed(unit, placed, sign)))
                    .toList();
            this.line = line;
            series = new Series(unit.network());
        }

        /** As {@link FrictionBand#of}. */
        Optional<FrictionBand> of(Solution state) {
            double low = state.pressure(line);
            double high = low;
            for (Network end : ends) {
                series.use(end);
                series.restart(state);
                if (!series.solve(state.conditions())) {
                    return Optional.empty();
                }
                double pressure = series.state().pressure(line);
                low = Math.min(low, pressure);
                high = Math.max(high, pressure);
            }
            return ends.isEmpty() ? Optional.empty() : Optional.of(new FrictionBand(low, high));
        }
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

    private static Network pressed(Transmission unit, Placed placed, int sign) {
        SpoolValve valve = (SpoolValve) placed.part();
        SpoolSpring spring = valve.spring();
        return unit.network()
                .with(placed.with(valve.with(spring.withPreload(spring.preload() + sign * spring.friction()))));
    }
}

package hotidle.geartrain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A gear train: planetary sets that share members, and what joins these. Losses are those of meshes alone.
 *
 * @param input     the member that the turbine drives
 * @param output    the member that drives the vehicle
 * @param sets      planetary sets
 * @param couplings shafts, clutches, brakes, bands and one-way clutches
 */
public record GearTrain(String input, String output, List<PlanetarySet> sets, List<Coupling> couplings) {

    /** Most one-way clutches: every selection of them is tried. */
    public static final int MOST_ONE_WAYS = 8;

    public GearTrain {
        sets = List.copyOf(sets);
        couplings = List.copyOf(couplings);
        if (input.equals(output) || input.equals(Coupling.CASE) || output.equals(Coupling.CASE)) {
            throw new IllegalArgumentException("input and output must be two members, neither of them the case");
        }
        if (couplings.stream()
                        .filter(one -> one.kind() == Coupling.Kind.ONE_WAY)
                        .count()
                > MOST_ONE_WAYS) {
            throw new IllegalArgumentException("at most " + MOST_ONE_WAYS + " one-way clutches");
        }
    }

    /** All members but the case, in the order in which they are named. */
    public List<String> members() {
        Set<String> all = members(input, output, sets);
        couplings.forEach(coupling -> {
            all.add(coupling.first());
            all.add(coupling.second());
        });
        all.remove(Coupling.CASE);
        return new ArrayList<>(all);
    }

    private static Set<String> members(String input, String output, List<PlanetarySet> sets) {
        Set<String> all = new LinkedHashSet<>(List.of(input, output));
        for (PlanetarySet set : sets) {
            all.add(set.carrier());
            all.addAll(set.centralMembers());
        }
        return all;
    }
}

package hotidle.heat;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;

/**
 * A unit at temperatures that its own heat gives.
 *
 * @param unit with the temperatures of all regions at each duty point; those that come to none are left out
 * @param none what became of those that are left out
 */
public record SettledUnit(Transmission unit, List<Warmed> none) {

    public SettledUnit {
        none = List.copyOf(none);
    }

    /**
     * Settles a unit.
     *
     * @param unit    the unit
     * @param balance whether duty points that give their temperatures too are settled; only those that give none otherwise
     */
    public static SettledUnit of(Transmission unit, boolean balance) {
        if (unit.duties().stream().noneMatch(duty -> wanted(duty, balance))) {
            return new SettledUnit(unit, List.of());
        }
        List<DutyPoint> duties = new ArrayList<>();
        List<Warmed> none = new ArrayList<>();
        for (DutyPoint duty : unit.duties()) {
            if (!wanted(duty, balance)) {
                duties.add(duty);
                continue;
            }
            Warmed warmed = HeatBalance.of(unit, duty);
            warmed.settled().ifPresentOrElse(state -> duties.add(state.duty()), () -> none.add(warmed));
        }
        return new SettledUnit(unit.at(duties), none);
    }

    private static boolean wanted(DutyPoint duty, boolean balance) {
        return duty.warming().isPresent() && (balance || !duty.temperatures().containsKey(WarmUnit.SUMP));
    }
}

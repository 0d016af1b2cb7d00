package hotidle.heat;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import hotidle.transmission.Warming;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A unit at temperatures that its own heat gives.
 *
 * @param unit at the temperatures that its duty points come to; those whose temperatures do not follow from heat keep theirs
 * @param none what became of those that come to none, at which nothing is judged
 */
public record SettledUnit(Transmission unit, List<Warmed> none) {

    public SettledUnit {
        none = List.copyOf(none);
    }

    /** Settles all duty points whose temperatures follow from heat. */
    public static SettledUnit of(Transmission unit) {
        return of(unit, unit.duties().stream().map(DutyPoint::name).collect(Collectors.toSet()));
    }

    /** Settles those of some duty points whose temperatures follow from heat; all others stay as they are. */
    public static SettledUnit of(Transmission unit, Set<String> asked) {
        List<DutyPoint> duties = new ArrayList<>();
        List<Warmed> none = new ArrayList<>();
        for (DutyPoint duty : unit.duties()) {
            if (duty.warming().isEmpty() || !asked.contains(duty.name())) {
                duties.add(duty);
                continue;
            }
            Warmed warmed = HeatBalance.of(unit, duty);
            if (warmed.known()) {
                duties.add(duty.settledAt(warmed.settled().orElseThrow().duty().temperatures()));
            } else {
                duties.add(duty.warmedBy(new Warming.NeverSettles()));
                none.add(warmed);
            }
        }
        return new SettledUnit(unit.at(duties), none);
    }
}

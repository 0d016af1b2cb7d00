package hotidle.study;

import hotidle.heat.SettledUnit;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A unit at the temperatures that its own heat brings it to at each set pressure. What a duty point comes to at a pressure is found
 * once: many limits are narrowed down over the same pressures, and each time all its temperatures would be searched anew.
 */
final class SettledRaised implements Window.Raised {

    private record DutyAt(double pressure, String duty) {}

    private final Window.Raised given;
    private final Map<DutyAt, DutyPoint> settled = new ConcurrentHashMap<>();

    /**
     * A unit's.
     *
     * @param given makes it at the temperatures of its file
     */
    SettledRaised(Window.Raised given) {
        this.given = given;
    }

    @Override
    public Transmission to(double pressure, Set<String> duties) {
        Transmission unit = given.to(pressure, duties);
        return unit.at(unit.duties().stream()
                .map(duty -> duties.contains(duty.name()) ? settled(unit, pressure, duty.name()) : duty)
                .toList());
    }

    /** Two threads that ask for the same wait for one search. */
    private DutyPoint settled(Transmission unit, double pressure, String duty) {
        return settled.computeIfAbsent(
                new DutyAt(pressure, duty),
                asked -> SettledUnit.of(unit, Set.of(duty)).unit().duty(duty).orElseThrow());
    }
}

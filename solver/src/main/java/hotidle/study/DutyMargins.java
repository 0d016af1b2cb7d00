package hotidle.study;

import hotidle.assess.Assessment;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.newton.Series;
import hotidle.result.Solution;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Margins of many units of one shape at one duty point's own speed, each found for itself: all start from the states of the first
 * unit, so that none knows of another and their order changes no bit. Keep one for each thread, all of the same first unit.
 *
 * <p>The hub's film and load are those at the duty's speed; {@link Judgement} searches them over all speeds.
 */
public final class DutyMargins {

    private final String duty;
    private final Optional<Solution> first;
    private final Optional<HeldLine.HeldStates> found;
    private final Optional<Series> held;
    private final Series own;
    private long solves;

    /**
     * Solves the first unit.
     *
     * @param unit that all others resemble
     * @param duty name of a duty point of it
     */
    public DutyMargins(Transmission unit, String duty) {
        this.duty = duty;
        DutyPoint point = unit.duty(duty).orElseThrow();
        own = new Series(unit.network());
        own.solve(unit.conditions(point));
        first = own.outcome().state();
        if (unit.commanded().isPresent()) {
            HeldLineSearch search =
                    new HeldLineSearch(unit, point, Roles.of(unit), Optional.empty(), first, Optional.empty());
            found = search.found(search.run());
            held = Optional.of(search.series());
        } else {
            found = Optional.empty();
            held = Optional.empty();
        }
    }

    /**
     * The margins of a unit; empty where no state was found. Regulation is missing where it is not known.
     *
     * @param unit of the first one's shape
     */
    public Optional<Map<Judgement.Key, Margin>> of(Transmission unit) {
        DutyPoint point = unit.duty(duty).orElseThrow();
        own.use(unit.network());
        first.ifPresentOrElse(own::restart, own::restart);
        solves++;
        if (!own.solve(unit.conditions(point))) {
            return Optional.empty();
        }
        Solution state = own.state();
        Roles roles = Roles.of(unit);
        Optional<HubOverSpeed> hub = roles.hub().map(placed -> HubOverSpeed.alone(state, placed));
        Optional<HeldLine> line = held.map(series -> {
            HeldLineSearch search =
                    new HeldLineSearch(unit, point, roles, found, Optional.of(state), Optional.of(series));
            HeldLine balance = search.run();
            solves += search.solves();
            return balance;
        });
        Map<Judgement.Key, Margin> margins = new LinkedHashMap<>();
        for (Margin margin : new Limits(Assessment.of(unit, point, roles, state)).all(line, hub)) {
            margins.put(Judgement.Key.of(point, margin), margin);
        }
        return Optional.of(margins);
    }

    /** States asked for since the first unit's. */
    public long solves() {
        return solves;
    }
}

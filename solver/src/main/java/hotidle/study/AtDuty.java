package hotidle.study;

import hotidle.newton.SteadySolver;
import hotidle.result.Outcome;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;

/** One unit at one of its duty points, for who only shows the state. */
public final class AtDuty {

    private AtDuty() {}

    /** Its steady state there, or why there is none. */
    public static Outcome solved(Transmission unit, DutyPoint duty) {
        return new SteadySolver(unit.network()).solve(unit.conditions(duty));
    }
}

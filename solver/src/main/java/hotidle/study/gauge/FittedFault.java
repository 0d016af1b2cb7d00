package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.transmission.Adjustable;
import java.util.List;
import java.util.Optional;

/**
 * A fault as large as explains readings best.
 *
 * @param fault    at that size
 * @param explains whether the readings agree with a unit that has it, by the statistic by which they agree with a build
 */
public record FittedFault(UnitFault.Sized fault, boolean explains) {

    /**
     * The fault at that size.
     *
     * @param readings at least one
     * @return empty where no size of it could be solved
     * @throws UnsolvedPointException where the unit as built has no state at one of them
     */
    public static Optional<FittedFault> of(Adjustable build, UnitFault fault, List<GaugeReading> readings) {
        GaugeTable table = GaugeTable.of(build, List.of(fault), readings, () -> {});
        CauseCurve curve = table.curves().get(0);
        if (!curve.known()) {
            return Optional.empty();
        }
        Misfit misfit = new Misfit(readings);
        CauseBelief belief = CauseBelief.of(curve, misfit);
        return Optional.of(new FittedFault(
                fault.of(fault.sizeAt(belief.best())), misfit.chance(belief.chiSquare()) >= GaugeFindings.DISAGREE));
    }
}

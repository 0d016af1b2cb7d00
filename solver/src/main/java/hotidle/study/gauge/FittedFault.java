package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.transmission.Adjustable;
import java.util.List;
import java.util.Optional;

/** How large a fault would have to be to explain readings best. */
public final class FittedFault {

    private FittedFault() {}

    /**
     * The fault at that size.
     *
     * @param readings at least one
     * @return empty where no size of it could be solved
     * @throws UnsolvedPointException where the unit as built has no state at one of them
     */
    public static Optional<UnitFault.Sized> of(Adjustable build, UnitFault fault, List<GaugeReading> readings) {
        GaugeTable table = GaugeTable.of(build, List.of(fault), readings, () -> {});
        CauseCurve curve = table.curves().get(0);
        return curve.known()
                ? Optional.of(fault.of(
                        fault.sizeAt(CauseBelief.of(curve, new Misfit(readings)).best())))
                : Optional.empty();
    }
}

package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import java.util.List;

/**
 * What meters would read on a sound unit and on units with one fault each: all that depends on where is read and not on what was read.
 *
 * @param build  of the unit
 * @param model  of what is read
 * @param sound  what is expected of the unit without a fault
 * @param curves of each fault, over its size
 */
record GaugeTable(Adjustable build, GaugeModel model, Expectation sound, List<CauseCurve> curves) {

    GaugeTable {
        curves = List.copyOf(curves);
    }

    /**
     * Solves all of it.
     *
     * @param readings whose meters, test points and gauges count; their values do not
     * @param step     called after each fault, from any thread
     * @throws UnsolvedPointException where the sound unit has no state at a test point
     */
    static GaugeTable of(Adjustable build, List<GaugeReading> readings, Runnable step) {
        return of(build, UnitFaults.of(build), readings, step);
    }

    /** The same that solves nothing which was kept, and keeps what it solves. */
    static GaugeTable of(SolvedFaults kept, List<GaugeReading> readings, Runnable step) {
        Adjustable build = kept.tolerances().build();
        GaugeModel model =
                new GaugeModel(kept, readings.stream().map(GaugeReading::row).toList());
        return of(build, UnitFaults.of(build), readings, model, step);
    }

    /** Solves some of the faults. */
    static GaugeTable of(Adjustable build, List<UnitFault> faults, List<GaugeReading> readings, Runnable step) {
        Tolerances tolerances = Tolerances.of(build);
        GaugeModel model = new GaugeModel(
                tolerances,
                tolerances.shifts(),
                readings.stream().map(GaugeReading::row).toList());
        return of(build, faults, readings, model, step);
    }

    private static GaugeTable of(
            Adjustable build, List<UnitFault> faults, List<GaugeReading> readings, GaugeModel model, Runnable step) {
        if (!model.unsolved().isEmpty()) {
            throw new UnsolvedPointException(model.unsolved().get(0));
        }
        Expectation sound = model.sound(model.series());
        Misfit misfit = new Misfit(readings);
        List<CauseCurve> curves = OneByOne.of(faults, fault -> {
            CauseCurve curve = CauseCurve.of(fault, model, misfit, sound);
            step.run();
            return curve;
        });
        return new GaugeTable(build, model, sound, curves);
    }
}

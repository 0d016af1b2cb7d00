package hotidle.answer.report;

import hotidle.fault.UnitFault;
import hotidle.study.SpeedSweep;
import hotidle.study.TellingReading;
import java.util.List;
import java.util.Optional;

/**
 * A unit of a handout.
 *
 * @param sweeps it over engine speed, in each range that is shown
 * @param fault  laid over its build, as it was written; empty where none is
 * @param laid   the same; empty where none is
 * @param tells  where it reads other than it would without the fault, or than the circuit's first build, most first
 * @param readsAs other faults that the handout names and that at some size read as this unit does at all of its gauges
 */
public record LessonUnit(
        List<SpeedSweep> sweeps,
        String fault,
        Optional<UnitFault.Sized> laid,
        List<TellingReading> tells,
        List<UnitFault> readsAs) {

    public LessonUnit {
        sweeps = List.copyOf(sweeps);
        tells = List.copyOf(tells);
        readsAs = List.copyOf(readsAs);
    }

    /** In the first range. */
    SpeedSweep sweep() {
        return sweeps.get(0);
    }
}

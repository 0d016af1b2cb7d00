package hotidle.cli.live;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The state of a page: all that an answer depends on comes with the question.
 *
 * @param build             name of the build
 * @param duty              name of the driving condition that is looked at
 * @param setPressurePa     highest set pressure in the forward ranges; empty: as the build has it
 * @param engineSpeedRpm    at that driving condition; empty: its own
 * @param sumpTemperatureC  the same
 * @param sizes             that differ from those of the build, by part and key [m] or [m²]
 * @param faults            laid over it, as they are written behind {@code --fault}
 * @param jobs              done to the build before anything else, by name
 */
record AskedState(
        String build,
        String duty,
        OptionalDouble setPressurePa,
        OptionalDouble engineSpeedRpm,
        OptionalDouble sumpTemperatureC,
        Map<String, Double> sizes,
        List<String> faults,
        List<String> jobs) {

    AskedState {
        sizes = sizes == null ? Map.of() : Map.copyOf(sizes);
        faults = faults == null ? List.of() : List.copyOf(faults);
        jobs = jobs == null ? List.of() : List.copyOf(jobs);
        setPressurePa = setPressurePa == null ? OptionalDouble.empty() : setPressurePa;
        engineSpeedRpm = engineSpeedRpm == null ? OptionalDouble.empty() : engineSpeedRpm;
        sumpTemperatureC = sumpTemperatureC == null ? OptionalDouble.empty() : sumpTemperatureC;
    }

    /** The same without a fault laid over it. */
    AskedState withoutFaults() {
        return new AskedState(build, duty, setPressurePa, engineSpeedRpm, sumpTemperatureC, sizes, List.of(), jobs);
    }

    /** The same after other jobs. */
    AskedState withJobs(List<String> others) {
        return new AskedState(build, duty, setPressurePa, engineSpeedRpm, sumpTemperatureC, sizes, faults, others);
    }

    /** The same with the set pressure that the build has. */
    AskedState setAsWritten() {
        return new AskedState(
                build, duty, OptionalDouble.empty(), engineSpeedRpm, sumpTemperatureC, sizes, faults, jobs);
    }

    /** The same with all driving conditions as they are written. */
    AskedState drivenAsWritten() {
        return new AskedState(
                build, null, setPressurePa, OptionalDouble.empty(), OptionalDouble.empty(), sizes, faults, jobs);
    }

    /** The build as the file has it, at its first driving condition. */
    static AskedState asWritten() {
        return new AskedState(
                null,
                null,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Map.of(),
                List.of(),
                List.of());
    }
}

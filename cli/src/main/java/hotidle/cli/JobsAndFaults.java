package hotidle.cli;

import java.util.Optional;
import picocli.CommandLine.Mixin;

/** Jobs done to the builds that are asked for, and faults laid over them. */
final class JobsAndFaults {

    @Mixin
    private JobOption jobs;

    @Mixin
    private FaultOption faults;

    /** What is asked for, at no other set pressure. */
    BuildWork asked() {
        return asked(Optional.empty());
    }

    /** The same at a set pressure. */
    BuildWork asked(Optional<NewPressure> set) {
        return new BuildWork(jobs.named(), set, faults);
    }
}

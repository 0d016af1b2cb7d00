package hotidle.cli;

import java.util.List;
import picocli.CommandLine.Option;

/** Jobs done to the builds that are asked for. */
final class JobOption {

    @Option(
            names = "--job",
            paramLabel = "JOB",
            description = "a job done to each build, as 'hotidle leaks --by job' names it; give it again for each."
                    + " Jobs are done first, then the pressure is set, and faults are laid over all of it")
    private List<String> jobs = List.of();

    /** By name, each once. */
    List<String> named() {
        return jobs.stream().distinct().toList();
    }
}

package hotidle.cli;

import picocli.CommandLine.Option;

/** Whether a page is a handout for learners, and in which order its units stand. */
final class LessonOptions {

    @Option(
            names = "--lesson",
            description =
                    "a handout for learners instead: units called by letters, their gauges read, the key on a page of"
                            + " its own; each --fault makes a unit of the first build")
    private boolean lesson;

    @Option(
            names = "--seed",
            paramLabel = "NUMBER",
            defaultValue = "1",
            description = "order of the builds of a handout: another number, another order. Default: ${DEFAULT-VALUE}")
    private long seed;

    /**
     * Whether it is asked for.
     *
     * @throws WrongInputException where it is not, and a fault is
     */
    boolean asked(FaultOption faults) {
        if (!lesson && faults.given()) {
            throw new WrongInputException(
                    "hotidle: --fault makes a unit of a handout\nmend: write --lesson too, or ask compare, which lays it over builds");
        }
        return lesson;
    }

    /** Seed of the order. */
    long seed() {
        return seed;
    }
}

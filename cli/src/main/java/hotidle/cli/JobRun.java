package hotidle.cli;

import hotidle.answer.jobs.JobsAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.JobPlace;
import hotidle.study.JobStudy;
import hotidle.study.UsefulPressure;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** Tries jobs, for {@code leaks --by job}. */
record JobRun(CommandSpec spec, OutputOptions shared, AfterWork asked) {

    /** Step of the engine speeds over which the hub is searched, where none are given (chosen) [rev/s]. */
    static final double STEP = 200 / 60.0;

    /**
     * Tries and prints.
     *
     * @param onsets over which the onset of regulation is searched [rev/s]
     * @param given  the speeds as the user gave them; null where he gave none
     */
    int run(DescribedCircuit described, Adjustable build, DutyPoint duty, List<Double> onsets, String given) {
        Optional<Workshop> named = described.workshop(build.unit().build());
        Workshop shop = named.orElseGet(() -> JobPlace.workshop(build));
        List<Double> speeds = OptionValues.searched(given, shop.unit(), STEP);
        Progress progress = new Progress(
                spec.commandLine().getErr(), "trying jobs", 2 * shop.jobs().size() + 1);
        JobStudy study = JobStudy.of(shop, asked.by(), duty, onsets, speeds, progress::step);
        progress.end();
        return Printed.print(
                spec,
                shared,
                new JobsAnswer(
                        shared.units(),
                        shop,
                        named.isPresent(),
                        asked.setAfterJobs(),
                        duty,
                        study,
                        asked.setAsked()
                                ? UsefulPressure.below(
                                        shop.unit(), asked.by(), shop.unit().highestSet())
                                : Optional.empty()));
    }
}

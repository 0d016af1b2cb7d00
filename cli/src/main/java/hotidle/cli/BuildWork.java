package hotidle.cli;

import hotidle.answer.WorkRecord;
import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.AfterWorkPhrase;
import hotidle.answer.phrase.JobPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Nearest;
import hotidle.study.JobPlace;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What is done to builds before they are looked at, in this order: jobs to the build as its file or sheet has it, then another set
 * pressure, then faults over all of it. A spring is set for a sound unit, so that no fault is made up for by it.
 *
 * @param jobs   by name
 * @param set    pressure in place of the build's own
 * @param faults laid over it
 */
record BuildWork(List<String> jobs, Optional<NewPressure> set, FaultOption faults) {

    BuildWork {
        jobs = List.copyOf(jobs);
    }

    /** Whether anything is done. */
    boolean given() {
        return makesAnother() || faults.given();
    }

    /** Whether a build comes of it that stands beside the one it is made of; a fault only lies over a build. */
    boolean makesAnother() {
        return !jobs.isEmpty() || set.isPresent();
    }

    /** Whether jobs and another set pressure both are: two things, told apart one after the other. */
    boolean setAndJobs() {
        return !jobs.isEmpty() && set.isPresent();
    }

    /** Its set pressure and faults, without jobs. */
    BuildWork withoutJobs() {
        return new BuildWork(List.of(), set, faults);
    }

    /** Its faults alone. */
    BuildWork faultsAlone() {
        return new BuildWork(List.of(), Optional.empty(), faults);
    }

    /**
     * The name of a build after it: one to which no job is done is not called so.
     *
     * @param others names that are taken
     */
    String called(String build, List<String> others) {
        String name = set.filter(one -> jobs.isEmpty())
                .map(one -> AfterWorkPhrase.setTo(build, one.written()))
                .orElse(jobs.isEmpty() ? build : AfterWorkPhrase.after(build));
        while (makesAnother() && others.contains(name)) {
            name = AfterWorkPhrase.after(name);
        }
        return name;
    }

    /** What is done, in words that stand behind a circuit's name; empty where nothing is. */
    String headed(Quantity.UnitSystem units) {
        return given() ? AfterWorkPhrase.heading(units, jobs, pressure(), faults.written()) : "";
    }

    /** What is done, in words. */
    String said(Quantity.UnitSystem units) {
        return AfterWorkPhrase.of(units, jobs, pressure(), faults.written());
    }

    /**
     * The same where builds stand beside it as they are.
     *
     * @param left builds in which the jobs have nothing to do
     */
    String besideSaid(Quantity.UnitSystem units, List<String> left) {
        return AfterWorkPhrase.beside(units, jobs, pressure(), faults.written()) + AfterWorkPhrase.nothingToDo(left);
    }

    /** How a build after jobs is asked for, behind --build. */
    String asked(String build) {
        return build
                + jobs.stream()
                        .map(job -> " --job " + (job.contains(" ") ? '"' + job + '"' : job))
                        .collect(Collectors.joining());
    }

    /** The same as JSON. */
    WorkRecord record() {
        return new WorkRecord(jobs, pressure(), faults.written());
    }

    private OptionalDouble pressure() {
        return set.map(one -> OptionalDouble.of(one.pressure())).orElse(OptionalDouble.empty());
    }

    /**
     * A circuit with a build more for each of some, after the work.
     *
     * @throws WrongInputException where it cannot be done to one of them
     */
    WorkedBuilds on(DescribedCircuit described, List<Adjustable> builds, Quantity.UnitSystem units) {
        return on(
                described,
                builds,
                builds.stream().map(one -> one.unit().build()).toList(),
                units);
    }

    /**
     * The same.
     *
     * @param under names of what each build after the work is to be compared with
     */
    WorkedBuilds on(
            DescribedCircuit described, List<Adjustable> builds, List<String> under, Quantity.UnitSystem units) {
        known(described, builds);
        List<String> taken =
                described.builds().stream().map(DescribedCircuit.Build::name).toList();
        DescribedCircuit all = described;
        List<String> names = new ArrayList<>();
        for (int i = 0; i < builds.size(); i++) {
            Adjustable build = builds.get(i);
            String name = called(build.unit().build(), taken);
            names.add(name);
            if (given()) {
                Adjustable after = after(described, build, name);
                all = all.with(
                        new DescribedCircuit.Build(
                                name,
                                said(units),
                                makesAnother() ? Optional.of(under.get(i)) : on(described, name),
                                List.of(),
                                Optional.empty()),
                        after,
                        workshop(described, build, name));
            }
        }
        return new WorkedBuilds(given() ? all.about(headed(units)) : all, names);
    }

    private static Optional<String> on(DescribedCircuit described, String build) {
        return described.builds().stream()
                .filter(one -> one.name().equals(build))
                .findFirst()
                .flatMap(DescribedCircuit.Build::on);
    }

    private Adjustable after(DescribedCircuit described, Adjustable build, String name) {
        Adjustable worked = jobs.isEmpty() ? build : worked(shop(described, build));
        Adjustable pressed = set.map(one -> one.of(worked)).orElse(worked);
        Adjustable named = name.equals(pressed.unit().build()) ? pressed : pressed.named(name);
        return faults.given() ? faults.over(named) : named;
    }

    private Adjustable worked(Workshop shop) {
        try {
            return shop.rework().after(done(shop));
        } catch (IllegalArgumentException impossible) {
            throw new WrongInputException(
                    "hotidle: --job " + String.join(", ", jobs) + ": what these jobs leave behind in "
                            + shop.unit().build() + " is impossible\nmend: name fewer jobs");
        }
    }

    /** The jobs of the file that are left, on top of those done; none under a fault, which a job would not mend as it is written. */
    private Optional<Workshop> workshop(DescribedCircuit described, Adjustable build, String name) {
        if (faults.given()) {
            return Optional.empty();
        }
        return described.workshop(build.unit().build()).map(shop -> {
            Workshop done = shop.done(done(shop));
            return set.map(one -> done.setTo(one.pressure(), one.setBy().by()))
                    .orElse(done)
                    .named(name);
        });
    }

    private static Workshop shop(DescribedCircuit described, Adjustable build) {
        return described.workshop(build.unit().build()).orElseGet(() -> JobPlace.workshop(build));
    }

    /** Whether the jobs have nothing to do in a build, which would stand beside itself. */
    boolean leaves(DescribedCircuit described, Adjustable build) {
        return !jobs.isEmpty()
                && worked(shop(described, build))
                        .unit()
                        .network()
                        .parts()
                        .equals(build.unit().network().parts());
    }

    /** The jobs that there are to do; a build that is not worn at a place needs none there. */
    private List<Job> done(Workshop shop) {
        List<String> names = names(shop);
        return shop.jobs(jobs.stream().filter(names::contains).toList());
    }

    private static List<String> names(Workshop shop) {
        return shop.jobs().stream().map(Job::name).toList();
    }

    /** Every job is one of some build. */
    private void known(DescribedCircuit described, List<Adjustable> builds) {
        Set<String> names = new LinkedHashSet<>();
        if (!jobs.isEmpty()) {
            builds.forEach(build -> names.addAll(names(shop(described, build))));
        }
        for (String name : jobs) {
            if (!names.contains(name)) {
                String of = builds.stream().map(one -> one.unit().build()).collect(Collectors.joining(", "));
                throw new WrongInputException(
                        "hotidle: --job " + name + ": " + JobPhrase.noSuchJob(of, JobPlace.named(name))
                                + "\nmend: "
                                + (names.isEmpty() ? JobPhrase.LEAVE_OUT : Nearest.mend(name, names)));
            }
        }
    }
}

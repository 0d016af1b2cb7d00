package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.AfterWorkPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Nearest;
import hotidle.study.JobPlace;
import hotidle.transmission.Job;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Options that ask of builds what they would be after some jobs, at another set pressure. */
final class AfterWork {

    @Option(
            names = "--job",
            paramLabel = "JOB",
            description = "a job that is done first, as 'hotidle leaks --by job' names it; give it again for each")
    private List<String> jobs = List.of();

    @Mixin
    private AskedPressure asked;

    /** Whether anything is asked for. */
    boolean given() {
        return !jobs.isEmpty() || asked.pressure().isPresent();
    }

    /** The build after the jobs, at the set pressure asked for; it keeps its name. */
    Transmission of(DescribedCircuit described, Transmission unit) {
        asked.check(unit);
        Workshop own =
                described.workshop(unit.build()).orElseGet(() -> JobPlace.workshop(described.adjustable(unit.build())));
        List<Job> done = new ArrayList<>();
        jobs.stream().distinct().forEach(name -> done.add(job(own, name)));
        Workshop shop =
                asked.pressure().isPresent() ? own.setTo(asked.pressure().getAsDouble(), asked.by()) : own;
        return shop.after(done)
                .orElseThrow(() -> new WrongInputException(
                        "hotidle: --job " + String.join(", ", jobs) + ": what these jobs leave behind in "
                                + unit.build() + " is impossible\nmend: name fewer jobs"));
    }

    /** Each build as it is, and after the work beside it. */
    List<Transmission> beside(DescribedCircuit described, List<Transmission> units) {
        return units.stream()
                .flatMap(unit -> Stream.of(unit, of(described, unit).named(called(unit.build()))))
                .toList();
    }

    /** The circuit with a build more for each after the work. */
    DescribedCircuit described(DescribedCircuit described, List<Transmission> units, Quantity.UnitSystem system) {
        DescribedCircuit all = described;
        for (Transmission unit : units) {
            all = all.and(new DescribedCircuit.Build(
                    called(unit.build()), said(system), Optional.of(unit.build()), List.of()));
        }
        return all;
    }

    private static Job job(Workshop shop, String name) {
        List<String> names = shop.jobs().stream().map(Job::name).toList();
        return shop.jobs().stream()
                .filter(job -> job.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new WrongInputException("hotidle: --job " + name + ": "
                        + shop.unit().build() + " has no such job\nmend: " + Nearest.mend(name, names)));
    }

    /** What was done, in words, for the builds that it was done to. */
    String said(Quantity.UnitSystem units) {
        return AfterWorkPhrase.of(units, jobs, asked.pressure());
    }

    /** The name of a build after it, among others as they are. */
    static String called(String build) {
        return build + AfterWorkPhrase.AFTER;
    }
}

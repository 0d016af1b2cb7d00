package hotidle.study;

import hotidle.geartrain.Link;
import hotidle.network.Placed;
import hotidle.part.SpoolSpring;
import hotidle.part.SpoolValve;
import hotidle.transmission.Command;
import hotidle.transmission.Job;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which jobs a build takes that is made of another one. A job is taken where each part that it changes is another one than before;
 * whether it was done to the same size is not asked.
 *
 * @param jobs  in the order of the file
 * @param parts that are other ones and belong to none of these jobs
 * @param links that carry in the gear train and have another rating: another shaft is bought or made
 * @param set   what was done for another set pressure; empty where nothing was
 */
public record StageJobs(List<Job> jobs, List<String> parts, List<String> links, Optional<OtherSet> set) {

    /**
     * Another set pressure, which no job of refitting brings.
     *
     * @param before  highest in the forward ranges [Pa]
     * @param after   the same [Pa]
     * @param spring  whether the regulator has another spring, or the same one pressed otherwise
     * @param areas   whether pressures act on other areas of the regulator
     * @param command whether the controller asks for other pressures
     */
    public record OtherSet(double before, double after, boolean spring, boolean areas, boolean command) {}

    /** Of a spring that is solved for a set pressure, a preload so near is the same (chosen) [-]. */
    private static final double SAME = 1e-6;

    /** Jobs that leave the set pressure as it was. */
    public StageJobs(List<Job> jobs, List<String> parts, List<String> links) {
        this(jobs, parts, links, Optional.empty());
    }

    public StageJobs {
        jobs = List.copyOf(jobs);
        parts = List.copyOf(parts);
        links = List.copyOf(links);
    }

    /**
     * Of a build.
     *
     * @param before the unit as it comes in, with the jobs that can be done to it
     * @param stage  the unit as it leaves
     */
    public static StageJobs of(Workshop before, Transmission stage) {
        Set<String> changed = changed(before.unit(), stage);
        List<Job> taken = new ArrayList<>();
        Set<String> explained = new LinkedHashSet<>();
        for (Job job : before.jobs()) {
            Optional<Set<String>> touched = before.after(List.of(job)).map(unit -> changed(before.unit(), unit));
            if (touched.isPresent() && !touched.get().isEmpty() && changed.containsAll(touched.get())) {
                taken.add(job);
                explained.addAll(touched.get());
            }
        }
        List<String> rest =
                changed.stream().filter(part -> !explained.contains(part)).toList();
        return new StageJobs(taken, rest, links(before.unit(), stage), set(before.unit(), stage));
    }

    private static Optional<OtherSet> set(Transmission one, Transmission other) {
        if (one.commanded().isEmpty() || other.commanded().isEmpty()) {
            return Optional.empty();
        }
        OtherSet set = new OtherSet(
                one.highestSet(),
                other.highestSet(),
                !same(regulator(one).spring(), regulator(other).spring()),
                !regulator(one).areas().equals(regulator(other).areas()),
                !one.command().pilot().equals(other.command().pilot()));
        return set.spring() || set.areas() || set.command() ? Optional.of(set) : Optional.empty();
    }

    private static boolean same(SpoolSpring one, SpoolSpring other) {
        return Math.abs(one.preload() - other.preload()) <= SAME * Math.abs(one.preload())
                && Math.abs(one.rate() - other.rate()) <= SAME * one.rate();
    }

    private static SpoolValve regulator(Transmission unit) {
        Command command = unit.command();
        return (SpoolValve)
                unit.network().part(command.regulator()).orElseThrow().part();
    }

    /** Hours of all jobs; empty where one is not known. */
    public Optional<Double> hours() {
        return jobs.stream().allMatch(job -> job.hours().isPresent())
                ? Optional.of(jobs.stream()
                        .mapToDouble(job -> job.hours().getAsDouble())
                        .sum())
                : Optional.empty();
    }

    /** Price of all jobs; empty where one is not known. */
    public Optional<Double> price() {
        return jobs.stream().allMatch(job -> job.price().isPresent())
                ? Optional.of(jobs.stream()
                        .mapToDouble(job -> job.price().getAsDouble())
                        .sum())
                : Optional.empty();
    }

    private static Set<String> changed(Transmission one, Transmission other) {
        return one.network().parts().stream()
                .filter(placed ->
                        !other.network().part(placed.name()).map(Placed::part).equals(Optional.of(placed.part())))
                .map(Placed::name)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<String> links(Transmission one, Transmission other) {
        List<Link> before = one.gears().map(Transmission.Gears::links).orElse(List.of());
        return other.gears().map(Transmission.Gears::links).orElse(List.of()).stream()
                .filter(link -> !before.contains(link))
                .map(Link::name)
                .toList();
    }
}

package hotidle.study;

import hotidle.geartrain.Link;
import hotidle.network.Placed;
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
 * @param links that carry in the gear train and have another rating
 */
public record StageJobs(List<Job> jobs, List<String> parts, List<String> links) {

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
        return new StageJobs(taken, rest, links(before.unit(), stage));
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

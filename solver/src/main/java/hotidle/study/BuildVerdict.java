package hotidle.study;

import hotidle.assess.Margin;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a build comes to over all its duty points.
 *
 * @param first    the limit that is told first; empty where nothing is judged
 * @param dragging the first clutch found that presses although its range does not apply it; it fails whatever the limits say
 * @param notKnown the first duty point at which no steady state was found
 * @param undecided limits of which it is not known whether they hold; none of them is the first
 */
public record BuildVerdict(
        Optional<FirstLimit> first,
        Optional<DraggingClutch> dragging,
        Optional<String> notKnown,
        List<Judgement.Key> undecided) {

    public BuildVerdict {
        undecided = List.copyOf(undecided);
    }

    /**
     * The limit that is told first.
     *
     * @param duty     at which duty point
     * @param margin   which
     * @param shortage why, where the pump cannot hold the line
     * @param line     why, where the pump has oil for all and it fails all the same
     */
    public record FirstLimit(String duty, Margin margin, Optional<PumpShortage> shortage, Optional<LineShort> line) {}

    /**
     * The order in which limits are told, everywhere: the first limit before all, then the least headroom.
     *
     * @param verdict on the build whose limits they are
     */
    static Comparator<JobStudy.JudgedLimit> firstFails(BuildVerdict verdict) {
        return Comparator.comparing((JobStudy.JudgedLimit limit) ->
                        !verdict.isFirst(limit.key().duty(), limit.margin()))
                .thenComparingDouble(limit -> limit.margin().headroom());
    }

    /** Whether a limit at a duty point is the one that is told first. */
    public boolean isFirst(String duty, Margin margin) {
        return first.filter(limit -> limit.duty().equals(duty) && limit.margin().equals(margin))
                .isPresent();
    }

    /** The verdict on all duty points of one build. */
    public static BuildVerdict of(List<Judgement> duties) {
        return new BuildVerdict(
                duties.stream()
                        .filter(judged -> judged.least().isPresent())
                        .min(Comparator.comparingDouble(
                                judged -> judged.least().orElseThrow().headroom()))
                        .map(BuildVerdict::first),
                duties.stream()
                        .flatMap(judged -> judged.draggingClutches().stream())
                        .findFirst(),
                duties.stream()
                        .filter(judged -> judged.outcome().state().isEmpty())
                        .map(judged -> judged.duty().name())
                        .findFirst(),
                duties.stream()
                        .flatMap(judged ->
                                judged.undecided().stream().map(margin -> Judgement.Key.of(judged.duty(), margin)))
                        .toList());
    }

    private static FirstLimit first(Judgement worst) {
        Margin first = worst.first().orElseThrow();
        return new FirstLimit(
                worst.duty().name(),
                first,
                PumpShortage.of(worst).filter(any -> first.kind() == Margin.Kind.REGULATION),
                LineShort.of(worst, first));
    }
}

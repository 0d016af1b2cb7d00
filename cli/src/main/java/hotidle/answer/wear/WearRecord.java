package hotidle.answer.wear;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.LimitRecord;
import hotidle.study.FilmFeed;
import hotidle.study.Wear;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How far the fits of a build may wear, as JSON. */
record WearRecord(String circuit, List<BuildRecord> builds) {

    record BuildRecord(
            String build,
            List<LimitRecord> failAlready,
            List<String> unsolvedDuties,
            List<FitRecord> fits,
            List<FeedRecord> filmFeeds,
            List<LimitRecord> notKnown,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<TogetherRecord> together) {}

    /** A fit that wears alone; sizes in its unit. */
    record FitRecord(
            String fit,
            String unit,
            @JsonProperty("new") double fresh,
            double asIs,
            OptionalDouble shopLimit,
            Optional<Double> goneAt,
            double searchedTo,
            List<LimitRecord> firstGone,
            OptionalDouble publishedAllowance) {

        static FitRecord of(Wear.WornFit fit) {
            WearSize size = fit.dimension();
            return new FitRecord(
                    size.name(),
                    size.kind() == WearSize.SizeKind.AREA ? "m2" : "m",
                    size.fresh(),
                    size.value(),
                    size.limit(),
                    fit.size(),
                    fit.searched(),
                    LimitRecord.of(fit.gone()),
                    fit.published());
        }
    }

    /** How tight a fit may be that feeds the film of the hub bushing. */
    record FeedRecord(String fit, double asIs, Optional<Double> least, Optional<LimitRecord> by, double searchedTo) {

        static FeedRecord of(FilmFeed feed) {
            return new FeedRecord(
                    feed.dimension().name(),
                    feed.dimension().value(),
                    feed.least(),
                    feed.by().map(LimitRecord::of),
                    feed.searched());
        }
    }

    record TogetherRecord(
            Optional<Double> shareOfWrittenLimits, List<LimitRecord> firstGone, List<LimitRecord> failWhenNew) {}

    static WearRecord of(String circuit, List<BuildWear> builds) {
        return new WearRecord(circuit, builds.stream().map(WearRecord::build).toList());
    }

    private static BuildRecord build(BuildWear one) {
        Wear wear = one.wear();
        return new BuildRecord(
                one.build(),
                LimitRecord.of(wear.already()),
                wear.unsolved(),
                wear.fits().stream().map(FitRecord::of).toList(),
                wear.feeds().stream().map(FeedRecord::of).toList(),
                LimitRecord.of(wear.undecided()),
                wear.together()
                        .map(all -> new TogetherRecord(
                                all.share(), LimitRecord.of(all.gone()), LimitRecord.of(all.already()))));
    }
}

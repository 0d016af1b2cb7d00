package hotidle.answer.sensitivity;

import hotidle.study.Judgement;
import hotidle.study.Sensitivity;
import hotidle.transmission.WearSize;
import java.util.List;
import java.util.Optional;

/** How much each size moves each limit, as JSON. */
record SensitivityRecord(String circuit, List<BuildSensitivities> builds) {

    record BuildSensitivities(
            String build,
            Optional<LeastHeadroom> least,
            List<Slope> sensitivities,
            List<String> leftOut,
            List<String> unsolvedDuties) {}

    /** The limit with the least headroom. */
    record LeastHeadroom(String margin, String part, String duty, double headroom) {}

    /** Change of a limit's headroom by a size, whose unit is told. */
    record Slope(
            String margin,
            String part,
            String duty,
            double headroom,
            String size,
            String sizeUnit,
            double now,
            double headroomBySize,
            boolean oneSided) {}

    static SensitivityRecord of(SensitivityAnswer answer) {
        return new SensitivityRecord(
                answer.circuit(),
                answer.builds().stream()
                        .map(one -> build(one.build(), one.found()))
                        .toList());
    }

    private static BuildSensitivities build(String name, Sensitivity found) {
        return new BuildSensitivities(
                name,
                found.least().map(key -> least(found, key)),
                found.rates().stream().map(rate -> slope(found, rate)).toList(),
                NotCounted.of(found.leftOut()),
                found.unsolved());
    }

    private static LeastHeadroom least(Sensitivity found, Judgement.Key key) {
        return new LeastHeadroom(
                key.kind().word(),
                key.part(),
                key.duty(),
                found.margins().get(key).headroom());
    }

    private static Slope slope(Sensitivity found, Sensitivity.Rate rate) {
        WearSize size = rate.dimension();
        return new Slope(
                rate.key().kind().word(),
                rate.key().part(),
                rate.key().duty(),
                found.margins().get(rate.key()).headroom(),
                size.name(),
                size.kind() == WearSize.SizeKind.AREA ? "m2" : "m",
                size.value(),
                rate.slope(),
                rate.oneSided());
    }
}

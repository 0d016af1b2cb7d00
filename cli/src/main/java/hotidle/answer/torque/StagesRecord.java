package hotidle.answer.torque;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.UsefulPressureRecord;
import hotidle.study.StageJobs;
import hotidle.study.TorqueHeld.Carrier;
import hotidle.study.TorqueHeld.Held;
import hotidle.study.Wear;
import hotidle.transmission.Job;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Stages, as JSON. */
record StagesRecord(String circuit, String before, List<StageRecord> stages) {

    record StageRecord(
            String build,
            @JsonProperty("engine_torque_n_m") OptionalDouble engineTorque,
            Optional<String> range,
            List<String> links,
            double setPressurePa,
            UsefulPressureRecord usefulPressure,
            List<AllowedRecord> allHold,
            OptionalDouble wearShare,
            Optional<List<String>> jobs,
            Optional<List<String>> otherParts,
            Optional<List<String>> otherLinks,
            Optional<OtherSetRecord> otherSet,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<AskedRecord> asked) {}

    /** Another set pressure than that of the build that comes in. */
    record OtherSetRecord(double beforePa, double afterPa, boolean spring, boolean areas, boolean command) {

        static OtherSetRecord of(StageJobs.OtherSet set) {
            return new OtherSetRecord(set.before(), set.after(), set.spring(), set.areas(), set.command());
        }
    }

    record AllowedRecord(double lowPa, double highPa) {}

    static StagesRecord of(StagesAnswer answer) {
        return new StagesRecord(
                answer.circuit(),
                answer.before(),
                answer.stages().stream().map(StagesRecord::stage).toList());
    }

    private static StageRecord stage(Stage stage) {
        Optional<Held> held = stage.held().least().flatMap(range -> range.held());
        return new StageRecord(
                stage.name(),
                held.stream().mapToDouble(Held::torque).findFirst(),
                stage.held().least().map(range -> range.range()),
                held.stream()
                        .flatMap(one -> one.links().stream())
                        .map(Carrier::name)
                        .toList(),
                stage.set(),
                UsefulPressureRecord.of(stage.held().useful()),
                stage.window().all().stream()
                        .map(range -> new AllowedRecord(range.low(), range.high()))
                        .toList(),
                share(stage.wear()),
                stage.jobs().map(jobs -> jobs.jobs().stream().map(Job::name).toList()),
                stage.jobs().map(StageJobs::parts),
                stage.jobs().map(StageJobs::links),
                stage.jobs().flatMap(StageJobs::set).map(OtherSetRecord::of),
                AskedRecord.of(stage.held()));
    }

    /** Empty where no limit is gone as far as was looked, or where nothing has a written limit; nil where one fails when new. */
    private static OptionalDouble share(Wear wear) {
        if (wear.together().isEmpty()) {
            return OptionalDouble.empty();
        }
        Wear.Together all = wear.together().get();
        return all.already().isEmpty()
                ? all.share().stream().mapToDouble(Double::doubleValue).findFirst()
                : OptionalDouble.of(0);
    }
}

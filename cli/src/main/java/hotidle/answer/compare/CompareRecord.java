package hotidle.answer.compare;

import com.fasterxml.jackson.annotation.JsonInclude;
import hotidle.answer.Settling;
import hotidle.answer.StateRecord;
import hotidle.answer.format.Rpm;
import hotidle.study.Comparison;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A comparison as JSON. */
record CompareRecord(
        String circuit,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Settling.NeverSettledRecord> noTemperature,
        List<BuildFigures> builds) {

    /** One build; maps are by duty point. */
    record BuildFigures(
            String build,
            Map<String, OptionalDouble> onsetRpm,
            Map<String, OptionalDouble> secondaryUnloadsFromRpm,
            Map<String, LeastFilmRecord> leastFilm,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<TorqueAsked.AskedOfBuild> asked,
            List<StateRecord> states) {}

    /** The hub's least film over speed; speed and film are left out where there is none. */
    record LeastFilmRecord(
            boolean metalContact,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Double> engineSpeedRpm,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Double> leastFilmM) {

        static LeastFilmRecord of(Comparison.BuildAtDuty cell) {
            return new LeastFilmRecord(
                    !cell.sweep().contactSpeeds().isEmpty(),
                    cell.sweep()
                            .thinnestFilm()
                            .map(state -> Rpm.of(state.conditions().speed())),
                    HubRows.least(cell));
        }
    }

    static CompareRecord of(Comparison comparison, Settling settling, Optional<TorqueAsked> asked) {
        return new CompareRecord(
                comparison.units().get(0).circuit(),
                settling.records(),
                comparison.units().stream()
                        .map(unit -> build(comparison, unit, asked))
                        .toList());
    }

    private static BuildFigures build(Comparison comparison, Transmission unit, Optional<TorqueAsked> asked) {
        Map<String, OptionalDouble> onsets = new LinkedHashMap<>();
        Map<String, OptionalDouble> unloading = new LinkedHashMap<>();
        Map<String, LeastFilmRecord> films = new LinkedHashMap<>();
        List<Comparison.BuildAtDuty> cells = comparison.duties().stream()
                .map(duty -> comparison.cell(unit.build(), duty.name()))
                .toList();
        for (Comparison.BuildAtDuty cell : cells) {
            String duty = cell.duty().name();
            onsets.put(duty, Rpm.of(cell.sweep().onset()));
            unloading.put(duty, Rpm.of(cell.sweep().unloading()));
            films.put(duty, LeastFilmRecord.of(cell));
        }
        return new BuildFigures(
                unit.build(),
                onsets,
                unloading,
                films,
                asked.map(torque -> torque.record(unit.build())),
                cells.stream()
                        .map(cell -> StateRecord.of(unit, cell.duty(), cell.outcome(), cell.assessed()))
                        .toList());
    }
}

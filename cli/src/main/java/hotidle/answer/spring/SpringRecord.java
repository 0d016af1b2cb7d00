package hotidle.answer.spring;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.LimitRecord;
import hotidle.assess.Figures;
import hotidle.study.SpringStudy;
import hotidle.study.SpringStudy.ChangeEffect;
import hotidle.transmission.SpringChange;
import hotidle.transmission.SpringChange.Lever;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a regulator comes to another set pressure, as JSON. */
record SpringRecord(
        String circuit,
        String build,
        double setPressureNowPa,
        double setPressureWantedPa,
        EffectRecord asItIs,
        Optional<JudgedRecord> judged,
        List<ChangeRecord> changes) {

    /** What the unit comes to with a change; no limit where nothing is judged. */
    record JudgedRecord(String change, String signal, String summary, Optional<LimitRecord> first) {}

    /** One change alone; of what is changed only the keys of its own quantity are there. */
    record ChangeRecord(
            String change,
            String signal,
            Optional<String> cannotBecause,
            OptionalDouble preloadNowN,
            OptionalDouble preloadNeededN,
            OptionalDouble shimAddedM,
            @JsonProperty("spring_rate_now_n_m") OptionalDouble rateNow,
            @JsonProperty("spring_rate_needed_n_m") OptionalDouble rateNeeded,
            @JsonProperty("boost_area_now_m2") OptionalDouble areaNow,
            @JsonProperty("boost_area_needed_m2") OptionalDouble areaNeeded,
            OptionalDouble boostDiameterNowM,
            OptionalDouble boostDiameterNeededM,
            OptionalDouble coilsOverStopM,
            Optional<EffectRecord> effect) {}

    /** What a unit asks for and does. */
    record EffectRecord(double noTorqueSetPa, OptionalDouble reverseSetPa, List<DutyRecord> duties) {}

    /** At a duty; no numbers where its state was not found. */
    record DutyRecord(
            String duty,
            boolean solved,
            OptionalDouble setPressurePa,
            OptionalDouble linePa,
            OptionalDouble converterChargePa,
            boolean reliefOpen,
            boolean regulatorAtEnd) {}

    static SpringRecord of(SpringAnswer answer) {
        SpringStudy study = answer.study();
        return new SpringRecord(
                study.unit().circuit(),
                study.unit().build(),
                study.now(),
                study.pressure(),
                effect(study.asIs()),
                answer.judged()
                        .map(one -> new JudgedRecord(
                                word(one.change().lever()),
                                one.change().signal(),
                                answer.verdict(one),
                                one.build().verdict().first().map(LimitRecord::of))),
                study.ways().stream().map(SpringRecord::change).toList());
    }

    private static ChangeRecord change(SpringStudy.Way way) {
        SpringChange change = way.change();
        return new ChangeRecord(
                word(change.lever()),
                change.signal(),
                change.obstacle().map(SpringRecord::word),
                of(change, Lever.PRELOAD, OptionalDouble.of(change.now())),
                of(change, Lever.PRELOAD, change.needed()),
                of(change, Lever.SHIM, change.needed()),
                of(change, Lever.RATE, OptionalDouble.of(change.now())),
                of(change, Lever.RATE, change.needed()),
                of(change, Lever.BOOST, OptionalDouble.of(change.now())),
                of(change, Lever.BOOST, change.needed()),
                of(change, Lever.BOOST, shown(OptionalDouble.of(change.now()))),
                of(change, Lever.BOOST, shown(change.needed())),
                change.overStop(),
                way.effect().map(SpringRecord::effect));
    }

    private static String word(Enum<?> one) {
        return one.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static OptionalDouble of(SpringChange change, Lever lever, OptionalDouble value) {
        return change.lever() == lever ? value : OptionalDouble.empty();
    }

    private static OptionalDouble shown(OptionalDouble area) {
        return area.stream().map(one -> SpringRows.shown(Lever.BOOST, one)).findFirst();
    }

    private static EffectRecord effect(ChangeEffect effect) {
        return new EffectRecord(
                effect.noTorque(),
                effect.reverse(),
                effect.duties().stream()
                        .map(at -> new DutyRecord(
                                at.duty().name(),
                                at.figures().isPresent(),
                                at.figures().map(Figures::set).orElse(OptionalDouble.empty()),
                                at.figures()
                                        .map(f -> OptionalDouble.of(f.line()))
                                        .orElse(OptionalDouble.empty()),
                                at.figures().map(Figures::charge).orElse(OptionalDouble.empty()),
                                at.figures().map(Figures::reliefOpen).orElse(false),
                                at.atStop()))
                        .toList());
    }
}

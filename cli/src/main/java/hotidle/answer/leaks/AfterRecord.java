package hotidle.answer.leaks;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.format.Rpm;
import hotidle.study.Repairs;
import java.util.List;
import java.util.OptionalDouble;

/** What the unit does after repairs. */
@JsonInclude
public record AfterRecord(
        double linePa,
        OptionalDouble setPressurePa,
        boolean regulated,
        List<String> starved,
        double servedLeast,
        @JsonProperty("lube_m3_s") double lube,
        @JsonProperty("lost_m3_s") double lost,
        OptionalDouble onsetRpm) {

    public static AfterRecord of(Repairs.Effect effect) {
        return new AfterRecord(
                effect.line(),
                effect.set(),
                effect.regulated(),
                effect.starved(),
                effect.served(),
                effect.lube(),
                effect.lost(),
                Rpm.of(effect.onset()));
    }
}

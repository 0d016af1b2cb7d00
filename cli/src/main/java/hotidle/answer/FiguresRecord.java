package hotidle.answer;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.assess.Figures;
import java.util.Locale;
import java.util.OptionalDouble;

/** The figures of a state that are read first, as JSON. */
record FiguresRecord(
        String secondary,
        OptionalDouble overridePa,
        OptionalDouble converterChargePa,
        @JsonProperty("cooler_flow_m3_s") OptionalDouble cooler,
        @JsonProperty("lube_flow_m3_s") double lube,
        @JsonProperty("pump_slip_m3_s") double slip,
        @JsonProperty("pump_slip_band_measured_m3_s") double bandMeasured,
        @JsonProperty("pump_slip_band_nominal_m3_s") double bandNominal,
        @JsonProperty("leak_m3_s") double leak,
        @JsonProperty("recirculated_m3_s") double recirculated,
        @JsonProperty("spilled_m3_s") double spilled,
        @JsonProperty("swept_m3_s") double swept,
        double filling) {

    static FiguresRecord of(Figures figures) {
        return new FiguresRecord(
                figures.secondary().name().toLowerCase(Locale.ROOT),
                figures.override(),
                figures.charge(),
                figures.cooler(),
                figures.lube(),
                figures.slip(),
                figures.slipBand().measured(),
                figures.slipBand().nominal(),
                figures.leak(),
                figures.recirculated(),
                figures.spilled(),
                figures.swept(),
                figures.filling());
    }
}

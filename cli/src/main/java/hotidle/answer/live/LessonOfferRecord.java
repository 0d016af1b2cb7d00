package hotidle.answer.live;

import hotidle.answer.format.Rpm;
import hotidle.circuits.WrittenFault;
import hotidle.fault.UnitFault;
import hotidle.oil.Oil;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.Tap;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a lesson on a build can be about, and what can be read in it.
 *
 * @param builds           of the circuit
 * @param idleRpm          engine speed at which a page begins
 * @param sumpTemperatureC at which it begins; empty where the oil has one temperature
 * @param faults           any of which may be the hidden one
 */
public record LessonOfferRecord(
        String build,
        List<String> builds,
        List<String> taps,
        List<String> ranges,
        double idleRpm,
        OptionalDouble sumpTemperatureC,
        List<FaultChoice> faults) {

    /**
     * A fault to choose.
     *
     * @param name   as it is written behind {@code --fault}, without its size
     * @param kind   what
     * @param part   where; empty where it concerns the whole unit
     * @param sized  whether it has a size
     * @param share  whether the size is a share, written in per cent; else a length in millimetres
     */
    public record FaultChoice(
            String name, String kind, String part, boolean sized, boolean share, double least, double most) {}

    /**
     * Of a build.
     *
     * @param idle where reading begins
     */
    public static LessonOfferRecord of(List<String> builds, Transmission unit, DutyPoint idle, List<UnitFault> faults) {
        Double sump = idle.temperatures().get("sump");
        return new LessonOfferRecord(
                unit.build(),
                builds,
                unit.taps().stream().map(Tap::name).toList(),
                unit.ranges().stream().map(Range::name).toList(),
                Rpm.of(idle.speed()),
                sump == null ? OptionalDouble.empty() : OptionalDouble.of(sump - Oil.ZERO_CELSIUS),
                faults.stream().map(LessonOfferRecord::choice).toList());
    }

    private static FaultChoice choice(UnitFault fault) {
        return new FaultChoice(
                fault.name(),
                fault.kind().about(),
                fault.part(),
                fault.least() != fault.most(),
                WrittenFault.share(fault),
                fault.least(),
                fault.most());
    }
}

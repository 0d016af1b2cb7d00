package hotidle.answer.live;

import com.fasterxml.jackson.annotation.JsonProperty;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.LockupPhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.kind.Kind;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.sheet.HowMeasured;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.part.SpoolValve;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Job;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What there is to turn at, of one build.
 *
 * @param unitSystem in which a page begins
 * @param quantities how each system of units shows each quantity: SI value times factor plus offset, so many decimals
 * @param setPressurePa highest of the forward ranges; empty where nothing is commanded
 * @param setPressures  how far it can be slid or typed [Pa]
 */
public record LiveUnitRecord(
        String circuit,
        String about,
        String build,
        List<BuildLine> builds,
        List<DutyLine> duties,
        OptionalDouble setPressurePa,
        SliderEnds setPressures,
        List<LiveSize> sizes,
        List<LivePart> parts,
        List<FaultLine> faults,
        List<JobLine> jobs,
        List<TapLine> taps,
        String unitSystem,
        Map<String, Map<String, Quantity.Shown>> quantities,
        String caution) {

    /** A build to choose. */
    public record BuildLine(String name, String about) {}

    /** A driving condition to choose. */
    public record DutyLine(
            String name,
            String about,
            double engineSpeedRpm,
            String range,
            String lockup,
            OptionalDouble sumpTemperatureC,
            @JsonProperty("engine_torque_n_m") double engineTorque,
            boolean judged) {}

    /**
     * A row of the measurement sheet [m] or [m²].
     *
     * @param value    as the build has it
     * @param low      end of its slider
     * @param high     the other end
     * @param how      where and with what it is measured
     */
    public record LiveSize(
            String name,
            String part,
            String key,
            String kind,
            double value,
            double fresh,
            OptionalDouble limit,
            OptionalDouble measured,
            double low,
            double high,
            String how) {}

    /** A part to look at. */
    public record LivePart(
            String name, String kind, String about, String group, List<String> nodes, String law, String source) {}

    /**
     * A fault that can be laid over it.
     *
     * @param openings of a spool that is stuck: at its rest, and how far off it, each is open or shut
     */
    public record FaultLine(
            String name,
            String about,
            String part,
            String sizeOf,
            double least,
            double most,
            List<SpoolOpening> openings) {}

    /**
     * An opening of a spool.
     *
     * @param edge    position at which it begins to open, or is just shut [m]
     * @param opensUp whether it is open beyond that, else before it
     */
    public record SpoolOpening(
            String name, @JsonProperty("edge_m") double edge, boolean opensUp) {}

    /**
     * A job that can be done to it.
     *
     * @param sizes names of those that it changes
     */
    public record JobLine(String name, String about, OptionalDouble hours, OptionalDouble price, List<String> sizes) {}

    /** A place for a gauge. */
    public record TapLine(String name, String node, String port, String between) {}

    public static LiveUnitRecord of(
            DescribedCircuit circuit, Adjustable build, Map<Job, List<String>> jobs, Quantity.UnitSystem system) {
        Transmission unit = build.unit();
        return new LiveUnitRecord(
                circuit.name(),
                circuit.about(),
                unit.build(),
                circuit.builds().stream()
                        .map(one -> new BuildLine(one.name(), one.about()))
                        .toList(),
                unit.duties().stream().map(LiveUnitRecord::duty).toList(),
                unit.commanded().isPresent() ? OptionalDouble.of(unit.highestSet()) : OptionalDouble.empty(),
                SliderEnds.setPressure(unit),
                build.dimensions().stream()
                        .map(size -> size(circuit, build.dimensions(), size))
                        .toList(),
                circuit.parts().stream().map(part -> part(unit, part)).toList(),
                UnitFaults.of(build).stream().map(fault -> fault(unit, fault)).toList(),
                jobs.entrySet().stream()
                        .map(one -> job(one.getKey(), one.getValue()))
                        .toList(),
                unit.taps().stream()
                        .map(tap -> new TapLine(tap.name(), tap.node(), tap.port(), tap.between()))
                        .toList(),
                word(system),
                shown(),
                Caution.whole(unit.commanded().isPresent()));
    }

    private static JobLine job(Job job, List<String> sizes) {
        return new JobLine(job.name(), job.about(), job.hours(), job.price(), sizes);
    }

    private static DutyLine duty(DutyPoint duty) {
        Double sump = duty.temperatures().get("sump");
        return new DutyLine(
                duty.name(),
                duty.about(),
                Rpm.of(duty.speed()),
                duty.range(),
                LockupPhrase.of(duty.lockup()),
                sump == null ? OptionalDouble.empty() : OptionalDouble.of(sump - Oil.ZERO_CELSIUS),
                duty.engineTorque(),
                duty.judged());
    }

    private static LiveSize size(DescribedCircuit circuit, List<WearSize> all, WearSize size) {
        String kind = circuit.parts().stream()
                .filter(part -> part.name().equals(size.part()))
                .map(DescribedCircuit.PartLine::kind)
                .findFirst()
                .orElse("");
        SliderEnds ends = SliderEnds.of(size, all, HowMeasured.shrinks(kind, size.key()));
        return new LiveSize(
                size.name(),
                size.part(),
                size.key(),
                size.kind().name().toLowerCase(Locale.ROOT),
                size.value(),
                size.fresh(),
                size.limit(),
                size.measured(),
                ends.low(),
                ends.high(),
                HowMeasured.of(kind, size.key()));
    }

    private static LivePart part(Transmission unit, DescribedCircuit.PartLine part) {
        Placed placed = unit.network().part(part.name()).orElseThrow();
        Optional<Kind> kind = Kinds.of(part.kind());
        return new LivePart(
                part.name(),
                part.kind(),
                part.about(),
                placed.group().label(),
                placed.nodes().stream().distinct().toList(),
                kind.map(one -> one.physics().law()).orElse(""),
                kind.map(one -> one.physics().source()).orElse(""));
    }

    private static FaultLine fault(Transmission unit, UnitFault fault) {
        return new FaultLine(
                fault.name(),
                fault.kind().about(),
                fault.part(),
                fault.kind().sizeOf().name().toLowerCase(Locale.ROOT),
                fault.least(),
                fault.most(),
                fault.kind().sizeOf() == FaultKind.SizeOf.POSITION ? openings(unit, fault.part()) : List.of());
    }

    private static List<SpoolOpening> openings(Transmission unit, String part) {
        return unit
                .network()
                .part(part)
                .map(Placed::part)
                .filter(SpoolValve.class::isInstance)
                .map(SpoolValve.class::cast)
                .map(SpoolValve::openings)
                .orElse(List.of())
                .stream()
                .map(one -> new SpoolOpening(one.name(), one.edge(), one.opensUp()))
                .toList();
    }

    private static Map<String, Map<String, Quantity.Shown>> shown() {
        Map<String, Map<String, Quantity.Shown>> all = new LinkedHashMap<>();
        for (Quantity.UnitSystem system : Quantity.UnitSystem.values()) {
            Map<String, Quantity.Shown> own = new LinkedHashMap<>();
            for (Quantity quantity : Quantity.values()) {
                own.put(quantity.name().toLowerCase(Locale.ROOT), quantity.in(system));
            }
            all.put(word(system), own);
        }
        return all;
    }

    private static String word(Quantity.UnitSystem system) {
        return system.name().toLowerCase(Locale.ROOT);
    }
}

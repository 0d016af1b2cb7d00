package hotidle.answer.gauge;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.study.gauge.FitsTogether;
import hotidle.study.gauge.GaugeFindings;
import hotidle.study.gauge.NextReading;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What gauge readings say of a build.
 *
 * @param units    of the user
 * @param circuit  its name
 * @param about    what its file says of it; may be empty
 * @param build    its name
 * @param file     of the readings
 * @param findings what they say
 * @param next     readings that tell most, the best first
 * @param hardest  what takes the pump to its limit
 * @param commanded whether the unit is in a vehicle; a bench is not commanded
 * @param low      the build, where its idle pressure is low or any reading says so
 * @param fits     the most likely sizes of all fits together; empty where nobody asked
 */
public record GaugeAnswer(
        Quantity.UnitSystem units,
        String circuit,
        String about,
        String build,
        String file,
        GaugeFindings findings,
        List<NextReading> next,
        Hardest hardest,
        boolean commanded,
        List<String> low,
        Optional<FitsTogether> fits)
        implements Answer {

    /**
     * What takes the pump to its limit.
     *
     * @param speed       lowest engine speed [rev/s]
     * @param temperature of its sump [K]; empty where the file gives none
     * @param commanded   highest line pressure that can be commanded [Pa]; empty where none can be
     */
    public record Hardest(double speed, OptionalDouble temperature, OptionalDouble commanded) {}

    public GaugeAnswer {
        next = List.copyOf(next);
        low = List.copyOf(low);
    }

    /** The same with the most likely sizes of all fits together. */
    public GaugeAnswer with(FitsTogether found) {
        return new GaugeAnswer(
                units, circuit, about, build, file, findings, next, hardest, commanded, low, Optional.of(found));
    }

    @Override
    public String screen() {
        return new GaugeScreen(this).first();
    }

    @Override
    public String full() {
        return new GaugeScreen(this).full();
    }

    @Override
    public TextTable table() {
        return new GaugeRows(this).table();
    }

    @Override
    public Object json() {
        return GaugeRecord.of(this);
    }

    @Override
    public boolean complete() {
        return findings.notSolved().isEmpty();
    }
}

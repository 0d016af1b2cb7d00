package hotidle.study;

import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * One build, judged at all its duty points.
 *
 * @param unit   the build
 * @param duties in the order of the circuit
 */
public record JudgedBuild(Transmission unit, List<Judgement> duties) {

    public JudgedBuild {
        duties = List.copyOf(duties);
    }

    /**
     * Judges builds.
     *
     * @param speeds engine speeds over which the hub's film and load are searched [rev/s], rising
     * @param step   called after each duty of each build, from any thread
     */
    public static List<JudgedBuild> study(List<Transmission> builds, List<Double> speeds, Runnable step) {
        // a chain a duty, so that what is found does not depend on which thread comes first
        List<Judgement> judged = builds.stream()
                .flatMap(unit -> unit.judgedDuties().stream().map(DutyPoint::name))
                .distinct()
                .toList()
                .parallelStream()
                .flatMap(duty -> inTurn(duty, builds, speeds, step).stream())
                .toList();
        return builds.stream().map(unit -> of(unit, judged.stream())).toList();
    }

    private static List<Judgement> inTurn(String duty, List<Transmission> builds, List<Double> speeds, Runnable step) {
        DutyChain chain = new DutyChain(duty, speeds);
        List<Judgement> judged = new ArrayList<>();
        for (Transmission unit : builds) {
            unit.duty(duty).filter(DutyPoint::judged).ifPresent(one -> {
                judged.add(chain.judged(unit, one));
                step.run();
            });
        }
        return judged;
    }

    private static JudgedBuild of(Transmission unit, Stream<Judgement> judged) {
        return new JudgedBuild(
                unit,
                judged.filter(one -> one.unit().build().equals(unit.build())).toList());
    }

    /** What it comes to. */
    public BuildVerdict verdict() {
        return BuildVerdict.of(duties);
    }

    /** Whether its line is not held at idle, or not known there, so that no stall test is run (common practice). */
    public boolean lowAtIdle() {
        return duties.stream().anyMatch(Judgement::lowAtIdle);
    }

    /** Whether everything asked for is known. */
    public boolean known() {
        return duties.stream().allMatch(Judgement::known);
    }
}

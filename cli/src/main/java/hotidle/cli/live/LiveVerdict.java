package hotidle.cli.live;

import hotidle.answer.format.Quantity;
import hotidle.answer.live.LiveVerdictRecord;
import hotidle.answer.margins.MarginsAnswer;
import hotidle.answer.phrase.LivePhrase;
import hotidle.answer.sweep.SweepFinding;
import hotidle.assess.NotCommanded;
import hotidle.study.HighestHeld;
import hotidle.study.JudgedBuild;
import hotidle.study.Judgement;
import hotidle.study.SameSpeedFilms;
import hotidle.study.SpeedSweep;
import hotidle.transmission.Adjustable;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/**
 * The verdict on a state of a page, as {@code margins} gives it. Each driving condition is solved from cold, as the command does, so that
 * the numbers are the same; those that are still as they were when they were last judged are not solved again, and what the curve shows is
 * found beside them.
 */
final class LiveVerdict {

    private final LiveUnit unit;
    private final OtherCommands commands;
    private final List<Double> curve;

    /** Driving conditions of a few states: each page has some ten, of which one is turned at (chosen). */
    private final Recent<JudgedAs, Judgement> judged = new Recent<>(64);

    /**
     * All that a judgement depends on.
     *
     * @param unit   driven as written
     * @param duty   as it is driven
     * @param speeds over which the hub is searched [rev/s]
     */
    private record JudgedAs(AskedState unit, DutyPoint duty, List<Double> speeds) {}

    /**
     * What the curve shows, in words.
     *
     * @param onset   from which speed the line holds [rev/s]; empty where it does at none
     * @param found   the same in a sentence
     * @param highest how high a line pressure is held, in a sentence; empty where none is commanded
     */
    private record FoundInCurve(OptionalDouble onset, String found, String highest) {}

    /**
     * Verdicts on a circuit.
     *
     * @param curve speeds of the page's curve [rev/s]
     */
    LiveVerdict(LiveUnit unit, OtherCommands commands, List<Double> curve) {
        this.unit = unit;
        this.commands = commands;
        this.curve = List.copyOf(curve);
    }

    /** The verdict; {@code step} is run between driving conditions and throws once nobody waits. */
    LiveVerdictRecord of(AskedState asked, Quantity.UnitSystem units, Runnable step) {
        Adjustable build = unit.adjustable(asked);
        Transmission made = unit.unit(asked);
        ForkJoinTask<FoundInCurve> beside =
                ForkJoinPool.commonPool().submit(() -> found(build, made, unit.looked(made, asked), units, step));
        List<JudgedBuild> judged = List.of(new JudgedBuild(made, judged(asked, made, step)));
        MarginsAnswer answer = new MarginsAnswer(
                units, unit.circuit().name(), "", judged, NotCommanded.of(made), SameSpeedFilms.of(judged));
        FoundInCurve found = beside.join();
        return LiveVerdictRecord.of(answer, found.onset(), found.found(), found.highest());
    }

    private List<Judgement> judged(AskedState asked, Transmission made, Runnable step) {
        List<Double> speeds = commands.searched(made);
        AskedState driven = asked.drivenAsWritten();
        return made.judgedDuties().parallelStream()
                .map(duty -> {
                    step.run();
                    return judged.of(new JudgedAs(driven, duty, speeds), () -> Judgement.of(made, duty, speeds))
                            .in(made);
                })
                .toList();
    }

    private FoundInCurve found(
            Adjustable build, Transmission made, DutyPoint duty, Quantity.UnitSystem units, Runnable step) {
        SpeedSweep sweep = SpeedSweep.rising(made, duty, curve, Optional.empty());
        step.run();
        String found = made.commanded().isPresent() ? SweepFinding.pressure(units, sweep) : "";
        String highest = HighestHeld.of(build, duty, step)
                .map(held -> LivePhrase.highest(units, duty.speed(), held.pressure(), held.all()))
                .orElse("");
        return new FoundInCurve(sweep.onset(), found, highest);
    }
}

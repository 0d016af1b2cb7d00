package hotidle.cli;

import hotidle.answer.torque.Stage;
import hotidle.answer.torque.StagesAnswer;
import hotidle.answer.torque.TorqueAnswer.BuildTorque;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.JobPlace;
import hotidle.study.StageJobs;
import hotidle.study.Wear;
import hotidle.study.Window;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Makes stages of builds.
 *
 * @param torque    what was asked
 * @param described the circuit
 * @param before    the build that comes in; empty where none is known
 */
record StageRun(TorqueRun torque, DescribedCircuit described, String before) {

    /** Step of the engine speeds searched for the hub's film while fits wear (chosen) [rev/s]. */
    private static final double STEP = 200 / 60.0;

    /**
     * Of some builds.
     *
     * @param units of these builds
     * @param named the same as the file has them, without work done to them here
     * @param from  the build that comes in, as it is written behind --from; null where it is not
     */
    static StageRun of(
            TorqueRun torque, DescribedCircuit described, List<Adjustable> units, List<Adjustable> named, String from) {
        if (from != null) {
            return new StageRun(
                    torque,
                    described,
                    Circuits.adjustable(described, from).unit().build());
        }
        List<String> others = new ArrayList<>(described.units().keySet());
        String first = named.get(0).unit().build();
        units.forEach(unit -> others.remove(unit.unit().build()));
        named.forEach(unit -> others.remove(unit.unit().build()));
        return new StageRun(
                torque,
                described,
                described
                        .standsOn(units.get(0).unit().build(), others)
                        .map(name -> comesIn(described.adjustable(name), named.get(0)))
                        .orElseGet(() -> first.equals(units.get(0).unit().build()) ? "" : first));
    }

    /** Nobody brings in a unit that is as new: jobs are then those that the first build takes to become the others. */
    private static String comesIn(Adjustable under, Adjustable first) {
        boolean served = under.dimensions().stream().anyMatch(WearSize::worn);
        return (served ? under : first).unit().build();
    }

    /** All of them side by side. */
    StagesAnswer answer(List<BuildTorque> held, List<String> lowAtIdle) {
        return new StagesAnswer(
                torque.units(),
                described.name(),
                before,
                held.stream().map(this::stage).toList(),
                lowAtIdle);
    }

    private Stage stage(BuildTorque held) {
        Adjustable build = described.adjustable(held.build());
        Transmission unit = build.unit();
        Window window = torque.window(build);
        Progress progress = new Progress(torque.err(), "wearing fits of " + unit.build(), 1);
        Wear wear = Wear.study(build, List.of(), OptionValues.searched(null, unit, STEP), progress::step);
        progress.end();
        Optional<StageJobs> jobs = before.isEmpty() || before.equals(unit.build())
                ? Optional.empty()
                : Optional.of(StageJobs.of(
                        described.workshop(before).orElseGet(() -> JobPlace.workshop(described.adjustable(before))),
                        unit));
        return new Stage(held, unit.highestSet(), window, wear, jobs);
    }
}

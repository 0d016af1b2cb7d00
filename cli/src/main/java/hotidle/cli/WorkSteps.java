package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;

/**
 * Builds as they are, then after one thing done to them at a time, so that what differs has one cause: another set pressure first, then
 * the jobs at that pressure. Faults lie over all of them.
 *
 * @param circuit with all of these builds
 * @param units   each build as it is, followed by what was made of it
 * @param made    names of those that no file has
 * @param left    names of builds in which the jobs have nothing to do, so that none is made of them
 */
record WorkSteps(DescribedCircuit circuit, List<Transmission> units, List<String> made, List<String> left) {

    WorkSteps {
        units = List.copyOf(units);
        made = List.copyOf(made);
        left = List.copyOf(left);
    }

    /**
     * Does the work.
     *
     * @throws WrongInputException where it cannot be done to one of the builds
     */
    static WorkSteps of(CircuitOptions asked, BuildWork done, DescribedCircuit described, List<Adjustable> builds) {
        if (!done.makesAnother()) {
            WorkedBuilds faulty = asked.afterAsHeaded(done, described, builds);
            return new WorkSteps(faulty.circuit(), faulty.units(), List.of(), List.of());
        }
        List<WorkedBuilds> steps = new ArrayList<>();
        DescribedCircuit all = described;
        List<String> under = builds.stream().map(one -> one.unit().build()).toList();
        if (done.setAndJobs()) {
            steps.add(done.withoutJobs().on(all, builds, asked.shared.units()));
            all = steps.get(0).circuit();
            under = steps.get(0).names();
        }
        WorkedBuilds worked = asked.afterAsHeaded(done, all, builds, under);
        steps.add(worked);
        WorkedBuilds before = done.faultsAlone().on(worked.circuit(), builds, asked.shared.units());
        List<Transmission> units = new ArrayList<>();
        List<String> made = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (int i = 0; i < builds.size(); i++) {
            units.add(before.units().get(i));
            boolean same = done.leaves(described, builds.get(i));
            for (WorkedBuilds step : same ? steps.subList(0, steps.size() - 1) : steps) {
                units.add(step.units().get(i));
                made.add(step.names().get(i));
            }
            if (same) {
                left.add(builds.get(i).unit().build());
            }
        }
        return new WorkSteps(before.circuit().about(described.about()), units, made, left);
    }
}

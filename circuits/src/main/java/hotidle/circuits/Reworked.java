package hotidle.circuits;

import hotidle.circuits.assemble.Changes;
import hotidle.circuits.assemble.Resizing;
import hotidle.circuits.kind.Materials;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Job;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A build after jobs that its file names: their changes on top of those of the build, read by the rules of any file. Only parts that
 * a job changes are read again.
 *
 * @param unit      as the build has it, before its set pressure
 * @param tree      of its parts
 * @param parts     the same, read and placed without error
 * @param materials of the file
 * @param scope     names of the file
 * @param changes   of each job, by its name
 * @param pressure  set pressure that the build asks for, if it does [Pa]
 * @param by        what that changes
 */
record Reworked(
        Transmission unit,
        Value.Entries tree,
        Parts parts,
        Materials materials,
        Scope scope,
        Map<String, List<Changes.Change>> changes,
        OptionalDouble pressure,
        SetPressure.By by)
        implements Workshop.Rework {

    @Override
    public Transmission after(List<Job> done) {
        Problems problems = new Problems(unit.circuit(), "");
        Value.Entries changed = changed(done, problems);
        List<Placed> placed = placed(changed, problems);
        problems.refuseErrors();
        Transmission made = unit.with(new Network(unit.network().nodes(), placed), AssumedMark.paths(changed));
        return pressure.isPresent() ? SetPressure.of(made, pressure.getAsDouble(), by) : made;
    }

    @Override
    public Optional<Adjustable> adjustable(List<Job> done, Adjustable before) {
        Problems problems = new Problems(unit.circuit(), "");
        Value.Entries changed = changed(done, problems);
        Parts made = read(changed, problems);
        List<Placed> placed = made.place(materials);
        problems.refuseErrors();
        Resizing sizes = new Resizing(made, materials, placed);
        Transmission whole = unit.with(new Network(unit.network().nodes(), placed), AssumedMark.paths(changed));
        Remade remade = new Remade(whole, sizes, pressure, by);
        Map<String, Double> now = new HashMap<>();
        sizes.numbers().forEach(number -> now.put(number.part() + "." + number.key(), number.value()));
        return Optional.of(new Adjustable(
                remade.with(Map.of()),
                before.dimensions().stream()
                        .map(size -> size.at(now.getOrDefault(size.name(), size.value())))
                        .toList(),
                remade));
    }

    private Value.Entries changed(List<Job> done, Problems problems) {
        Changes applied = new Changes(problems);
        Value.Entries changed = tree;
        for (Job job : done) {
            for (Changes.Change change : changes.get(job.name())) {
                changed = applied.apply(changed, change);
            }
        }
        return changed;
    }

    /** The parts of a changed tree. */
    List<Placed> placed(Value.Entries changed, Problems problems) {
        return read(changed, problems).place(materials);
    }

    private Parts read(Value.Entries changed, Problems problems) {
        ShapeReader reader = new ShapeReader(scope, problems, new ReadingLog());
        return Parts.read(changed, reader, problems, Optional.of(parts));
    }
}

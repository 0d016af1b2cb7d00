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
 * @param written   parts as the file has them
 * @param onSheet   whether all that the build says of sizes is what a measurement sheet says
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
        Parts written,
        boolean onSheet,
        Materials materials,
        Scope scope,
        Map<String, List<Changes.Change>> changes,
        OptionalDouble pressure,
        SetPressure.By by)
        implements Workshop.Rework {

    @Override
    public Adjustable after(List<Job> done) {
        Problems problems = new Problems(unit.circuit(), "");
        Changes applied = new Changes(problems);
        Value.Entries changed = tree;
        for (Job job : done) {
            for (Changes.Change change : changes.get(job.name())) {
                changed = applied.apply(changed, change);
            }
        }
        ReadingLog sizes = new ReadingLog();
        Parts read = read(changed, sizes, problems);
        List<Placed> placed = read.place(materials);
        problems.refuseErrors();
        Transmission made = unit.with(new Network(unit.network().nodes(), placed), AssumedMark.paths(changed));
        return new Adjustable(
                pressure.isPresent() ? SetPressure.of(made, pressure.getAsDouble(), by) : made,
                Remade.dimensions(sizes.sizes(), read, written, onSheet),
                new Remade(made, new Resizing(read, materials, placed), pressure, by));
    }

    /** The parts of a changed tree. */
    Parts read(Value.Entries changed, ReadingLog sizes, Problems problems) {
        return Parts.read(changed, new ShapeReader(scope, problems, sizes), problems, Optional.of(parts));
    }
}

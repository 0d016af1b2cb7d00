package hotidle.circuits;

import hotidle.circuits.assemble.Changes;
import hotidle.circuits.assemble.Declared;
import hotidle.circuits.assemble.Likes;
import hotidle.circuits.assemble.LinkChanges;
import hotidle.circuits.assemble.Resizing;
import hotidle.circuits.check.Rules;
import hotidle.circuits.kind.Materials;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.section.BuildSection;
import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.section.CommandSection;
import hotidle.circuits.section.DutySection;
import hotidle.circuits.section.GearSection;
import hotidle.circuits.section.HeatSection;
import hotidle.circuits.section.JobSection;
import hotidle.circuits.section.MaterialSection;
import hotidle.circuits.section.NodeSection;
import hotidle.circuits.section.OilSection;
import hotidle.circuits.section.RangeSection;
import hotidle.circuits.section.TapSection;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.sheet.SheetBuild;
import hotidle.circuits.text.AssumedMark;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.oil.Oil;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Command;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Range;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Makes a circuit of a file's tree: sections, parts as written, then each build. Work space of one reading. Past 300 lines, since it
 * is the order of one reading, each step of which needs what the steps before it found; what a step does stands elsewhere.
 */
final class CircuitAssembly {

    /** Most parts of all builds together: a hundred builds of a circuit of two hundred parts. */
    private static final int LARGEST = 20_000;

    private final Value.Entries file;
    private final Optional<MeasurementSheet> sheet;
    private final Problems problems;
    private final Scope scope;
    private final ReadingLog used = new ReadingLog();
    private final Attributes root;
    private final Materials materials;
    private final Value.Entries written;
    private final Parts parts;
    private final Changes changes;
    private final LinkChanges linkChanges;
    private final Map<String, List<Changes.Change>> changesOf = new LinkedHashMap<>();
    private final Map<String, List<Changes.Change>> changesOfJobs = new LinkedHashMap<>();
    private final Map<String, Workshop> workshops = new LinkedHashMap<>();
    private final Map<String, Value.Entries> treeOf = new HashMap<>();
    private final Map<String, Parts> partsOf = new HashMap<>();
    private final Optional<Oil> oil;
    private final Optional<Command> command;
    private final Optional<Transmission.Gears> gears;
    private final List<Range> ranges;

    CircuitAssembly(Value.Entries asWritten, Problems problems, Optional<MeasurementSheet> sheet) {
        this.problems = problems;
        this.sheet = sheet;
        Value.Entries expanded = Likes.expand(asWritten, problems);
        file = SheetBuild.standing(
                sheet.map(filled -> SheetBuild.add(expanded, filled, problems)).orElse(expanded),
                sheet.map(SheetBuild::name));
        scope = Declared.in(file);
        Declared.checkNames(file, problems);
        ShapeReader reader = new ShapeReader(scope, problems, used);
        Value.Entry whole = new Value.Entry("", file.place(), file);
        root = reader.read(CircuitFile.CIRCUIT, "", "the circuit", whole);
        materials = MaterialSection.of(root, used);
        written = file.entry("parts").map(Value.Entry::value).orElse(null) instanceof Value.Entries section
                ? section
                : new Value.Entries(List.of(), file.place());
        parts = Parts.read(written, reader, problems);
        parts.place(materials);
        if (!written.entries().isEmpty()) {
            Rules.ofParts(root, parts);
        }
        oil = OilSection.oil(root, root.text("oil"));
        command = CommandSection.command(root, parts);
        gears = GearSection.gears(root);
        ranges = RangeSection.ranges(root, scope, gears.map(Transmission.Gears::train), used);
        Rules.ofFile(root, parts);
        DutySection.duties(root, parts, scope, used);
        changes = new Changes(problems);
        linkChanges = new LinkChanges(changes, GearSection.CARRYING);
        root.groups("oils").keySet().forEach(name -> OilSection.oil(root, name));
    }

    /** The circuit; empty where there is an error. */
    Optional<DescribedCircuit> circuit() {
        Map<String, Adjustable> units = new LinkedHashMap<>();
        int size = root.groups("builds").size() * written.entries().size();
        if (size > LARGEST) {
            String rule = "builds times parts are at most " + LARGEST;
            root.error(
                    ProblemCode.TOO_MANY_BUILDS,
                    "builds",
                    "has too many builds for its parts, " + size + " in all",
                    rule,
                    "");
            return Optional.empty();
        }
        for (Attributes build : root.groups("builds").values()) {
            changesOf.put(build.name(), changes.of(build, writtenIn("builds", build.name())));
            Rules.ofBuild(root, build);
        }
        root.groups("jobs").values().forEach(this::job);
        for (Attributes build : root.groups("builds").values()) {
            chain(build).flatMap(this::unit).ifPresent(unit -> units.put(build.name(), unit));
        }
        if (root.groups("builds").isEmpty()) {
            unit(List.of()).ifPresent(only -> units.put(only.unit().build(), only));
        }
        if (problems.anyError()) {
            return Optional.empty();
        }
        Rules.ofSoundFile(root, parts);
        root.group("command").ifPresent(command -> {
            List<Transmission> all =
                    units.values().stream().map(Adjustable::unit).toList();
            Rules.ofUnits(command, all);
        });
        return Optional.of(new CircuitDescription(file, root, parts, used, changesOf)
                .of(units, workshops, sheet.map(SheetBuild::name), problems));
    }

    private Value.Entry writtenIn(String section, String name) {
        return writtenIn(file, section, name);
    }

    /** A named entry of a section of the file as it is written. */
    static Value.Entry writtenIn(Value.Entries file, String section, String name) {
        Value entries = file.entry(section).orElseThrow().value();
        return ((Value.Entries) entries).entry(name).orElseThrow();
    }

    /** The changes of a job, tried on the parts as written, so that their faults are told where they stand. */
    private void job(Attributes job) {
        List<Changes.Change> own = changes.of(job, writtenIn("jobs", job.name()));
        changesOfJobs.put(job.name(), own);
        if (problems.anyError()) {
            return;
        }
        Value.Entries changed = written;
        for (Changes.Change change : own) {
            changed = changes.apply(changed, change);
        }
        Parts.read(changed, new ShapeReader(scope, problems, new ReadingLog()), problems, Optional.of(parts))
                .place(materials);
    }

    /** The build and those it stands on, the first one first; empty where they stand on each other in a circle. */
    private Optional<List<Attributes>> chain(Attributes build) {
        List<Attributes> chain = new ArrayList<>();
        Set<String> seen = new LinkedHashSet<>();
        Attributes next = build;
        while (next != null) {
            if (!seen.add(next.name())) {
                String circle = String.join(" on ", seen) + " on " + next.name();
                if (next.name().equals(build.name())) {
                    build.error(ProblemCode.BUILD_ON_ITSELF, "on", "stands on itself", circle, "leave out one on");
                }
                return Optional.empty();
            }
            chain.add(0, next);
            next = next.wordIf("on").map(root.groups("builds")::get).orElse(null);
        }
        return Optional.of(chain);
    }

    private Optional<Adjustable> unit(List<Attributes> chain) {
        Value.Entries changed = changed(chain);
        ReadingLog sizes = new ReadingLog();
        // a fault found leaves its mark in parts: from then on each build has its own, so that all of its faults are
        // told
        Optional<Parts> shared = problems.anyError() ? Optional.empty() : Optional.of(before(chain));
        Parts all = Parts.read(changed, new ShapeReader(scope, problems, sizes), problems, shared);
        List<Placed> placed = all.place(materials);
        if (!chain.isEmpty()) {
            partsOf.put(chain.get(chain.size() - 1).name(), all);
        }
        if (!written.entries().isEmpty()) {
            Rules.ofParts(root, all);
        }
        List<DutyPoint> duties = DutySection.duties(root, all, scope, new ReadingLog());
        if (problems.anyError() || oil.isEmpty()) {
            return Optional.empty();
        }
        Optional<Command> tables = command;
        Optional<Attributes> pressed = Optional.empty();
        for (Attributes build : chain) {
            if (build.group("command").isPresent()) {
                Attributes other = build.group("command").get();
                tables = tables.map(now -> CommandSection.withTables(now, other));
                pressed = Optional.empty();
            }
            pressed = build.has("set-pressure") ? Optional.of(build) : pressed;
            duties = DutySection.withControl(duties, root, build, all);
        }
        String name = chain.isEmpty()
                ? BuildSection.AS_WRITTEN
                : chain.get(chain.size() - 1).name();
        Transmission unit = new Transmission(
                root.word("circuit"),
                name,
                new Network(NodeSection.nodes(root), placed),
                oil.get(),
                root.number("ambient-pressure"),
                ranges,
                tables,
                duties,
                TapSection.taps(root),
                HeatSection.inputs(root, oil),
                AssumedMark.paths(changed),
                gears(chain));
        OptionalDouble pressure =
                pressed.map(build -> build.numberIf("set-pressure")).orElse(OptionalDouble.empty());
        SetPressure.By by = pressed.map(CircuitAssembly::by).orElse(SetPressure.By.COMMAND_AND_SPRING);
        Remade remade = new Remade(unit, new Resizing(all, materials, placed), pressure, by);
        boolean onSheet =
                sheet.filter(filled -> SheetBuild.name(filled).equals(name)).isPresent();
        Reworked reworked =
                new Reworked(unit, changed, all, parts, onSheet, materials, scope, changesOfJobs, pressure, by);
        Optional<Transmission> set = pressed.isPresent() ? pressed(unit, pressed.get()) : Optional.of(unit);
        set.ifPresent(whole -> workshops.put(
                name,
                new Workshop(
                        whole,
                        root.groups("jobs").values().stream()
                                .map(JobSection::job)
                                .toList(),
                        reworked)));
        return set.map(whole -> new Adjustable(whole, Remade.dimensions(sizes.sizes(), all, parts, onSheet), remade));
    }

    /** The parts' tree with the changes of a build and of those that it stands on. */
    private Value.Entries changed(List<Attributes> chain) {
        if (chain.isEmpty()) {
            return written;
        }
        Attributes last = chain.get(chain.size() - 1);
        Value.Entries changed = treeOf.get(last.name());
        if (changed == null) {
            changed = changed(chain.subList(0, chain.size() - 1));
            for (Changes.Change change : changesOf.get(last.name())) {
                changed = ofLink(change) ? changed : changes.apply(changed, change);
            }
            treeOf.put(last.name(), changed);
        }
        return changed;
    }

    private boolean ofLink(Changes.Change change) {
        return linkChanges.names(written, train(), change);
    }

    private Value.Entries train() {
        return file.entry("gearsets").map(Value.Entry::value).orElse(null) instanceof Value.Entries train
                ? train
                : new Value.Entries(List.of(), file.place());
    }

    /** The gear train with what a build and those that it stands on change of what carries in it. */
    private Optional<Transmission.Gears> gears(List<Attributes> chain) {
        Value.Entries changed = train();
        for (Attributes build : chain) {
            for (Changes.Change change : changesOf.get(build.name())) {
                changed = ofLink(change) ? linkChanges.apply(changed, change) : changed;
            }
        }
        return changed.equals(train())
                ? gears
                : GearSection.gears(
                        new ShapeReader(scope, problems, new ReadingLog()),
                        new Value.Entry("gearsets", changed.place(), changed));
    }

    /** The parts that a build has most in common with: of the nearest one it stands on that was read, or as written. */
    private Parts before(List<Attributes> chain) {
        for (int i = chain.size() - 2; i >= 0; i--) {
            Parts read = partsOf.get(chain.get(i).name());
            if (read != null) {
                return read;
            }
        }
        return parts;
    }

    private static Optional<Transmission> pressed(Transmission unit, Attributes build) {
        try {
            return Optional.of(SetPressure.of(unit, build.number("set-pressure"), by(build)));
        } catch (IllegalArgumentException impossible) {
            build.error(
                    ProblemCode.SET_PRESSURE_OUT_OF_REACH,
                    "set-pressure",
                    "cannot be set to its set-pressure",
                    impossible.getMessage(),
                    "");
            return Optional.empty();
        }
    }

    /** How a build brings its set pressure about. */
    static SetPressure.By by(Attributes build) {
        return build.wordIf(BuildSection.SET_BY)
                .filter("spring"::equals)
                .map(spring -> SetPressure.By.SPRING)
                .orElse(SetPressure.By.COMMAND_AND_SPRING);
    }
}

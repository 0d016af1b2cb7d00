package hotidle.circuits;

import hotidle.circuits.assemble.Changes;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.section.BuildSection;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.text.Fault;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a circuit's file says of it: builds with their changes, parts, sizes, defaults.
 *
 * @param file      its tree, a sheet's build in it
 * @param root      its sections
 * @param parts     as written
 * @param used      what was read of them
 * @param changesOf each build
 */
record CircuitDescription(
        Value.Entries file,
        Attributes root,
        Parts parts,
        ReadingLog used,
        Map<String, List<Changes.Change>> changesOf) {

    /**
     * The circuit with its units.
     *
     * @param units     of each build
     * @param workshops of each build
     * @param sheet     name of the build that a sheet makes
     * @param problems  tell of a build that is asked for and is none
     */
    DescribedCircuit of(
            Map<String, Adjustable> units, Map<String, Workshop> workshops, Optional<String> sheet, Problems problems) {
        List<DescribedCircuit.Build> builds = new ArrayList<>();
        root.groups("builds").values().forEach(build -> builds.add(build(build)));
        if (builds.isEmpty()) {
            builds.add(new DescribedCircuit.Build(
                    BuildSection.AS_WRITTEN, "", Optional.empty(), List.of(), Optional.empty()));
        }
        List<DescribedCircuit.PartLine> lines = parts.all().values().stream()
                .map(part -> new DescribedCircuit.PartLine(
                        part.given().name(),
                        part.kind().word(),
                        part.given().text("about"),
                        part.kind().figure(part.given())))
                .toList();
        List<DescribedCircuit.SizeLine> sizes = new ArrayList<>();
        used.sizes().forEach((path, size) -> {
            int dot = path.indexOf('.');
            sizes.add(new DescribedCircuit.SizeLine(
                    path.substring(0, dot), path.substring(dot + 1), size.fresh(), size.limit(), size.measured()));
        });
        List<DescribedCircuit.DefaultLine> defaults = new ArrayList<>();
        used.defaults().forEach((path, fallback) -> defaults.add(line(path, fallback)));
        Place at = file.entry("builds").map(Value.Entry::keyPlace).orElse(Place.START);
        List<String> names = List.copyOf(units.keySet());
        return new DescribedCircuit(
                root.word("circuit"),
                root.text("about"),
                root.wordIf("units"),
                builds,
                List.copyOf(root.groups("oils").keySet()),
                List.copyOf(root.groups("nodes").keySet()),
                lines,
                sizes,
                defaults,
                units,
                workshops,
                sheet,
                wrong -> problems.problem(
                        at,
                        Problem.Severity.ERROR,
                        Fault.of(
                                ProblemCode.UNKNOWN_NAME,
                                "there is no build '" + wrong + "'",
                                "",
                                Nearest.mend(wrong, names))));
    }

    private static DescribedCircuit.DefaultLine line(String path, Key.Default fallback) {
        return new DescribedCircuit.DefaultLine(path, fallback.text(), fallback.source());
    }

    private DescribedCircuit.Build build(Attributes build) {
        List<DescribedCircuit.ChangeLine> lines = new ArrayList<>();
        for (Changes.Change change : changesOf.get(build.name())) {
            String value = change.value() instanceof Value.Text text ? text.text() : "as written";
            lines.add(new DescribedCircuit.ChangeLine(change.target(), change.how() + " " + value, change.because()));
        }
        if (build.has("command")) {
            lines.add(new DescribedCircuit.ChangeLine("command", "other tables", build.text("because")));
        }
        build.groups("duty")
                .values()
                .forEach(duty -> lines.add(
                        new DescribedCircuit.ChangeLine("duty." + duty.name(), control(duty), build.text("because"))));
        Optional<SetPressure.By> setBy =
                build.has("set-pressure") ? Optional.of(CircuitAssembly.by(build)) : Optional.empty();
        if (setBy.isPresent()) {
            lines.add(new DescribedCircuit.ChangeLine("set-pressure", text(build), build.text("because")));
        }
        return new DescribedCircuit.Build(build.name(), build.text("about"), build.wordIf("on"), lines, setBy);
    }

    private static String control(Attributes duty) {
        String lockup = duty.wordIf("lockup").map(word -> "lockup " + word).orElse("");
        String solenoids = duty.numbers("commands").isEmpty()
                ? ""
                : "other pressure of "
                        + String.join(", ", duty.numbers("commands").keySet());
        String torque = duty.numberIf("engine-torque").isPresent() ? "other engine torque" : "";
        return Stream.of(torque, lockup, solenoids)
                .filter(what -> !what.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String text(Attributes build) {
        return CircuitAssembly.writtenIn(file, "builds", build.name()).value() instanceof Value.Entries keys
                        && keys.entry("set-pressure").map(Value.Entry::value).orElse(null) instanceof Value.Text text
                ? "to " + text.text()
                        + (CircuitAssembly.by(build) == SetPressure.By.SPRING ? ", by the spring alone" : "")
                : "";
    }
}

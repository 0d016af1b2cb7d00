package hotidle.circuits;

import hotidle.circuits.assemble.Changes;
import hotidle.circuits.assemble.Declared;
import hotidle.circuits.assemble.Likes;
import hotidle.circuits.kind.Materials;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.section.CircuitFile;
import hotidle.circuits.section.MaterialSection;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import hotidle.network.Network;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A build made anew by reading all of its parts again with the new sizes written into them: slow, and right by the file's own rules. */
record RemadeFromText(Transmission unit, Value.Entries parts, Scope scope, Materials materials, OptionalDouble pressure)
        implements Adjustable.Remake {

    /** The build of a ready circuit. */
    static RemadeFromText of(String circuit, String build, Transmission unit) {
        Problems problems = new Problems(circuit, "");
        Value.Entries text = (Value.Entries)
                Yaml.read(Library.text(circuit).orElseThrow(), problems).orElseThrow();
        Value.Entries file = Likes.expand(
                BasedOn.whole(text, circuit, problems, BaseFiles.LIBRARY).orElseThrow(), problems);
        Scope scope = Declared.in(file);
        ReadingLog log = new ReadingLog();
        Attributes root = new ShapeReader(scope, problems, log)
                .read(CircuitFile.CIRCUIT, "", "", new Value.Entry("", file.place(), file));
        Value.Entries parts = (Value.Entries) file.entry("parts").orElseThrow().value();
        Changes changes = new Changes(problems);
        OptionalDouble pressure = OptionalDouble.empty();
        for (Attributes one : chain(root, build)) {
            Value.Entries builds =
                    (Value.Entries) file.entry("builds").orElseThrow().value();
            for (Changes.Change change :
                    changes.of(one, builds.entry(one.name()).orElseThrow())) {
                parts = changes.apply(parts, change);
            }
            pressure = one.group("command").isPresent() ? OptionalDouble.empty() : pressure;
            pressure = one.has("set-pressure") ? one.numberIf("set-pressure") : pressure;
        }
        return new RemadeFromText(unit, parts, scope, MaterialSection.of(root, log), pressure);
    }

    private static List<Attributes> chain(Attributes root, String build) {
        List<Attributes> chain = new ArrayList<>();
        Attributes next = root.groups("builds").get(build);
        while (next != null) {
            chain.add(0, next);
            next = next.wordIf("on").map(root.groups("builds")::get).orElse(null);
        }
        return chain;
    }

    @Override
    public Transmission with(Map<String, Double> sizes) {
        Problems problems = new Problems(unit.circuit(), "");
        Changes changes = new Changes(problems);
        Value.Entries changed = parts;
        for (Map.Entry<String, Double> size : sizes.entrySet()) {
            boolean area = size.getKey().endsWith(".orifice-slip-area");
            String text = Units.inSi(size.getValue(), area ? Dimension.AREA : Dimension.LENGTH);
            changed = changes.apply(
                    changed,
                    new Changes.Change(size.getKey(), Place.START, "to", new Value.Text(text, Place.START), ""));
        }
        Parts all = Parts.read(changed, new ShapeReader(scope, problems, new ReadingLog()), problems);
        Network network = new Network(unit.network().nodes(), all.place(materials));
        Optional<Problem> error = problems.inOrder().stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .findFirst();
        if (error.isPresent()) {
            throw new IllegalArgumentException(error.get().message());
        }
        Transmission made = unit.with(network, unit.assumed());
        return pressure.isPresent() ? SetPressure.of(made, pressure.getAsDouble()) : made;
    }
}

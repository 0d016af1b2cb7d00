package hotidle.circuits;

import hotidle.circuits.assemble.Changes;
import hotidle.circuits.assemble.Materials;
import hotidle.circuits.assemble.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.ReadingLog;
import hotidle.circuits.shape.Scope;
import hotidle.circuits.shape.ShapeReader;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Units;
import hotidle.circuits.text.Value;
import hotidle.network.Network;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A build made anew with other sizes: its parts are read again with one change more, by the rules of any file.
 *
 * @param unit     as the build has it, before its set pressure
 * @param parts    as the build has them
 * @param scope    names of the file
 * @param materials of the file
 * @param pressure set pressure that the build asks for, if it does [Pa]
 */
record Remade(Transmission unit, Value.Entries parts, Scope scope, Materials materials, OptionalDouble pressure)
        implements Adjustable.Remake {

    /** A pump's worn mesh: it wears though it is no size with a new value. The file as written is new. */
    private static final String MESH = "orifice-slip-area";

    @Override
    public Transmission with(Map<String, Double> sizes) {
        Problems problems = new Problems(unit.circuit(), "");
        Changes changes = new Changes(problems);
        Value.Entries changed = parts;
        for (Map.Entry<String, Double> size : sizes.entrySet()) {
            boolean area = size.getKey().endsWith("." + MESH);
            String text = Units.inSi(
                    size.getValue(),
                    area ? hotidle.circuits.text.Dimension.AREA : hotidle.circuits.text.Dimension.LENGTH);
            changed = changes.apply(
                    changed,
                    new Changes.Change(size.getKey(), Place.START, "to", new Value.Text(text, Place.START), ""));
        }
        Parts all = Parts.read(changed, new ShapeReader(scope, problems, new ReadingLog()), problems);
        Network network = new Network(unit.network().nodes(), all.place(materials));
        problems.inOrder().stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .findFirst()
                .ifPresent(problem -> {
                    throw new IllegalArgumentException(problem.message());
                });
        Transmission made = new Transmission(
                unit.circuit(),
                unit.build(),
                network,
                unit.oil(),
                unit.ambient(),
                unit.ranges(),
                unit.commanded(),
                unit.duties(),
                unit.taps());
        return pressure.isPresent() ? SetPressure.of(made, pressure.getAsDouble()) : made;
    }

    /**
     * What can be changed.
     *
     * @param sizes   as the build has them, by path
     * @param now     parts as the build has them
     * @param written parts as the file has them
     */
    static List<WearSize> dimensions(Map<String, Attributes.Sizes> sizes, Parts now, Parts written) {
        List<WearSize> found = new ArrayList<>();
        sizes.forEach((path, size) -> {
            int dot = path.indexOf('.');
            found.add(new WearSize(
                    path.substring(0, dot),
                    path.substring(dot + 1),
                    WearSize.Kind.LENGTH,
                    size.inUse(),
                    size.fresh(),
                    size.limit(),
                    size.measured()));
        });
        now.all().forEach((name, part) -> {
            if (part.given().has(MESH)) {
                found.add(new WearSize(
                        name,
                        MESH,
                        WearSize.Kind.AREA,
                        part.given().number(MESH),
                        written.all().get(name).given().number(MESH),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
            }
        });
        return found;
    }
}

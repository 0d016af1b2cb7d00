package hotidle.circuits;

import hotidle.circuits.assemble.Resizing;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Problems;
import hotidle.network.Network;
import hotidle.network.Placed;
import hotidle.transmission.Adjustable;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A build made anew with other sizes: the parts that these concern by the rules of any file, all else as it is.
 *
 * @param unit     as the build has it, before its set pressure
 * @param parts    of the build, with the numbers that they were made of
 * @param pressure set pressure that the build asks for, if it does [Pa]
 * @param by       what that changes
 */
record Remade(Transmission unit, Resizing parts, OptionalDouble pressure, SetPressure.By by)
        implements Adjustable.Remake {

    /** A pump's worn mesh: it wears though it is no size with a new value. The file as written is new. */
    private static final String MESH = "orifice-slip-area";

    @Override
    public Transmission with(Map<String, Double> sizes) {
        Problems problems = new Problems(unit.circuit(), "");
        List<Placed> all = parts.with(sizes, problems);
        problems.refuseErrors();
        Transmission made = unit.with(
                new Network(unit.network().nodes(), all),
                unit.assumed().stream().filter(path -> !sizes.containsKey(path)).toList());
        return pressure.isPresent() ? SetPressure.of(made, pressure.getAsDouble(), by) : made;
    }

    /** Lengths and areas that do not wear, as a piston's area: what a builder chooses. */
    @Override
    public List<WearSize> others() {
        return parts.numbers().stream()
                .filter(number -> KINDS.containsKey(number.dimension()))
                .map(number -> new WearSize(
                        number.part(),
                        number.key(),
                        KINDS.get(number.dimension()),
                        number.value(),
                        number.value(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()))
                .toList();
    }

    private static final Map<Dimension, WearSize.SizeKind> KINDS =
            Map.of(Dimension.LENGTH, WearSize.SizeKind.LENGTH, Dimension.AREA, WearSize.SizeKind.AREA);

    /**
     * What can be changed.
     *
     * @param sizes   as the build has them, by path
     * @param now     parts as the build has them
     * @param written parts as the file has them
     * @param onSheet whether all that the build says of sizes is what a measurement sheet says
     */
    static List<WearSize> dimensions(Map<String, Attributes.Sizes> sizes, Parts now, Parts written, boolean onSheet) {
        List<WearSize> found = new ArrayList<>();
        sizes.forEach((path, size) -> {
            int dot = path.indexOf('.');
            found.add(new WearSize(
                    path.substring(0, dot),
                    path.substring(dot + 1),
                    WearSize.SizeKind.LENGTH,
                    size.inUse(),
                    size.fresh(),
                    size.limit(),
                    size.measured(),
                    origin(size, onSheet)));
        });
        now.all().forEach((name, part) -> {
            if (part.given().has(MESH)) {
                found.add(new WearSize(
                        name,
                        MESH,
                        WearSize.SizeKind.AREA,
                        part.given().number(MESH),
                        written.all().get(name).given().number(MESH),
                        OptionalDouble.empty(),
                        OptionalDouble.empty()));
            }
        });
        return found;
    }

    private static WearSize.Origin origin(Attributes.Sizes size, boolean onSheet) {
        if (!size.changed()) {
            return WearSize.Origin.WRITTEN;
        }
        boolean measured = onSheet || size.measured().stream().anyMatch(value -> value == size.inUse());
        return measured ? WearSize.Origin.MEASURED : WearSize.Origin.MADE;
    }
}

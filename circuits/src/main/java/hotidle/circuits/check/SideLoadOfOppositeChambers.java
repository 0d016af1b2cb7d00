package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.List;
import java.util.Locale;

/** Chambers that share a drive gear have the side load of opposite meshes, not the default of one; {@link hotidle.law.GearSideLoad}. */
final class SideLoadOfOppositeChambers implements Rule.OfCircuit {

    private static final String FACTOR = "side-load-factor";

    @Override
    public void check(Attributes file, Parts parts) {
        for (Parts.DeclaredPart part : parts.all().values()) {
            List<Attributes> meshes = part.given().words("loaded-by").stream()
                    .map(parts.all()::get)
                    .filter(one ->
                            one != null && !one.given().broken() && one.given().has("tip-gears"))
                    .map(Parts.DeclaredPart::given)
                    .toList();
            if (meshes.size() > 1) {
                meshes.stream().filter(mesh -> !mesh.stands(FACTOR)).forEach(mesh -> warn(mesh, part.given()));
            }
        }
    }

    private static void warn(Attributes mesh, Attributes bushing) {
        mesh.warning(
                ProblemCode.SIDE_LOAD_OF_ONE_MESH,
                FACTOR,
                String.format(
                        Locale.ROOT,
                        "takes the side load of a single mesh, %.2f, beside another chamber on '%s'",
                        mesh.number(FACTOR),
                        bushing.name()),
                "opposite meshes push with 0.62 of pressure, width and tip diameter each, 0.54 to 0.71 by where the teeth seal"
                        + " (derived)",
                "write side-load-factor: 0.62, or leave it on the safe side");
    }
}

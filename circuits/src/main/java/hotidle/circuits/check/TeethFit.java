package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import hotidle.geartrain.ToothFit;
import hotidle.geartrain.ToothFit.ToothMisfit;
import java.util.OptionalInt;

/** The teeth of each planetary set mesh, and its planets can be put in. */
final class TeethFit implements Rule.OfCircuit {

    @Override
    public void check(Attributes file, Parts parts) {
        file.group("gearsets")
                .ifPresent(train -> train.groups("sets").values().stream()
                        .filter(set -> !set.broken())
                        .forEach(TeethFit::check));
    }

    private static void check(Attributes set) {
        boolean paired = set.text("pinions").equals("paired");
        OptionalInt planet =
                !paired && set.has("pinion-teeth") ? OptionalInt.of(set.count("pinion-teeth")) : OptionalInt.empty();
        check(set, "sun-teeth", paired, planet);
        if (set.has("short-sun-teeth")) {
            check(set, "short-sun-teeth", true, OptionalInt.empty());
        }
    }

    private static void check(Attributes set, String sunKey, boolean paired, OptionalInt planet) {
        int sun = set.count(sunKey);
        int ring = set.count("ring-teeth");
        OptionalInt count = set.has("pinion-count") ? OptionalInt.of(set.count("pinion-count")) : OptionalInt.empty();
        for (ToothMisfit misfit : new ToothFit(sun, ring, paired, planet, count).misfits()) {
            String teeth = sun + " and " + ring + " teeth";
            switch (misfit) {
                case NO_ROOM ->
                    meshes(
                            set,
                            sunKey,
                            "has no room for pinions between " + teeth,
                            "the ring has at least 16 teeth more than the sun");
                case PLANET_SIZE ->
                    meshes(
                            set,
                            "pinion-teeth",
                            "has pinions of " + planet.orElseThrow() + " teeth between " + teeth,
                            "a pinion has half of what the ring has more than the sun, " + (ring - sun) / 2.0);
                case PLANETS_TOUCH ->
                    meshes(
                            set,
                            "pinion-count",
                            "has " + count.orElseThrow() + " pinions between " + teeth
                                    + ", which would touch each other",
                            "fewer pinions have room");
                case UNEQUAL_ANGLES ->
                    set.warning(
                            ProblemCode.TEETH_NOT_ASSEMBLED,
                            "pinion-count",
                            "has " + count.orElseThrow() + " pinions that cannot stand at equal angles between "
                                    + teeth,
                            (paired ? "ring less sun" : "ring plus sun") + " over their number is no whole number",
                            "check the counts; some sets have unequal angles");
            }
        }
    }

    private static void meshes(Attributes set, String key, String says, String why) {
        set.error(ProblemCode.TEETH_DO_NOT_MESH, key, says, why, "");
    }
}

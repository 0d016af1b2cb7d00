package hotidle.circuits.create;

import hotidle.circuits.kind.Kinds;
import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.part.Band;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A plate clutch in the place of a ready circuit's band, for a unit that holds the same member by plates. Its name, its oil, its seals
 * and what ranges say of it stay.
 *
 * <pre>
 * Rule      it holds what the band holds at every pressure: piston area and return force times i·r·g/(μ·z·rm), i the lever, r the drum's
 *           radius, g the band's torque for each pull and radius, z the friction faces and rm their mean radius, that of the drum where
 *           it is not known (packs lie within the drum they replace; assumed); the lining is a fifth of rm wide (chosen)
 * Source    torque of a plate clutch with run-in linings, μ·z·rm·(p·A − F), against that of {@link Band}, which names its own
 * </pre>
 */
final class BandToPlates {

    /** Half of the width of the lining, as a share of its mean radius (chosen) [-]. */
    private static final double HALF_WIDTH = 0.1;

    private BandToPlates() {}

    static boolean isBand(Map<String, Object> part) {
        return Draft.text(part, "kind").equals("band");
    }

    /** Makes a clutch of a band, in its own keys. */
    static void change(Map<String, Object> band, UnitAnswers.Faces faces) {
        double drum = Units.parse(Draft.text(band, "drum-diameter"), Dimension.LENGTH) / 2;
        double radius = faces.meanRadius().orElse(drum);
        double friction = ratio(band, "friction");
        Band held = new Band(
                drum,
                Units.parse(Draft.text(band, "wrap"), Dimension.ANGLE),
                ratio(band, "lever"),
                Draft.text(band, "drum-turns").equals("to-servo"),
                friction,
                friction);
        double less = held.torqueArm(false) / (friction * faces.count() * radius);
        List.of("drum-diameter", "wrap", "lever", "drum-turns").forEach(band::remove);
        Map<String, Object> clutch = new LinkedHashMap<>();
        band.forEach((key, value) -> {
            clutch.put(key, value);
            if (key.equals("return-force")) {
                clutch.put("surfaces", String.valueOf(faces.count()));
                clutch.put("lining-inner-diameter", millimetres(2 * radius * (1 - HALF_WIDTH)));
                clutch.put("lining-outer-diameter", millimetres(2 * radius * (1 + HALF_WIDTH)));
            }
        });
        clutch.put("kind", "clutch");
        clutch.put("about", "plate clutch in place of a band");
        List.of("piston-area", "return-force")
                .forEach(key -> clutch.put(key, Amounts.times(Draft.text(band, key), less)));
        band.clear();
        band.putAll(clutch);
    }

    /** As written, or as the file language has it where it is not. */
    private static double ratio(Map<String, Object> band, String key) {
        String written = Draft.text(band, key);
        return Units.parse(written.isEmpty() ? usual(key) : written, Dimension.RATIO);
    }

    private static String usual(String key) {
        return Kinds.of("band")
                .flatMap(kind -> kind.shape().key(key))
                .flatMap(Key::fallback)
                .orElseThrow()
                .text();
    }

    private static String millimetres(double length) {
        return Amounts.of(length * 1e3, "mm");
    }
}

package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A gear has two faces, and each is one circle: the sectors under pressure on a side of the gear on a hub add up to no more than that.
 *
 * <p>The gear is the one whose hub a bushing carries. Its sides are counted in the face gaps into the space that the bushing closes
 * and, where a chamber that loads the bushing has more faces than the two of its own driven gear, there too.
 */
final class GearHasOnePairOfFaces implements Rule.OfCircuit {

    /** Faces of a gear, and of the driven gear that is a chamber's own. */
    private static final int PAIR = 2;

    /** What rounding adds to a full circle. */
    private static final double FULL = 1 + 1e-9;

    @Override
    public void check(Attributes file, Parts parts) {
        for (Parts.DeclaredPart part : parts.all().values()) {
            if (part.kind().carriesLoad() && !part.given().broken()) {
                addUp(part.given(), parts);
            }
        }
    }

    private static void addUp(Attributes bushing, Parts parts) {
        List<String> said = new ArrayList<>();
        Attributes last = bushing;
        double sum = 0;
        for (Parts.DeclaredPart part : parts.all().values()) {
            Attributes given = part.given();
            double side = given.broken() ? 0 : side(part, bushing);
            if (side > 0) {
                said.add(String.format(Locale.ROOT, "%.0f %% at %s", 100 * side, given.label()));
                sum += side;
                last = given;
            }
        }
        if (sum > FULL) {
            last.warning(
                    ProblemCode.FACES_BEYOND_A_CIRCLE,
                    last.has("sector") ? "sector" : "faces",
                    String.format(
                            Locale.ROOT,
                            "brings the sectors on a side of the gear on '%s' to %.0f %% of a circle",
                            bushing.name(),
                            100 * sum),
                    "a gear has one pair of faces: " + String.join(", ", said),
                    "give chambers that share a drive gear the two faces of their driven gears, and the drive gear a face-gap"
                            + " for each of them");
        }
    }

    /** What a part puts under pressure on a side of the gear that the bushing carries, of a circle. */
    private static double side(Parts.DeclaredPart part, Attributes bushing) {
        Attributes given = part.given();
        if (given.has("sector") && given.has("faces") && given.text("to").equals(bushing.text("from"))) {
            return given.number("sector") * given.count("faces") / PAIR;
        }
        boolean gears = given.has("tip-gears") && given.has("face-sector") && given.has("face-clearance");
        return gears && bushing.words("loaded-by").contains(given.name())
                ? given.number("face-sector") * Math.max(given.count("faces") - PAIR, 0) / PAIR
                : 0;
    }
}

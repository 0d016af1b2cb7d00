package hotidle.geartrain;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Whether the teeth of a sun and a ring go together over their planets.
 *
 * <pre>
 * Formula   one row of planets: ring = sun + 2·planet, (sun + ring)/count whole, (planet + 2) &lt; (sun + planet)·sin(π/count);
 *           pairs of planets: (ring − sun)/count whole
 * Source    H. E. Merritt, Gear Trains, 1947 (from memory)
 * Range     teeth of one module; profile shift lets ring and sun + 2·planet differ by up to SHIFT teeth
 * </pre>
 *
 * @param sun    teeth of the sun
 * @param ring   teeth of the ring
 * @param paired whether pairs of planets lie between them
 * @param planet teeth of a planet that meshes with both; empty where that is not given, or they are paired
 * @param count  planets, or pairs of them, round the set; empty where that is not given
 */
public record ToothFit(int sun, int ring, boolean paired, OptionalInt planet, OptionalInt count) {

    /** Teeth by which profile shift can make up for a centre distance. */
    private static final int SHIFT = 2;

    /** Fewest teeth of a planet. */
    private static final int LEAST = 8;

    /** What does not go together. */
    public enum ToothMisfit {
        /** No planet has room between sun and ring. */
        NO_ROOM,
        /** The planet does not reach from sun to ring, or is too large. */
        PLANET_SIZE,
        /** Neighbouring planets would touch. */
        PLANETS_TOUCH,
        /** Planets at equal angles cannot be put in. */
        UNEQUAL_ANGLES
    }

    /** All that does not go together. */
    public List<ToothMisfit> misfits() {
        if (ring - sun < 2 * LEAST) {
            return List.of(ToothMisfit.NO_ROOM);
        }
        List<ToothMisfit> misfits = new ArrayList<>();
        if (planet.isPresent() && Math.abs(ring - sun - 2 * planet.getAsInt()) > SHIFT) {
            misfits.add(ToothMisfit.PLANET_SIZE);
        }
        if (count.isPresent()) {
            int whole = paired ? ring - sun : ring + sun;
            if (whole % count.getAsInt() != 0) {
                misfits.add(ToothMisfit.UNEQUAL_ANGLES);
            }
            double teeth = (ring - sun) / 2.0;
            if (!paired && teeth + 2 >= (sun + teeth) * Math.sin(Math.PI / count.getAsInt())) {
                misfits.add(ToothMisfit.PLANETS_TOUCH);
            }
        }
        return misfits;
    }
}

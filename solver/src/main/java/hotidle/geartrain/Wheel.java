package hotidle.geartrain;

import java.util.Optional;

/**
 * A toothed wheel of a planetary set: a sun or a ring on a member, or a planet on the carrier.
 *
 * @param name     within its set
 * @param teeth    number of teeth [-], above zero; half a tooth stands for a planet between wheels of profile shift
 * @param internal whether its teeth point inwards, as those of a ring
 * @param member   the member that it is fixed to; empty for a planet
 */
public record Wheel(String name, double teeth, boolean internal, Optional<String> member) {

    public Wheel {
        if (!(teeth > 0 && teeth < 1e4)) {
            throw new IllegalArgumentException("teeth of " + name + " are " + teeth + " and must be above zero");
        }
    }

    /** A sun on a member. */
    public static Wheel sun(String name, double teeth, String member) {
        return new Wheel(name, teeth, false, Optional.of(member));
    }

    /** A ring on a member. */
    public static Wheel ring(String name, double teeth, String member) {
        return new Wheel(name, teeth, true, Optional.of(member));
    }

    /** A planet. */
    public static Wheel planet(String name, double teeth) {
        return new Wheel(name, teeth, false, Optional.empty());
    }

    /** Whether it turns on the carrier. */
    public boolean isPlanet() {
        return member.isEmpty();
    }
}

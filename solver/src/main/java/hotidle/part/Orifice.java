package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Hole;
import hotidle.law.Restriction;
import hotidle.law.ShortTube;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * An orifice in a separator plate or a drilled hole. A hole shorter than half its diameter is sharp-edged, {@link Hole}; a longer one
 * flows full, {@link ShortTube}. A coefficient given by the user replaces both: then the hole is {@link Hole} with that Cd.
 *
 * @param diameter             [m]
 * @param length               thickness of the plate [m], 0 for a sharp edge
 * @param dischargeCoefficient Cd [-], 0.3 to 1, where the user knows it
 * @param count                equal holes side by side
 */
public record Orifice(double diameter, double length, OptionalDouble dischargeCoefficient, int count) implements Part {

    public Orifice {
        Check.positive("orifice diameter", diameter);
        Check.notNegative("orifice length", length);
        Check.within("discharge coefficient", dischargeCoefficient.orElse(Hole.SHARP_EDGE), 0.3, 1);
        Check.within("number of holes", count, 1, 1000);
    }

    /** A hole whose coefficient is known. */
    public Orifice(double diameter, double length, double dischargeCoefficient, int count) {
        this(diameter, length, OptionalDouble.of(dischargeCoefficient), count);
    }

    /** A hole that flows full counts as a pipe. */
    @Override
    public Map<String, Channel> channels() {
        boolean full = dischargeCoefficient.isEmpty() && length >= ShortTube.SHORTEST * diameter;
        return Map.of("", full ? Channel.pipe(diameter, count) : Channel.hole(diameter, count));
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return new Through(restriction(), setting.oil());
    }

    private Restriction restriction() {
        boolean full = dischargeCoefficient.isEmpty() && length >= ShortTube.SHORTEST * diameter;
        if (!full) {
            return Hole.loss(diameter, length, dischargeCoefficient.orElse(Hole.SHARP_EDGE))
                    .times(count);
        }
        ShortTube one = new ShortTube(diameter, length);
        return count == 1 ? one : Restriction.several(one, count);
    }
}

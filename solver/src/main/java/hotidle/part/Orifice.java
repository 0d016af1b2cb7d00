package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.Hole;
import hotidle.law.Restriction;
import hotidle.law.SeriesLoss;
import hotidle.law.SharpEdge;
import hotidle.law.ShortTube;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * An orifice in a separator plate or a drilled hole. A hole shorter than half its diameter is sharp-edged, {@link SharpEdge}; a longer one
 * flows full, {@link ShortTube}. A coefficient given by the user replaces both: then the hole is {@link Hole} with that Cd, and from a
 * channel of diameter D its kinetic drop is less by the share (d/D)⁴ that the oil brings along.
 *
 * @param diameter             [m]
 * @param length               thickness of the plate [m], 0 for a sharp edge
 * @param dischargeCoefficient Cd [-], 0.3 to 1, where the user knows it
 * @param count                equal holes side by side
 * @param upstream             diameter of the channel before each [m], infinite for a chamber
 */
public record Orifice(double diameter, double length, OptionalDouble dischargeCoefficient, int count, double upstream)
        implements Part {

    public Orifice {
        if (!(diameter / upstream <= SharpEdge.WIDEST)) {
            throw new IllegalArgumentException("an orifice of " + diameter + " m in a channel of " + upstream + " m");
        }
        Check.positive("orifice diameter", diameter);
        Check.notNegative("orifice length", length);
        Check.within("discharge coefficient", dischargeCoefficient.orElse(Hole.SHARP_EDGE), 0.3, 1);
        Check.within("number of holes", count, 1, 1000);
    }

    /** A hole from a chamber. */
    public Orifice(double diameter, double length, OptionalDouble dischargeCoefficient, int count) {
        this(diameter, length, dischargeCoefficient, count, Double.POSITIVE_INFINITY);
    }

    /** A hole from a chamber whose coefficient is known. */
    public Orifice(double diameter, double length, double dischargeCoefficient, int count) {
        this(diameter, length, OptionalDouble.of(dischargeCoefficient), count);
    }

    /** A hole that flows full counts as a pipe. */
    @Override
    public Map<String, Channel> channels() {
        return Map.of("", full() ? Channel.pipe(diameter, count) : Channel.hole(diameter, count));
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        return new Through(restriction(), setting.oil());
    }

    private boolean full() {
        return dischargeCoefficient.isEmpty() && length >= ShortTube.SHORTEST * diameter;
    }

    private Restriction restriction() {
        double ratio = diameter / upstream;
        if (dischargeCoefficient.isPresent()) {
            SeriesLoss chamber = Hole.loss(diameter, length, dischargeCoefficient.getAsDouble());
            return new SeriesLoss(chamber.viscous(), chamber.kinetic() * (1 - Math.pow(ratio, 4))).times(count);
        }
        Restriction one = full() ? new ShortTube(diameter, length, ratio) : new SharpEdge(diameter, length, ratio);
        return count == 1 ? one : Restriction.several(one, count);
    }
}

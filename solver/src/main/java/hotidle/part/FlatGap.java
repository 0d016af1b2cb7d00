package hotidle.part;

import hotidle.law.Bow;
import hotidle.law.Channel;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import java.util.Map;

/**
 * The leak between two faces: valve body, separator plate, pump cover; law and source in {@link Slot}, that of a gap which is not even
 * across the flow in {@link Bow}.
 *
 * @param width  across the flow [m]
 * @param entry  height where the oil enters [m]
 * @param exit   height where it leaves [m]
 * @param bow    height added where the gap is highest [m]; a bowed gap has entry = exit
 * @param shape  how the height changes across the flow
 * @param length along the flow [m]
 */
public record FlatGap(double width, double entry, double exit, double bow, Bow shape, double length) implements Part {

    /** A gap that is even, tapered along the flow or bowed over its whole width. */
    public FlatGap(double width, double entry, double exit, double bow, double length) {
        this(width, entry, exit, bow, Bow.ACROSS, length);
    }

    public FlatGap {
        Check.positive("gap width", width);
        Check.positive("gap height at the entry", entry);
        Check.positive("gap height at the exit", exit);
        Check.notNegative("bow", bow);
        Check.positive("gap length", length);
        if (bow > 0 && entry != exit) {
            throw new IllegalArgumentException("a flat gap is tapered along the flow or bowed across it, not both");
        }
    }

    @Override
    public Map<String, Channel> channels() {
        return Map.of("", Channel.slot(width));
    }

    @Override
    public Form form() {
        return Form.THROUGH;
    }

    @Override
    public Law law(Setting setting) {
        SeriesLoss tapered = Slot.tapered(width, entry, exit, length);
        if (bow == 0) {
            return new Through(tapered, setting.oil());
        }
        double viscous = 12 * length / (width * shape.cube(entry, bow));
        // the head is that of the flow over the mean section
        double wider = shape.height(entry, bow) / entry;
        return new Through(new SeriesLoss(viscous, tapered.kinetic() / (wider * wider)), setting.oil());
    }
}

package hotidle.part;

import hotidle.law.Channel;
import hotidle.law.SeriesLoss;
import hotidle.law.Slot;
import java.util.Map;

/**
 * The leak between two faces: valve body, separator plate, pump cover; law and source in {@link Slot}.
 *
 * <p>Bowed across the flow, h(s) = h + bow·(1 − s²) for s from −1 to 1, the cube has the mean
 * h³ + 2·h²·bow + 8/5·h·bow² + 16/35·bow³, by integration.
 *
 * @param width  across the flow [m]
 * @param entry  height where the oil enters [m]
 * @param exit   height where it leaves [m]
 * @param bow    height added in the middle of the width [m]; a bowed gap has entry = exit
 * @param length along the flow [m]
 */
public record FlatGap(double width, double entry, double exit, double bow, double length) implements Part {

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
        double h = entry;
        double bowed = 1 + 2 * bow / h + 8.0 / 5 * bow * bow / (h * h) + 16.0 / 35 * bow * bow * bow / (h * h * h);
        return new Through(new SeriesLoss(tapered.viscous() / bowed, tapered.kinetic()), setting.oil());
    }
}

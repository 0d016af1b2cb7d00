package hotidle.plots.scheme;

import java.util.ArrayList;
import java.util.List;

/**
 * How large the tag of a net is [mm]. Lines come in from below and go out above, oil in the middle and pilot pressure beside it.
 *
 * @param width  with its writing
 * @param height with its writing
 * @param plateWidth of the plate with name and pressure; leaks hang below it
 * @param plate  height of the plate
 * @param across where oil lines meet it, from its left edge
 */
record TagPlan(double width, double height, double plateWidth, double plate, double across) {

    /** Diameter of a gauge [mm]. */
    static final double GAUGE = 4.4;

    /** Between the line of oil and that of pilot pressure [mm]. */
    static final double PILOT_BESIDE = 3;

    /** From the line of oil to what hangs beside it, past the sign of a leak [mm]. */
    static final double HANGING = 5.2;

    /** Width of the sign of a leak [mm]. */
    static final double SIGN = 3.4;

    static TagPlan of(SchemeNet net) {
        double text = Math.max(
                        Lettering.width(heading(net), Lettering.BOLD, Lettering.SMALL),
                        Lettering.width(heading(net.label(), net.widest().value()), Lettering.BOLD, Lettering.SMALL))
                + 2;
        double gauge = net.look() == SchemeNet.Look.GAUGE ? GAUGE + 0.2 : 0;
        double plate = 4;
        double plateWidth = Math.max(text + gauge, 8);
        double across = plateWidth / 3;
        List<String> lines = new ArrayList<>(net.hanging());
        lines.addAll(net.widest().below());
        double below = lines.stream()
                .mapToDouble(line -> Lettering.width(line, Lettering.PLAIN, Lettering.SMALL))
                .max()
                .orElse(0);
        int rows = net.widest().rows(net.hanging().size());
        double hanging = rows == 0 ? 0 : across + HANGING + 0.3 + below;
        return new TagPlan(
                Math.max(plateWidth, hanging),
                plate + rows * Lettering.LINE + (rows == 0 ? 0 : 0.6),
                plateWidth,
                plate,
                across);
    }

    /** Name and pressure. */
    static String heading(SchemeNet net) {
        return heading(net.label(), net.value());
    }

    private static String heading(String label, String value) {
        return value.isEmpty() ? label : label + "  " + value;
    }
}

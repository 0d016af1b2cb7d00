package hotidle.plots.scheme;

/**
 * How large the tag of a net is [mm]. Lines come in from below and go out above, oil in the middle and pilot pressure beside it.
 *
 * @param width  with its writing
 * @param height with its writing
 * @param plate  height of the plate with name and pressure; leaks hang below it
 * @param across where oil lines meet it, from its left edge
 */
record TagPlan(double width, double height, double plate, double across) {

    /** Diameter of a gauge [mm]. */
    static final double GAUGE = 4.4;

    /** Between the line of oil and that of pilot pressure [mm]. */
    static final double PILOT_BESIDE = 3;

    static TagPlan of(SchemeNet net) {
        double text = Lettering.width(heading(net), Lettering.BOLD, Lettering.SMALL) + 2;
        double gauge = net.look() == SchemeNet.Look.GAUGE ? GAUGE + 0.2 : 0;
        double plate = 4;
        double plateWidth = Math.max(text + gauge, 8);
        double across = plateWidth / 3;
        double drips = net.hanging().stream()
                .mapToDouble(line -> Lettering.width(line, Lettering.PLAIN, Lettering.SMALL))
                .max()
                .orElse(0);
        double hanging = net.hanging().isEmpty() ? 0 : across + 2.5 + 3 + drips;
        return new TagPlan(
                Math.max(plateWidth, hanging),
                plate + net.hanging().size() * Lettering.LINE + (net.hanging().isEmpty() ? 0 : 0.6),
                plate,
                across);
    }

    /** Name and pressure. */
    static String heading(SchemeNet net) {
        return net.value().isEmpty() ? net.name() : net.name() + "  " + net.value();
    }
}

package hotidle.plots.scheme;

import java.awt.geom.Rectangle2D;

/**
 * Size of a symbol [mm].
 *
 * @param width  of the body
 * @param height of the body
 * @param left   what stands out at its left: a lever, a solenoid
 * @param right  what stands out at its right: a spring
 * @param columns envelopes side by side, 1 where it has none; lines meet the last one, at the spring
 */
record SymbolSize(double width, double height, double left, double right, int columns) {

    /** How large symbols are shown that are drawn in their own measure [-]. */
    static final double SHOWN = 0.8;

    /** Width of a spring [mm]. */
    static final double SPRING = 4.5;

    private static final double ENVELOPE = 6.4;

    static SymbolSize of(SchemePart part) {
        return switch (part.symbol()) {
            case PUMP, VARIABLE_PUMP -> plain(11, 11, 1.5);
            case CONVERTER -> plain(15, 12, 0.3);
            case COOLER, FILTER -> plain(10, 10, 0.3);
            case CLUTCH, BAND -> plain(14, 8, 0.3);
            case CHECK_VALVE, ORIFICE, GAP, SEALING_RING, JOINT, PASSAGE, RESTRICTION -> plain(6, 6.4, 0.3);
            case ACCUMULATOR -> plain(6, 10, 0.3);
            case LUBRICATED -> plain(6, 10, 0.3);
            case RELIEF_VALVE -> new SymbolSize(8 * SHOWN, 8 * SHOWN, 2.2, SPRING, 1);
            case SPOOL_VALVE -> valve(part, 1, 0, SPRING);
            case SOLENOID_VALVE -> valve(part, 1, 5, SPRING);
            case SIGNAL_VALVE -> valve(part, 1, 5, SPRING);
            case SELECTOR -> valve(part, 1.4, 6, 0);
        };
    }

    /** The part of the body that lines meet. */
    Rectangle2D home(Rectangle2D body) {
        double each = body.getWidth() / columns;
        return new Rectangle2D.Double(body.getMaxX() - each, body.getMinY(), each, body.getHeight());
    }

    private static SymbolSize plain(double width, double height, double left) {
        return new SymbolSize(width * SHOWN, height * SHOWN, left, 0, 1);
    }

    private static SymbolSize valve(SchemePart part, double wider, double left, double right) {
        int in = (int)
                part.pins().stream().filter(pin -> pin.role() == Pin.Role.IN).count();
        int out = (int)
                part.pins().stream().filter(pin -> pin.role() == Pin.Role.OUT).count();
        int columns = Math.max(1, part.envelopes().size());
        double each = Math.max(ENVELOPE, Math.max(in, out) * BoxPlan.PITCH * wider);
        return new SymbolSize(columns * each, ENVELOPE + 0.6, left, right, columns);
    }
}

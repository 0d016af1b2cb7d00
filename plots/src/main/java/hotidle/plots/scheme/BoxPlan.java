package hotidle.plots.scheme;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How large a box is and where everything in it stands, from its upper left corner [mm]. Its writing lies inside it, beside the symbol,
 * so that no line of another box can cross it.
 *
 * @param width  with its writing
 * @param height with its writing
 * @param body   the symbol, without lines and writing
 * @param pins   where each pin lies: on the body's edge; its line goes straight up or down from there
 * @param tanks  where a line to a reservoir ends, for each pin that has one
 * @param text   left end of the first line's foot
 */
record BoxPlan(
        double width, double height, Rectangle2D body, Map<Pin, Point2D> pins, Map<Pin, Point2D> tanks, Point2D text) {

    /** Width of a reservoir [mm]. */
    static final double TANK_WIDTH = 4;

    /** Height of a reservoir [mm]. */
    static final double TANK_HEIGHT = 1.8;

    /** Between two lines that meet a valve [mm]. */
    static final double PITCH = 4;

    private static final double STUB = 1;
    private static final double BESIDE = 1;
    private static final double TANK_BELOW = 1.8 + TANK_HEIGHT;
    private static final double TANK_ABOVE = 5.2;
    private static final double PILOT_PITCH = 2.6;

    static BoxPlan of(SchemePart part, Scheme scheme) {
        SymbolSize size = SymbolSize.of(part);
        List<Pin> in = of(part, Pin.Role.IN);
        List<Pin> out = of(part, Pin.Role.OUT);
        List<Pin> free = of(part, Pin.Role.PILOT);
        List<Pin> spring = of(part, Pin.Role.PILOT_AT_SPRING);
        boolean tankIn = in.stream().anyMatch(pin -> scheme.reservoir(pin.net()));
        boolean tankOut = out.stream().anyMatch(pin -> scheme.reservoir(pin.net()));
        double left = Math.max(size.left(), 1 + PILOT_PITCH * free.size());
        double right = Math.max(size.right(), spring.isEmpty() ? 0 : 4 + PILOT_PITCH * spring.size());
        double top = STUB + (tankOut ? TANK_ABOVE : 0);
        double bottom = STUB + (tankIn ? TANK_BELOW : 0);
        Rectangle2D body = new Rectangle2D.Double(left, top, size.width(), size.height());
        Map<Pin, Point2D> pins = new LinkedHashMap<>();
        Map<Pin, Point2D> tanks = new LinkedHashMap<>();
        spread(in, size.home(body), body.getMaxY(), pins);
        spread(out, size.home(body), body.getMinY(), pins);
        for (int i = 0; i < free.size(); i++) {
            pins.put(free.get(i), new Point2D.Double(left - 1 - PILOT_PITCH * (free.size() - i) + 1, body.getMaxY()));
        }
        for (int i = 0; i < spring.size(); i++) {
            pins.put(spring.get(i), new Point2D.Double(body.getMaxX() + 4 + PILOT_PITCH * i, body.getMaxY()));
        }
        for (Pin pin : in) {
            if (scheme.reservoir(pin.net())) {
                tanks.put(pin, new Point2D.Double(pins.get(pin).getX(), body.getMaxY() + 1.8 + TANK_HEIGHT / 2));
            }
        }
        for (Pin pin : out) {
            if (scheme.reservoir(pin.net())) {
                tanks.put(pin, new Point2D.Double(pins.get(pin).getX() + beside(pin, out, pins), body.getMinY() - 1.6));
            }
        }
        double text = 0;
        List<String> lines = new ArrayList<>(part.lines());
        text = Math.max(text, Lettering.width(part.name(), Lettering.BOLD, Lettering.SMALL));
        lines.addAll(part.widest().below());
        for (String line : lines) {
            text = Math.max(text, Lettering.width(line, Lettering.PLAIN, Lettering.SMALL));
        }
        int rows = 1 + part.widest().rows(part.lines().size());
        double bar = part.moves() ? Stands.HEIGHT : 0;
        double written = rows * Lettering.LINE + bar;
        double begins = Math.max(0, (size.height() - written) / 2) + top;
        double x = body.getMaxX() + right + BESIDE;
        double height = Math.max(top + size.height(), begins + written) + bottom;
        double wide = Math.max(
                x + Math.max(text, bar > 0 ? Stands.WIDTH : 0) + 0.5, tankOut ? body.getMaxX() + TANK_WIDTH : 0);
        return new BoxPlan(wide, height, body, pins, tanks, new Point2D.Double(x, begins + Lettering.SMALL));
    }

    /** How far beside its line a reservoir hangs: half way to the next line where that stands near [mm]. */
    private static double beside(Pin pin, List<Pin> out, Map<Pin, Point2D> pins) {
        int next = out.indexOf(pin) + 1;
        double free = TANK_WIDTH * 0.9;
        return next == out.size()
                ? free
                : Math.min(free, (pins.get(out.get(next)).getX() - pins.get(pin).getX()) / 2);
    }

    private static List<Pin> of(SchemePart part, Pin.Role role) {
        return part.pins().stream().filter(pin -> pin.role() == role).toList();
    }

    private static void spread(List<Pin> of, Rectangle2D along, double y, Map<Pin, Point2D> pins) {
        for (int i = 0; i < of.size(); i++) {
            pins.put(of.get(i), new Point2D.Double(along.getMinX() + along.getWidth() * (i + 0.5) / of.size(), y));
        }
    }
}

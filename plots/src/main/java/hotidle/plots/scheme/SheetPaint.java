package hotidle.plots.scheme;

import hotidle.plots.Svg;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** Paints what is laid out, piece by piece, each with its title. */
final class SheetPaint {

    private static final Color FRAME = new Color(0xf6, 0xf5, 0xf2);
    private static final Color FRAME_LINE = new Color(0xdd, 0xda, 0xd2);
    static final Color MARK = new Color(0xf3, 0xe3, 0xc2);
    private static final double THINNEST = 0.3;
    static final double WIDEST = 1.6;

    private final Scheme scheme;
    private final Sheet sheet;

    SheetPaint(Scheme scheme, Sheet sheet) {
        this.scheme = scheme;
        this.sheet = sheet;
    }

    /** All pieces in the order in which they lie on each other. */
    List<Svg.Piece> pieces() {
        List<Svg.Piece> pieces = new ArrayList<>();
        for (Sheet.Frame frame : sheet.frames()) {
            pieces.add(piece(frame.name(), "frame " + frame.name(), pen -> frame(pen, frame)));
        }
        for (Sheet.Tag tag : sheet.tags()) {
            wires(pieces, tag);
        }
        for (Sheet.Box box : sheet.boxes()) {
            if (box.part().changed()) {
                pieces.add(piece(box.part().title(), "mark " + box.part().name(), pen -> mark(pen, box)));
            }
            for (Pin pin : box.part().pins()) {
                pieces.add(piece(
                        scheme.net(pin.net()).title(),
                        key("lead", box.part().name(), pin),
                        pen -> lead(pen, box, pin)));
            }
            pieces.add(piece(box.part().title(), "box " + box.part().name(), pen -> box(pen, box)));
        }
        for (Sheet.Tag tag : sheet.tags()) {
            pieces.add(piece(tag.net().title(), "tag " + tag.net().name(), pen -> tag(pen, tag)));
        }
        return pieces;
    }

    private static Svg.Piece piece(String title, String key, Consumer<Pen> paint) {
        return new Svg.Piece(title, key, g -> paint.accept(new Pen(g)));
    }

    /** Of a line between a part and a net. */
    private static String key(String what, String part, Pin pin) {
        return what + " " + pin.net() + " " + part + " " + pin.role().name().toLowerCase(Locale.ROOT);
    }

    private void frame(Pen pen, Sheet.Frame frame) {
        Rectangle2D a = frame.area();
        RoundRectangle2D shape = new RoundRectangle2D.Double(a.getX(), a.getY(), a.getWidth(), a.getHeight(), 2, 2);
        pen.fill(shape, FRAME);
        pen.draw(shape, FRAME_LINE, 0.2);
        pen.text(frame.name(), frame.text().getX(), frame.text().getY(), Lettering.PLAIN, Lettering.FRAME, Pen.QUIET);
    }

    /** A net's narrow lines first, so that a wide one is seen whole. */
    private void wires(List<Svg.Piece> pieces, Sheet.Tag tag) {
        Color colour = PressureScale.of(tag.net().pressure());
        List<Sheet.Wire> own = sheet.wires().stream()
                .filter(wire -> wire.pin().net().equals(tag.net().name()))
                .sorted(Comparator.comparingDouble(wire -> width(wire.pin())))
                .toList();
        for (Sheet.Wire wire : own) {
            pieces.add(piece(tag.net().title(), key("wire", wire.part(), wire.pin()), pen -> wire(pen, wire, colour)));
        }
        List<Point2D> junctions = Junctions.of(own);
        if (!junctions.isEmpty()) {
            pieces.add(piece(
                    tag.net().title(),
                    "junctions " + tag.net().name(),
                    pen -> junctions.forEach(at -> pen.dot(at, 0.7, colour))));
        }
    }

    private static void wire(Pen pen, Sheet.Wire wire, Color colour) {
        Path2D path = new Path2D.Double();
        path.moveTo(wire.corners().get(0).getX(), wire.corners().get(0).getY());
        wire.corners().forEach(corner -> path.lineTo(corner.getX(), corner.getY()));
        if (wire.pin().role().pilot()) {
            pen.dashed(path, colour, THINNEST);
        } else {
            pen.draw(path, colour, width(wire.pin()));
        }
    }

    private static double width(Pin pin) {
        return Double.isNaN(pin.flow()) ? THINNEST : THINNEST + (WIDEST - THINNEST) * Math.min(1, Math.abs(pin.flow()));
    }

    private void box(Pen pen, Sheet.Box box) {
        SchemePart part = box.part();
        BoxPlan plan = box.plan();
        pen.origin(box.area().getX(), box.area().getY());
        if (part.envelopes().isEmpty() && part.symbol() != Symbol.SPOOL_VALVE && part.symbol() != Symbol.SELECTOR) {
            SymbolPaint.paint(pen, part, plan.body());
        } else {
            ValvePaint.paint(pen, part, plan);
        }
        Point2D text = plan.text();
        pen.text(part.name(), text.getX(), text.getY(), Lettering.BOLD, Lettering.SMALL, Pen.INK);
        double y = text.getY();
        for (String line : part.lines()) {
            y += Lettering.LINE;
            pen.text(line, text.getX(), y, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        }
        if (!Double.isNaN(part.stands())) {
            double left = text.getX();
            double at = y + 2.2;
            pen.draw(new Line2D.Double(left, at, left + Stands.WIDTH, at), Pen.QUIET, 0.5);
            pen.fill(new Rectangle2D.Double(left + part.stands() * (Stands.WIDTH - 1.2), at - 1.2, 1.2, 2.4), Pen.INK);
        }
    }

    private static void mark(Pen pen, Sheet.Box box) {
        pen.origin(box.area().getX(), box.area().getY());
        BoxPlan plan = box.plan();
        pen.fill(new RoundRectangle2D.Double(0, 0, plan.width(), plan.height(), 1.5, 1.5), MARK);
    }

    /** From the box's edge to the symbol, or from a reservoir. */
    private void lead(Pen pen, Sheet.Box box, Pin pin) {
        SchemePart part = box.part();
        BoxPlan plan = box.plan();
        pen.origin(box.area().getX(), box.area().getY());
        Point2D at = plan.pins().get(pin);
        Color colour = PressureScale.of(scheme.net(pin.net()).pressure());
        double width = width(pin);
        Point2D tank = plan.tanks().get(pin);
        if (tank != null) {
            Path2D path = pin.role() == Pin.Role.OUT
                    ? Pen.track(
                            at.getX(),
                            at.getY(),
                            at.getX(),
                            at.getY() - 4.2,
                            tank.getX(),
                            at.getY() - 4.2,
                            tank.getX(),
                            tank.getY())
                    : Pen.track(at.getX(), at.getY(), tank.getX(), tank.getY());
            pen.draw(path, colour, width);
            pen.tank(tank.getX(), tank.getY());
        } else if (pin.role().pilot()) {
            pen.dashed(ValvePaint.pilot(plan, pin, part.upwards(pin) ? 0 : plan.height()), colour, THINNEST);
        } else {
            double edge = pin.role() == Pin.Role.OUT ? 0 : plan.height();
            pen.draw(new Line2D.Double(at.getX(), at.getY(), at.getX(), edge), colour, width);
        }
    }

    private void tag(Pen pen, Sheet.Tag tag) {
        SchemeNet net = tag.net();
        pen.origin(tag.area().getX(), tag.area().getY());
        Color colour = PressureScale.of(net.pressure());
        boolean gauge = net.look() == SchemeNet.Look.GAUGE;
        double text = Lettering.width(TagPlan.heading(net), Lettering.BOLD, Lettering.SMALL);
        double left = gauge ? TagPlan.GAUGE : 0;
        double plate = tag.plan().plate();
        double plateWidth = tag.plan().plateWidth();
        RoundRectangle2D shape = new RoundRectangle2D.Double(0, 0, plateWidth, plate, plate, plate);
        pen.fill(shape, net.changed() ? MARK : Color.WHITE);
        pen.draw(shape, colour, 0.4);
        if (gauge) {
            double r = 1.5;
            pen.draw(new Ellipse2D.Double(plate / 2 - r + 0.2, plate / 2 - r, 2 * r, 2 * r), Pen.INK, Pen.LINE);
            pen.line(plate / 2 + 0.2 - 1, plate / 2 + 1, plate / 2 + 0.2 + 0.9, plate / 2 - 0.9);
            pen.head(plate / 2 - 1, plate / 2 + 1, plate / 2 + 1.2, plate / 2 - 1.2);
        }
        pen.text(
                TagPlan.heading(net),
                left + (plateWidth - left - text) / 2,
                plate / 2 + 0.9,
                Lettering.BOLD,
                Lettering.SMALL,
                Pen.INK);
        if (tag.plan().height() > plate) {
            foot(pen, tag, colour);
        }
        hanging(pen, tag, colour);
    }

    private static void hanging(Pen pen, Sheet.Tag tag, Color colour) {
        SchemeNet net = tag.net();
        double x = tag.plan().across() + TagPlan.HANGING;
        double y = tag.plan().plate();
        if (!net.was().isEmpty()) {
            y += Lettering.LINE;
            pen.text(net.was(), x, y, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        }
        for (SchemeNet.Drip drip : net.drips()) {
            y += Lettering.LINE;
            Rectangle2D sign =
                    new Rectangle2D.Double(x - TagPlan.SIGN - 0.6, y - 2.6, TagPlan.SIGN, Lettering.LINE - 0.3);
            if (drip.changed()) {
                mark(pen, drip.text(), sign);
            }
            if (drip.of().isPresent()) {
                SymbolPaint.small(pen, drip.of().get(), sign);
            } else {
                pen.drop(sign.getCenterX(), y - 2.4, colour);
            }
            pen.text(drip.text(), x, y, Lettering.PLAIN, Lettering.SMALL, Pen.INK);
        }
    }

    /** Behind a leak's sign and its writing. */
    private static void mark(Pen pen, String text, Rectangle2D sign) {
        double wide = TagPlan.SIGN + 0.6 + Lettering.width(text, Lettering.PLAIN, Lettering.SMALL);
        pen.fill(new RoundRectangle2D.Double(sign.getX(), sign.getY(), wide, Lettering.LINE - 0.1, 1, 1), MARK);
    }

    /** Lines from below end at the tag's foot; past the leaks that hang there they go on to its plate. */
    private void foot(Pen pen, Sheet.Tag tag, Color colour) {
        TagPlan plan = tag.plan();
        List<Pin> below = sheet.wires().stream()
                .filter(wire -> wire.pin().net().equals(tag.net().name()) && wire.arrives(tag.area()))
                .map(Sheet.Wire::pin)
                .toList();
        below.stream()
                .filter(pin -> !pin.role().pilot())
                .mapToDouble(SheetPaint::width)
                .max()
                .ifPresent(width -> pen.draw(
                        new Line2D.Double(plan.across(), plan.plate(), plan.across(), plan.height()), colour, width));
        if (below.stream().anyMatch(pin -> pin.role().pilot())) {
            double x = plan.across() - TagPlan.PILOT_BESIDE / 1.5;
            pen.dashed(new Line2D.Double(x, plan.height(), x, plan.plate()), colour, THINNEST);
        }
    }
}

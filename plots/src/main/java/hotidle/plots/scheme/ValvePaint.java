package hotidle.plots.scheme;

import java.awt.Color;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;

/** A valve: one envelope for each position, what moves it at its ends, and how far its spool stands. */
final class ValvePaint {

    private static final double CLOSED = 1.8;

    private final Pen pen;
    private final SchemePart part;
    private final BoxPlan plan;
    private final SymbolSize size;
    private final Rectangle2D body;

    private ValvePaint(Pen pen, SchemePart part, BoxPlan plan) {
        this.pen = pen;
        this.part = part;
        this.plan = plan;
        size = SymbolSize.of(part);
        body = plan.body();
    }

    static void paint(Pen pen, SchemePart part, BoxPlan plan) {
        ValvePaint to = new ValvePaint(pen, part, plan);
        double each = to.body.getWidth() / to.size.columns();
        for (int i = 0; i < Math.max(1, part.envelopes().size()); i++) {
            to.envelope(
                    i, new Rectangle2D.Double(to.body.getX() + i * each, to.body.getY(), each, to.body.getHeight()));
        }
        to.ends();
    }

    private void envelope(int index, Rectangle2D at) {
        boolean stands =
                !Double.isNaN(part.stands()) && part.envelopes().size() == 2 && (index == 1) == (part.stands() < 0.5);
        pen.fill(at, stands ? new Color(0xf0, 0xec, 0xf6) : Color.WHITE);
        pen.draw(at, Pen.INK, Pen.LINE);
        if (part.envelopes().isEmpty()) {
            return;
        }
        Envelope envelope = part.envelopes().get(index);
        double shift = at.getX() - size.home(body).getX();
        for (Envelope.Arrow link : envelope.links()) {
            link(place(link.from()), place(link.to()), shift);
        }
        for (Pin pin : part.pins()) {
            boolean open = envelope.links().stream()
                    .anyMatch(link -> link.from().equals(pin.net()) || link.to().equals(pin.net()));
            if (!pin.role().pilot() && !open) {
                closed(plan.pins().get(pin), shift);
            }
        }
    }

    private void link(Point2D from, Point2D to, double shift) {
        double x1 = from.getX() + shift;
        double x2 = to.getX() + shift;
        if (from.getY() == to.getY()) {
            double in = from.getY() == body.getMinY() ? 2.6 : -2.6;
            pen.path(x1, from.getY(), x1, from.getY() + in, x2, from.getY() + in, x2, to.getY());
            pen.head(x2, from.getY() + in, x2, to.getY());
        } else {
            pen.line(x1, from.getY(), x2, to.getY());
            pen.head(x1, from.getY(), x2, to.getY());
        }
    }

    private void closed(Point2D at, double shift) {
        double x = at.getX() + shift;
        double in = at.getY() == body.getMinY() ? CLOSED : -CLOSED;
        pen.line(x, at.getY(), x, at.getY() + in);
        pen.line(x - 0.9, at.getY() + in, x + 0.9, at.getY() + in);
    }

    private Point2D place(String net) {
        return plan.pins().entrySet().stream()
                .filter(entry -> entry.getKey().net().equals(net)
                        && !entry.getKey().role().pilot())
                .map(java.util.Map.Entry::getValue)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(part.name() + " has no line on " + net));
    }

    private void ends() {
        double left = body.getMinX();
        double right = body.getMaxX();
        double middle = body.getCenterY();
        switch (part.symbol()) {
            case SPOOL_VALVE -> {
                pen.draw(new Line2D.Double(left, body.getMinY() - 0.7, right, body.getMinY() - 0.7), Pen.INK, Pen.LINE);
                pen.draw(new Line2D.Double(left, body.getMaxY() + 0.7, right, body.getMaxY() + 0.7), Pen.INK, Pen.LINE);
                pen.spring(right, right + SymbolSize.SPRING - 0.5, middle);
            }
            case SOLENOID_VALVE -> {
                pen.body(new Rectangle2D.Double(left - 4, middle - 2.2, 4, 4.4));
                pen.line(left - 4, middle + 2.2, left, middle - 2.2);
                pen.spring(right, right + SymbolSize.SPRING - 0.5, middle);
            }
            case SIGNAL_VALVE -> {
                pen.body(new Rectangle2D.Double(left - 4, middle - 1.2, 4, 2.4));
                pen.line(left - 4, middle - 2.4, left - 4, middle + 2.4);
                pen.spring(right, right + SymbolSize.SPRING - 0.5, middle);
            }
            default -> {
                pen.line(left, middle, left - 2.5, middle);
                pen.line(left - 2.5, middle, left - 4, middle - 3.2);
                pen.dot(new Point2D.Double(left - 4, middle - 3.2), 0.8, Pen.INK);
            }
        }
    }

    /** The path of a pilot line from the box's edge into the end of the spool. */
    static Path2D pilot(BoxPlan plan, Pin pin, double foot) {
        Point2D at = plan.pins().get(pin);
        Rectangle2D body = plan.body();
        boolean free = pin.role() == Pin.Role.PILOT;
        double away = foot < body.getMinY() ? -1 : 1;
        double y = body.getCenterY() + away * 3;
        double far = free ? body.getMinX() : body.getMaxX();
        return Pen.track(at.getX(), foot, at.getX(), y, far, y);
    }
}

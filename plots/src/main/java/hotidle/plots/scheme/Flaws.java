package hotidle.plots.scheme;

import java.awt.Font;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** What a drawing must not have: things that lie on each other, lines through symbols or writing, pins that reach no net. */
final class Flaws {

    /** Lines end on an edge; so far inside of it nothing may run [mm]. */
    private static final double INSIDE = 0.15;

    /** A place is met within this [mm]. */
    private static final double NEAR = 0.1;

    private final Scheme scheme;
    private final Sheet sheet;
    private final List<String> found = new ArrayList<>();

    private Flaws(Scheme scheme, Sheet sheet) {
        this.scheme = scheme;
        this.sheet = sheet;
    }

    /** All of them, in words; none in a drawing that can be shown. */
    static List<String> of(Scheme scheme, Sheet sheet) {
        Flaws flaws = new Flaws(scheme, sheet);
        flaws.areas();
        sheet.boxes().forEach(flaws::writing);
        sheet.boxes().forEach(flaws::reservoirs);
        sheet.frames().forEach(flaws::name);
        sheet.boxes().forEach(box -> box.part().pins().forEach(pin -> flaws.joint(box, pin)));
        sheet.wires().forEach(flaws::straight);
        return flaws.found;
    }

    /** In words only where it is one: most are asked for and not there. */
    private void unless(boolean good, Supplier<String> flaw) {
        if (!good) {
            found.add(flaw.get());
        }
    }

    private void areas() {
        List<Rectangle2D> areas = new ArrayList<>();
        sheet.boxes().forEach(box -> areas.add(inner(box.area())));
        sheet.tags().forEach(tag -> areas.add(inner(tag.area())));
        for (int i = 0; i < areas.size(); i++) {
            for (int j = 0; j < i; j++) {
                Rectangle2D one = areas.get(i);
                Rectangle2D other = areas.get(j);
                unless(!one.intersects(other), () -> one + " lies on " + other);
            }
            for (Sheet.Wire wire : sheet.wires()) {
                Rectangle2D area = areas.get(i);
                unless(!wire.meets(area), () -> wire + " runs through " + area);
            }
        }
    }

    /** Writing lies in its own box, to the right of the symbol and of all that leads to it. */
    private void writing(Sheet.Box box) {
        BoxPlan plan = box.plan();
        double left = plan.text().getX();
        double foot = plan.text().getY();
        unless(left > plan.body().getMaxX(), () -> box.part().name() + " is written on its symbol");
        unless(
                plan.pins().values().stream().allMatch(at -> at.getX() < left),
                () -> box.part().name() + " is on a line");
        inside(plan, foot, box.part().name(), Lettering.BOLD);
        for (String line : box.part().lines()) {
            foot += Lettering.LINE;
            inside(plan, foot, line, Lettering.PLAIN);
        }
    }

    /** A reservoir hangs free of the lines beside it. */
    private void reservoirs(Sheet.Box box) {
        BoxPlan plan = box.plan();
        double half = BoxPlan.TANK_WIDTH / 2 + INSIDE;
        plan.tanks()
                .forEach((own, at) -> plan.pins().forEach((other, place) -> {
                    boolean beside = !own.equals(other) && own.role() == other.role();
                    unless(
                            !beside || Math.abs(place.getX() - at.getX()) > half,
                            () -> box.part().name() + " has a reservoir on its line to " + other.net());
                }));
    }

    private void inside(BoxPlan plan, double foot, String text, Font font) {
        double right = plan.text().getX() + Lettering.width(text, font, Lettering.SMALL);
        unless(
                right <= plan.width() && foot <= plan.height() && foot >= Lettering.SMALL * 0.8,
                () -> text + " does not fit into its box");
    }

    private void name(Sheet.Frame frame) {
        double high = Lettering.FRAME * 0.75;
        Rectangle2D name = new Rectangle2D.Double(
                frame.text().getX(),
                frame.text().getY() - high,
                Lettering.width(frame.name(), Lettering.PLAIN, Lettering.FRAME),
                high);
        unless(sheet.wires().stream().noneMatch(wire -> wire.meets(name)), () -> "a line runs through " + frame);
        unless(sheet.boxes().stream().noneMatch(box -> box.area().intersects(name)), () -> "a part lies on " + frame);
        unless(sheet.tags().stream().noneMatch(tag -> tag.area().intersects(name)), () -> "a net lies on " + frame);
    }

    private void joint(Sheet.Box box, Pin pin) {
        String what = box.part().name() + " at " + pin.net();
        List<Sheet.Wire> own = sheet.wires().stream()
                .filter(wire ->
                        wire.part().equals(box.part().name()) && wire.pin().equals(pin))
                .toList();
        if (scheme.reservoir(pin.net())) {
            unless(own.isEmpty() && box.plan().tanks().containsKey(pin), () -> what + " has no reservoir");
            return;
        }
        unless(
                own.size() == 1 && joined(box.at(pin), own.get(0).corners(), pin),
                () -> what + " is not joined to its net");
    }

    private boolean joined(Point2D at, List<Point2D> corners, Pin pin) {
        Point2D first = corners.get(0);
        Point2D last = corners.get(corners.size() - 1);
        Point2D other = at.distance(first) < NEAR ? last : first;
        boolean begun = at.distance(first) < NEAR || at.distance(last) < NEAR;
        return begun
                && sheet.tags().stream()
                        .filter(tag -> tag.net().name().equals(pin.net()))
                        .anyMatch(tag -> outer(tag.area()).contains(other));
    }

    private void straight(Sheet.Wire wire) {
        for (int i = 1; i < wire.corners().size(); i++) {
            Point2D a = wire.corners().get(i - 1);
            Point2D b = wire.corners().get(i);
            unless(
                    Math.abs(a.getX() - b.getX()) < NEAR || Math.abs(a.getY() - b.getY()) < NEAR,
                    () -> wire + " is neither level nor upright");
        }
    }

    private static Rectangle2D inner(Rectangle2D area) {
        return grown(area, -INSIDE);
    }

    private static Rectangle2D outer(Rectangle2D area) {
        return grown(area, NEAR);
    }

    private static Rectangle2D grown(Rectangle2D area, double by) {
        return new Rectangle2D.Double(
                area.getX() - by, area.getY() - by, area.getWidth() + 2 * by, area.getHeight() + 2 * by);
    }
}

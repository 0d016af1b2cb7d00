package hotidle.plots.scheme;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Counts where upright and level lines of different nets cross; where lines of one net lie on each other a crossing counts once. */
final class Crossings {

    private record Stretch(String net, Line2D line) {
        boolean level() {
            return Math.abs(line.getY1() - line.getY2()) < 1e-6;
        }
    }

    private record Crossing(String upright, String level, long x, long y) {}

    private Crossings() {}

    static long of(List<Sheet.Wire> wires) {
        List<Stretch> pieces = new ArrayList<>();
        for (Sheet.Wire wire : wires) {
            for (int i = 1; i < wire.corners().size(); i++) {
                Point2D a = wire.corners().get(i - 1);
                Point2D b = wire.corners().get(i);
                pieces.add(new Stretch(wire.pin().net(), new Line2D.Double(a, b)));
            }
        }
        Set<Crossing> found = new HashSet<>();
        for (Stretch one : pieces) {
            for (Stretch other : pieces) {
                if (one.level()
                        && !other.level()
                        && !one.net().equals(other.net())
                        && one.line().intersectsLine(other.line())) {
                    found.add(new Crossing(
                            other.net(),
                            one.net(),
                            Math.round(other.line().getX1() * 100),
                            Math.round(one.line().getY1() * 100)));
                }
            }
        }
        return found.size();
    }
}

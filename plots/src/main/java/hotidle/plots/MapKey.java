package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** What the colours, lines and letters of a map mean. */
record MapKey(MapChart chart) {

    /** Colours that occur, the two lines, then the letters. */
    Legend legend() {
        List<Legend.KeySample> entries = new ArrayList<>();
        double low = Double.NEGATIVE_INFINITY;
        for (HeadroomShade shade : HeadroomShade.all(chart.close())) {
            double from = low;
            if (any(headroom -> headroom >= from && headroom < shade.below() && Double.isFinite(headroom))) {
                entries.add(new Legend.KeySample(
                        shade.text(),
                        (g, box) -> MapDrawing.ground(g, middle(from, shade.below()), chart.close(), box)));
            }
            low = shade.below();
        }
        if (any(headroom -> headroom == Double.NEGATIVE_INFINITY)) {
            entries.add(new Legend.KeySample(
                    "metal touches: fails, by how much is not known",
                    (g, box) -> MapDrawing.ground(g, Double.NEGATIVE_INFINITY, chart.close(), box)));
        }
        if (any(headroom -> Double.isNaN(headroom))) {
            entries.add(new Legend.KeySample(
                    "? not known: no steady state found",
                    (g, box) -> MapDrawing.ground(g, Double.NaN, chart.close(), box)));
        }
        entries.add(
                crossed(0)
                        ? new Legend.KeySample(
                                "no headroom left", (g, box) -> line(g, box, MapDrawing.ZERO, Color.BLACK))
                        : new Legend.KeySample(noLine(), (g, box) -> {}));
        if (crossed(chart.close())) {
            entries.add(new Legend.KeySample(
                    Style.number(chart.close()) + " % headroom",
                    (g, box) -> line(g, box, MapDrawing.CLOSE, Style.INK)));
        }
        if (chart.openSomewhere()) {
            boolean all = chart.openEverywhere();
            entries.add(new Legend.KeySample(
                    "of some other limit it is not known" + (all ? " at any point" : " there")
                            + " whether it holds: left out",
                    (g, box) -> letter(g, box, all ? "" : MapDrawing.OPEN)));
        }
        chart.key()
                .forEach((letter, meaning) ->
                        entries.add(new Legend.KeySample(meaning, (g, box) -> letter(g, box, letter))));
        return new Legend(entries);
    }

    private static void letter(Graphics2D g, Rectangle2D box, String letter) {
        g.setFont(Style.LABEL);
        g.setPaint(Color.BLACK);
        g.drawString(letter, (float) box.getCenterX() + 4, (float) box.getMaxY() - 1);
    }

    private boolean crossed(double level) {
        return !MapDrawing.lines(chart, point -> point, level).isEmpty();
    }

    private String noLine() {
        if (!any(headroom -> headroom >= 0)) {
            return any(headroom -> headroom < 0) ? "no line of no headroom: no point shown holds" : "nothing is known";
        }
        return any(headroom -> headroom < 0)
                ? "no line of no headroom: not enough points are known"
                : "no line of no headroom: no point shown fails";
    }

    private boolean any(java.util.function.DoublePredicate holds) {
        return chart.cells().stream()
                .flatMap(List::stream)
                .mapToDouble(MapChart.Tile::headroom)
                .anyMatch(holds);
    }

    private static double middle(double low, double high) {
        return Double.isInfinite(low) ? high - 1 : Double.isInfinite(high) ? low + 1 : (low + high) / 2;
    }

    private static void line(Graphics2D g, Rectangle2D box, BasicStroke stroke, Color ink) {
        g.setStroke(stroke);
        g.setPaint(ink);
        g.draw(new Line2D.Double(box.getMinX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
    }
}

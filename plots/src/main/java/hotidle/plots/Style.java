package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.math.BigDecimal;
import java.math.MathContext;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.XYDataset;

/** What both charts have in common: fonts, axes, grid, numbers in words. No font is below 12 px. */
final class Style {
    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 16);
    static final Font AXIS = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    static final Font SMALL = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    static final Font LABEL = new Font(Font.SANS_SERIF, Font.BOLD, 12);
    static final Color INK = new Color(0x33, 0x33, 0x33);
    static final Color GRID = new Color(0xdd, 0xdd, 0xdd);
    static final Color PLATE = new Color(255, 255, 255, 215);
    static final BasicStroke HAIRLINE = new BasicStroke(0.8f);
    static final BasicStroke THIN_DASHED =
            new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {6, 4}, 0);
    static final String SPEED_AXIS = "engine speed [rpm]";

    /** A chart lower than this has no room for what stays the same (chosen) [px]. */
    private static final double LOW = 170;

    /** Between a title and both edges [px]. */
    private static final double BESIDE_TITLE = 10;

    /** Digits to which a computed number is told on a chart (chosen). */
    private static final MathContext KNOWN = new MathContext(3);

    private static final double LEGEND_LEFT = 22;
    private static final double LEGEND_RIGHT = 12;

    /** Left free at both ends of the speed axis, so that marks there are whole. */
    static final double MARGIN = 0.02;

    static {
        // Otherwise turned text becomes outlines, which an SVG reader can neither search nor copy.
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private Style() {}

    /** A bare chart on the shared scale; its legend is drawn by {@link Legend}. */
    static JFreeChart chart(
            String title, String subtitle, XYDataset data, XYItemRenderer renderer, Axes scale, String axis) {
        double margin = MARGIN * (scale.high() - scale.low());
        NumberAxis speed = axis(SPEED_AXIS, scale.low() - margin, scale.high() + margin);
        speed.setTickLabelInsets(new RectangleInsets(2, 12, 2, 12));
        NumberAxis upright = axis(axis, 0, scale.tops().get(axis));
        upright.setTickLabelInsets(new RectangleInsets(7, 4, 7, 4));
        XYPlot plot = new XYPlot(data, speed, upright, renderer);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(GRID);
        plot.setRangeGridlinePaint(GRID);
        plot.setDomainGridlineStroke(HAIRLINE);
        plot.setRangeGridlineStroke(HAIRLINE);
        plot.setOutlinePaint(INK);
        plot.setOutlineStroke(HAIRLINE);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        plot.setInsets(new RectangleInsets(4, 4, 2, 18));
        JFreeChart chart = new JFreeChart(null, TITLE, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        chart.setTitle(title(title, TITLE, Color.BLACK));
        if (!subtitle.isEmpty()) {
            chart.addSubtitle(title(subtitle, SMALL, INK));
        }
        return chart;
    }

    private static TextTitle title(String text, Font font, Color ink) {
        TextTitle title = new TextTitle(text, font);
        title.setPaint(ink);
        title.setPadding(1, BESIDE_TITLE, 1, BESIDE_TITLE);
        return title;
    }

    /** A second upright scale in another unit, on a page that is wide enough [px]. */
    static void other(XYPlot plot, Optional<OtherUnit> other, double width) {
        other.filter(unit -> width >= OtherUnit.ROOM).ifPresent(unit -> {
            NumberAxis second = axis(
                    "[" + unit.unit() + "]",
                    unit.factor() * plot.getRangeAxis().getLowerBound(),
                    unit.factor() * plot.getRangeAxis().getUpperBound());
            plot.setRangeAxis(1, second);
            plot.setRangeAxisLocation(1, AxisLocation.BOTTOM_OR_RIGHT);
        });
    }

    /** Draws a chart with its legend below it; a chart that would be too low goes without what stays the same. */
    static void paint(Graphics2D g, Rectangle2D area, JFreeChart chart, Legend legend) {
        titles(chart)
                .forEach(title -> title.setText(String.join(
                        "\n",
                        lines(
                                title.getText(),
                                g.getFontMetrics(title.getFont()),
                                area.getWidth() - 2 * BESIDE_TITLE - 2))));
        Legend whole = complete(g, area, chart, legend);
        if (upper(area, whole.height(g, legendWidth(area))).getHeight() < LOW) {
            chart.clearSubtitles();
        }
        // in a lower chart a text may have found its place after all
        callouts(chart).forEach(one -> one.leave(whole));
        chart.draw(g, upper(area, whole.height(g, legendWidth(area))));
        paint(g, area, whole);
    }

    private static List<TextTitle> titles(JFreeChart chart) {
        return Stream.concat(Stream.of(chart.getTitle()), chart.getSubtitles().stream())
                .filter(TextTitle.class::isInstance)
                .map(TextTitle.class::cast)
                .toList();
    }

    /** As few lines as can be, about as long as each other, none broken between a number and its unit or within a name. */
    static List<String> lines(String text, FontMetrics font, double width) {
        String whole = text.replaceAll("(?<=[0-9]) (?=[^0-9])", "\u00a0");
        List<String> lines = Legend.broken(whole, font, width);
        List<String> narrower = lines;
        for (double less = width - 1; narrower.size() == lines.size() && lines.size() > 1; less--) {
            lines = narrower;
            narrower = Legend.broken(whole, font, less);
        }
        return lines.stream().map(line -> line.replace('\u00a0', ' ')).toList();
    }

    /** A legend with the texts too that find no room in the chart above it: each that is added leaves less room there. */
    static Legend complete(Graphics2D g, Rectangle2D area, JFreeChart chart, Legend legend) {
        Legend whole = legend;
        List<Legend.KeySample> without = withoutRoom(chart, upper(area, whole.height(g, legendWidth(area))));
        while (!whole.tells(without)) {
            whole = whole.with(without);
            without = withoutRoom(chart, upper(area, whole.height(g, legendWidth(area))));
        }
        return whole;
    }

    private static List<Callouts> callouts(JFreeChart chart) {
        List<Callouts> texts = new ArrayList<>();
        for (Object one : chart.getXYPlot().getAnnotations()) {
            if (one instanceof Callouts callouts && !callouts.texts().isEmpty()) {
                texts.add(callouts);
            }
        }
        return texts;
    }

    /** Found by drawing the chart where nobody sees it: only then is it known how much of the area its axes take. */
    private static List<Legend.KeySample> withoutRoom(JFreeChart chart, Rectangle2D area) {
        XYPlot plot = chart.getXYPlot();
        List<Callouts> texts = callouts(chart);
        if (texts.isEmpty()) {
            return List.of();
        }
        Graphics2D unseen = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        ChartRenderingInfo info = new ChartRenderingInfo();
        chart.draw(unseen, area, info);
        Rectangle2D within = info.getPlotInfo().getDataArea();
        List<Legend.KeySample> without = within.isEmpty()
                ? List.of()
                : texts.stream()
                        .flatMap(one -> one.withoutRoom(unseen, plot, within).stream())
                        .toList();
        unseen.dispose();
        return without;
    }

    /** Draws a legend at the lower edge. */
    static void paint(Graphics2D g, Rectangle2D area, Legend legend) {
        double width = legendWidth(area);
        double height = legend.height(g, width);
        legend.paint(g, new Rectangle2D.Double(area.getMinX() + LEGEND_LEFT, area.getMaxY() - height, width, height));
    }

    /** Width of a legend below a chart [px]. */
    static double legendWidth(Rectangle2D area) {
        return area.getWidth() - LEGEND_LEFT - LEGEND_RIGHT;
    }

    /** What a legend of this height leaves for the chart. */
    static Rectangle2D upper(Rectangle2D area, double legend) {
        return new Rectangle2D.Double(area.getMinX(), area.getMinY(), area.getWidth(), area.getHeight() - legend);
    }

    /** A number without needless digits. */
    static String number(double value) {
        return plain().format(value);
    }

    /** A computed number, as far as it is known. */
    static String known(double value) {
        return number(new BigDecimal(value).round(KNOWN).doubleValue());
    }

    /** A speed with its unit. */
    static String rpm(double speed) {
        return Math.round(speed) + " rpm";
    }

    /** What a legend adds where states are unsolved; nothing where none is. */
    static String unsolved(long count, String how) {
        return count == 0 ? "" : "; unsolved at " + speeds(count) + " (" + how + ")";
    }

    static String speeds(long count) {
        return count + (count == 1 ? " speed" : " speeds");
    }

    private static NumberAxis axis(String title, double low, double high) {
        NumberAxis axis = new NumberAxis(title);
        axis.setRange(low, high);
        axis.setNumberFormatOverride(plain());
        axis.setLabelFont(AXIS);
        axis.setTickLabelFont(SMALL);
        axis.setLabelPaint(Color.BLACK);
        axis.setTickLabelPaint(Color.BLACK);
        axis.setAxisLinePaint(INK);
        return axis;
    }

    private static DecimalFormat plain() {
        return new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT));
    }

    /** As many decimals as neighbouring ticks need to differ. */
    static DecimalFormat format(double span) {
        int decimals = (int) Math.max(0, Math.min(12, 2 - Math.floor(Math.log10(span))));
        String pattern = span < 1e-5 ? "0.##E0" : "0." + "#".repeat(Math.max(decimals, 1));
        return new DecimalFormat(pattern, DecimalFormatSymbols.getInstance(Locale.ROOT));
    }
}

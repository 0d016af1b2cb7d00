package hotidle.plots;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Draws an oil chart. Bands that are too thin for their name go into the legend, or all into the key of the picture.
 *
 * @param chart what to draw
 * @param scale of the picture
 */
record OilDrawing(OilChart chart, Axes scale) {
    /** Data sets of the plot: tops of the bands, then the pump's geometric delivery. */
    static final int BANDS = 0;

    static final int DELIVERY = 1;
    static final String DELIVERY_NAME = "displacement × speed";

    private static final BasicStroke THIN = new BasicStroke(1.6f);

    void paint(Graphics2D g, Rectangle2D area) {
        Style.paint(g, area, drawn(area.getWidth()), legend(named(g, area)));
    }

    /** The chart without its legend, on a page so wide [px]. */
    JFreeChart drawn(double width) {
        JFreeChart drawn = Style.chart(
                chart.title(), chart.subtitle(), tops(), new BandRenderer(chart, looks()), scale, chart.axis());
        Style.other(drawn.getXYPlot(), chart.other(), width);
        XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, false);
        line.setSeriesPaint(0, Color.BLACK);
        line.setSeriesStroke(0, THIN);
        drawn.getXYPlot().setDataset(DELIVERY, delivery());
        drawn.getXYPlot().setRenderer(DELIVERY, line);
        return drawn;
    }

    /** Looks of the bands; the same name looks the same in all charts of the picture. */
    List<BandLook> looks() {
        return chart.bands().stream()
                .map(band -> BandLook.ALL.get(scale.bands().indexOf(band.name()) % BandLook.ALL.size()))
                .toList();
    }

    /** What the bands of all charts of a picture mean. */
    static Legend key(List<String> bands) {
        List<Legend.KeySample> entries = new ArrayList<>();
        entries.add(delivered());
        for (int i = bands.size() - 1; i >= 0; i--) {
            entries.add(new Legend.KeySample(bands.get(i), BandLook.ALL.get(i)::paint));
        }
        return new Legend(entries);
    }

    /**
     * Whatever has to be said of any band and, where the picture has no key, the bands that are not named in the chart,
     * from the top down.
     */
    Legend legend(Set<String> named) {
        List<Legend.KeySample> entries = new ArrayList<>();
        if (!scale.key()) {
            entries.add(delivered());
        }
        for (int i = chart.bands().size() - 1; i >= 0; i--) {
            OilChart.FlowBand band = chart.bands().get(i);
            List<String> told = chart.told(i, scale.tops().get(chart.axis()));
            boolean explained = scale.key() && told.size() == 1;
            if (band.backward() > 0 || (!explained && !named.contains(band.name()))) {
                entries.add(new Legend.KeySample(text(band, String.join(", ", told)), looks().get(i)::paint));
            }
        }
        long gaps = IntStream.range(0, chart.speeds().size())
                .filter(i -> !chart.solved(i))
                .count();
        if (gaps > 0) {
            entries.add(new Legend.KeySample("unsolved at " + Style.speeds(gaps) + " (gaps)", (g, box) -> {}));
        }
        return new Legend(entries);
    }

    private static Legend.KeySample delivered() {
        return new Legend.KeySample(DELIVERY_NAME, (g, box) -> {
            g.setPaint(Color.BLACK);
            g.setStroke(THIN);
            g.draw(new Line2D.Double(box.getMinX(), box.getCenterY(), box.getMaxX(), box.getCenterY()));
        });
    }

    private static String text(OilChart.FlowBand band, String told) {
        return band.backward() == 0
                ? told
                : told + " (flows backward at " + Style.speeds(band.backward()) + ", not shown)";
    }

    private XYSeriesCollection tops() {
        XYSeriesCollection data = new XYSeriesCollection();
        for (int band = 0; band < chart.bands().size(); band++) {
            XYSeries series = new XYSeries(chart.bands().get(band).name(), false);
            for (int i = 0; i < chart.speeds().size(); i++) {
                series.add(chart.speeds().get(i).doubleValue(), chart.top(band, i));
            }
            data.addSeries(series);
        }
        return data;
    }

    private XYSeriesCollection delivery() {
        XYSeries series = new XYSeries(DELIVERY_NAME, false);
        series.add(scale.low(), chart.displacement() * scale.low());
        series.add(scale.high(), chart.displacement() * scale.high());
        return new XYSeriesCollection(series);
    }

    /** Names that fit into their bands: a shorter legend leaves more room, so it is measured until none is added. */
    private Set<String> named(Graphics2D g, Rectangle2D area) {
        Set<String> before;
        Set<String> named = Set.of();
        do {
            before = named;
            named = fitting(g, area, legend(before));
        } while (named.size() > before.size());
        return named;
    }

    private Set<String> fitting(Graphics2D g, Rectangle2D area, Legend legend) {
        double height = legend.height(g, Style.legendWidth(area));
        JFreeChart trial = drawn(area.getWidth());
        ChartRenderingInfo info = new ChartRenderingInfo();
        Graphics2D scratch = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        trial.draw(scratch, Style.upper(area, height), info);
        scratch.dispose();
        XYPlot plot = trial.getXYPlot();
        BandRenderer renderer = (BandRenderer) plot.getRenderer();
        Rectangle2D data = info.getPlotInfo().getDataArea();
        return IntStream.range(0, chart.bands().size())
                .filter(band -> renderer.place(g, data, plot.getDomainAxis(), plot.getRangeAxis(), band)
                        .isPresent())
                .mapToObj(band -> chart.bands().get(band).name())
                .collect(Collectors.toSet());
    }
}

package hotidle.plots;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where the oil of one build goes: flows stacked on each other against engine speed.
 *
 * <p>A speed at which any band is NaN is unsolved and leaves a gap. A flow below nought cannot be stacked; it counts as
 * none, and the legend says at how many speeds that was so. The scale is that of what the unit takes: a regulator sends back many times
 * as much, which would press all the rest into a strip. Such a band is cut where the scale ends, and a text says how far it goes on.
 *
 * @param title        names the build
 * @param subtitle     circuit, duty, temperature, where the data come from; may be empty
 * @param unit         of all flows, as it is to be read: {@code L/min}, {@code gpm}
 * @param speeds       rising [rpm]
 * @param bands        from the bottom up
 * @param displacement geometric delivery of the pump for each turn of the engine [display unit of flow per rpm]
 * @param other        a second unit of the upright axis, where there is room for it
 */
public record OilChart(
        String title,
        String subtitle,
        String unit,
        List<Double> speeds,
        List<FlowBand> bands,
        double displacement,
        Optional<OtherUnit> other)
        implements Chart {

    /** As many bands as there are looks. */
    public static final int MOST_BANDS = BandLook.ALL.size();

    private static final double ROOM_ABOVE = 1.03;

    /** Top of the scale over the top of the bands below the rest, with room for what is told of it (chosen). */
    private static final double ROOM_FOR_REST = 1.45;

    /**
     * Oil that goes one way.
     *
     * @param name  as it is to be read
     * @param flows at each speed [display unit], NaN where the state is unsolved
     * @param rest  whether it is what is left over: on top of the others, and no reason for a larger scale
     */
    public record FlowBand(String name, List<Double> flows, boolean rest) {
        /** Keeps a copy. */
        public FlowBand {
            flows = List.copyOf(flows);
        }

        /** That is shown whole. */
        public FlowBand(String name, List<Double> flows) {
            this(name, flows, false);
        }

        /** Speeds at which the flow is below nought. */
        long backward() {
            return flows.stream().filter(flow -> flow < 0).count();
        }
    }

    /** In one unit only. */
    public OilChart(
            String title,
            String subtitle,
            String unit,
            List<Double> speeds,
            List<FlowBand> bands,
            double displacement) {
        this(title, subtitle, unit, speeds, bands, displacement, Optional.empty());
    }

    /** Checks lengths, names and the displacement. */
    public OilChart {
        speeds = List.copyOf(speeds);
        bands = List.copyOf(bands);
        Require.speeds("oil chart '" + title + "'", speeds);
        Require.that(
                !bands.isEmpty() && bands.size() <= MOST_BANDS,
                "an oil chart shows 1 to " + MOST_BANDS + " bands, not " + bands.size());
        Require.distinct("bands", bands.stream().map(FlowBand::name).toList());
        for (FlowBand band : bands.subList(0, bands.size() - 1)) {
            Require.that(!band.rest(), "band '" + band.name() + "' is the rest, but not on top of the others");
        }
        for (FlowBand band : bands) {
            Require.that(
                    band.flows().size() == speeds.size(),
                    "band '" + band.name() + "' has " + band.flows().size() + " flows at " + speeds.size() + " speeds");
        }
        Require.that(
                displacement >= 0 && Double.isFinite(displacement),
                "displacement is " + displacement + " " + unit + " per rpm; it must be finite and not negative");
    }

    /** Title of the upright axis. */
    public String axis() {
        return "flow [" + unit + "]";
    }

    /** Whether all flows are known at the speed of this number. */
    boolean solved(int i) {
        return bands.stream().allMatch(band -> Double.isFinite(band.flows().get(i)));
    }

    /** Top of the band of this number at the speed of that number [display unit]; NaN in a gap; -1 is the ground. */
    double top(int band, int i) {
        return solved(i)
                ? bands.subList(0, band + 1).stream()
                        .mapToDouble(below -> Math.max(0, below.flows().get(i)))
                        .sum()
                : Double.NaN;
    }

    @Override
    public Axes scale() {
        double high = speeds.get(speeds.size() - 1);
        double whole = ROOM_ABOVE * Math.max(displacement * high, highest(bands.size() - 1));
        double taken = highest((int) bands.stream().filter(band -> !band.rest()).count() - 1);
        double top = taken > 0 ? Math.min(whole, ROOM_FOR_REST * taken) : whole;
        return new Axes(
                speeds.get(0),
                high,
                Map.of(axis(), top > 0 ? top : 1),
                bands.stream().map(FlowBand::name).toList(),
                false);
    }

    /** Highest top of the band of this number where it is known [display unit], at least nought. */
    private double highest(int band) {
        return IntStream.range(0, speeds.size())
                .mapToDouble(i -> top(band, i))
                .filter(Double::isFinite)
                .reduce(0, Math::max);
    }

    /**
     * What is written in the band of this number, in lines: its name, and how far it goes on where a scale ends below its top.
     *
     * @param end upper end of the scale [display unit]
     */
    List<String> told(int band, double end) {
        FlowBand one = bands.get(band);
        if (!one.rest() || highest(band) <= end) {
            return List.of(one.name());
        }
        int most = IntStream.range(0, speeds.size())
                .filter(this::solved)
                .boxed()
                .max(Comparator.comparingDouble(i -> one.flows().get(i)))
                .orElseThrow();
        return List.of(
                one.name(),
                "up to " + Style.known(one.flows().get(most)) + " " + unit + " at " + Style.rpm(speeds.get(most)));
    }

    /** The same at low speeds only, under another title. */
    OilChart upTo(double speed, String otherTitle) {
        int count = (int) speeds.stream().filter(one -> one <= speed).count();
        return new OilChart(
                otherTitle,
                "",
                unit,
                speeds.subList(0, count),
                bands.stream()
                        .map(band -> new FlowBand(band.name(), band.flows().subList(0, count), band.rest()))
                        .toList(),
                displacement,
                other);
    }

    @Override
    public void paint(Graphics2D graphics, Rectangle2D area, Axes scale) {
        new OilDrawing(this, scale).paint(graphics, area);
    }
}

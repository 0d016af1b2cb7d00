package hotidle.answer.draw;

import hotidle.plots.scheme.Pin;
import hotidle.plots.scheme.Scheme;
import hotidle.plots.scheme.SchemeNet;
import hotidle.plots.scheme.SchemePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What changes in a drawing from state to state: colours, widths, words. The drawing itself stays where it is laid out.
 *
 * @param high   at the dark end of the scale, in words; empty where no pressures are known
 * @param widest flow of the widest line, in words
 * @param signs  what dashes, drops and dials stand for
 */
public record DrawnLabels(
        String low,
        String high,
        String widest,
        String signs,
        List<NetLabel> nets,
        List<PartLabel> parts,
        List<LineFlow> lines) {

    /**
     * A node.
     *
     * @param share of the scale, 0 to 1
     * @param title all that is known of it, to be read aloud
     */
    public record NetLabel(String net, double share, String heading, List<String> below, String title) {}

    /**
     * A part.
     *
     * @param stands where its spool stands, 0 to 1
     * @param title  all that is known of it, to be read aloud
     */
    public record PartLabel(String part, List<String> below, double stands, String title) {}

    /**
     * A line between a part and a node.
     *
     * @param line  node, part and what the line is to the part
     * @param share of the widest line
     */
    public record LineFlow(String line, double share) {}

    /** Of a drawing's content. */
    public static DrawnLabels of(DrawnScheme drawn) {
        Scheme scheme = drawn.scheme();
        List<NetLabel> nets = new ArrayList<>();
        for (SchemeNet net : scheme.nets()) {
            nets.add(new NetLabel(
                    net.name(),
                    net.pressure(),
                    net.value().isEmpty() ? net.label() : net.label() + "  " + net.value(),
                    net.drips().stream().map(SchemeNet.Drip::text).toList(),
                    net.title()));
        }
        List<PartLabel> parts = new ArrayList<>();
        List<LineFlow> lines = new ArrayList<>();
        for (SchemePart part : scheme.parts()) {
            parts.add(new PartLabel(part.name(), part.lines(), part.stands(), part.title()));
            for (Pin pin : part.pins()) {
                String role = pin.role().name().toLowerCase(Locale.ROOT);
                lines.add(new LineFlow(pin.net() + " " + part.name() + " " + role, pin.flow()));
            }
        }
        return new DrawnLabels(
                scheme.scale().low(),
                scheme.scale().high(),
                scheme.scale().widest(),
                scheme.scale().signs(),
                nets,
                parts,
                lines);
    }
}

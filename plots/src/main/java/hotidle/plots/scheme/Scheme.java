package hotidle.plots.scheme;

import java.util.List;

/**
 * A circuit as it is to be drawn.
 *
 * @param title  heading of the sheet
 * @param notes  lines below the heading
 * @param frames names of the frames, in the order from the pump on
 * @param parts  boxes, in the order in which they are laid out where nothing else decides
 * @param nets   what they are joined by
 * @param scale  key of the colours
 */
public record Scheme(
        String title,
        List<String> notes,
        List<String> frames,
        List<SchemePart> parts,
        List<SchemeNet> nets,
        ScaleKey scale) {

    /**
     * Key of the colours.
     *
     * @param low   in words, at the light end; empty where no pressures are shown
     * @param high  in words, at the dark end
     * @param widest flow of the widest line, in words
     * @param marked what a shaded place stands for; empty where nothing is marked
     * @param signs  what dashes, drops and dials stand for
     */
    public record ScaleKey(String low, String high, String widest, String marked, String signs) {
        /** Whether pressures are shown. */
        public boolean shown() {
            return !high.isEmpty();
        }
    }

    public Scheme {
        notes = List.copyOf(notes);
        frames = List.copyOf(frames);
        parts = List.copyOf(parts);
        nets = List.copyOf(nets);
    }

    /** The net of a name. */
    SchemeNet net(String name) {
        return nets.stream().filter(net -> net.name().equals(name)).findFirst().orElseThrow();
    }

    /** Whether a net is drawn as a reservoir. */
    boolean reservoir(String net) {
        return net(net).look() == SchemeNet.Look.RESERVOIR;
    }
}

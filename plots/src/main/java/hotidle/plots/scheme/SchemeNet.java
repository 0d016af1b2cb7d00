package hotidle.plots.scheme;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A net of the drawing: a place of one pressure, written in a tag to which its lines run.
 *
 * @param name     of the net
 * @param label    what it is called in its tag: by the gauge port that sits on it, where there is one
 * @param frame    name of the frame that its tag stands in
 * @param look     how it is shown
 * @param pressure for the colour [share of the scale, 0 to 1]; NaN where not known
 * @param value    its pressure in words; empty where not known
 * @param was      what its pressure was, in words; empty where it is not marked
 * @param drips    leaks gathered at it; empty where there are none
 * @param widest   that may be written beside its name and below it
 * @param title    all that is known of it, for search and for reading aloud
 * @param changed  whether it is marked
 */
public record SchemeNet(
        String name,
        String label,
        String frame,
        Look look,
        double pressure,
        String value,
        String was,
        List<Drip> drips,
        Widest widest,
        String title,
        boolean changed) {

    /** How a net is shown. */
    public enum Look {
        /** A tag. */
        TAG,
        /** A tag with the symbol of a gauge. */
        GAUGE,
        /** The symbol of a reservoir at each line; it has no tag. */
        RESERVOIR
    }

    /**
     * A leak, or several gathered.
     *
     * @param of   what leaks; empty where several kinds are gathered
     * @param text in words
     * @param changed whether it is marked
     */
    public record Drip(Optional<Symbol> of, String text, boolean changed) {}

    /** What hangs below its name, line by line: what it was, then its leaks. */
    List<String> hanging() {
        List<String> lines = new ArrayList<>();
        if (!was.isEmpty()) {
            lines.add(was);
        }
        drips.forEach(drip -> lines.add(drip.text()));
        return lines;
    }

    public SchemeNet {
        drips = List.copyOf(drips);
    }
}

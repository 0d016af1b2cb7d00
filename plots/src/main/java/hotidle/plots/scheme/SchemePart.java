package hotidle.plots.scheme;

import java.util.List;

/**
 * A box of the drawing.
 *
 * @param name      of the part, its heading
 * @param symbol    that it shows
 * @param frame     name of the frame that it stands in
 * @param lines     what is written below its name
 * @param widest    that may be written there
 * @param title     all that is known of it, for search and for reading aloud
 * @param pins      where lines meet it
 * @param envelopes of a valve, from the free end to the spring's end; else empty
 * @param moves     whether it has a spool whose place is shown where it is known
 * @param stands    where its spool stands, 0 at the spring's rest to 1 at the far stop; NaN where not known
 * @param changed   whether it is marked
 */
public record SchemePart(
        String name,
        Symbol symbol,
        String frame,
        List<String> lines,
        Widest widest,
        String title,
        List<Pin> pins,
        List<Envelope> envelopes,
        boolean moves,
        double stands,
        boolean changed) {

    public SchemePart {
        lines = List.copyOf(lines);
        pins = List.copyOf(pins);
        envelopes = List.copyOf(envelopes);
    }

    /**
     * Whether a line leaves upwards: where oil goes out, and to a pilot pressure, which is made elsewhere or by the part itself; the
     * pressure that it is fed with comes from below as a pilot too.
     */
    boolean upwards(Pin pin) {
        return pin.role() == Pin.Role.OUT
                || (pin.role().pilot()
                        && pins.stream()
                                .noneMatch(other -> other.role() == Pin.Role.IN
                                        && other.net().equals(pin.net())));
    }
}

package hotidle.circuits.section;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.shape.Key;
import hotidle.circuits.shape.Shape;
import hotidle.transmission.Tap;
import java.util.List;

/** Where a gauge can be fitted: keys, and how taps are read. */
public final class TapSection {

    private TapSection() {}

    static final Shape TAP = new Shape(
            "tap",
            List.of(
                    Key.node("node", "whose pressure a gauge shows there"),
                    Key.text("port", "the port in the case, in your words"),
                    Key.text("between", "what lies between node and gauge, in your words")));

    /** All taps. */
    public static List<Tap> taps(Attributes file) {
        return file.groups("taps").values().stream()
                .filter(tap -> !tap.broken())
                .map(tap -> new Tap(tap.name(), tap.word("node"), tap.text("port"), tap.text("between")))
                .toList();
    }
}

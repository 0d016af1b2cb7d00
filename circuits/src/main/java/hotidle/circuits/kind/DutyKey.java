package hotidle.circuits.kind;

import hotidle.circuits.shape.Key;
import hotidle.circuits.text.Dimension;

/** What a duty, or other parts, put on a part; a part on its own asks for it by a key. */
public enum DutyKey {
    /** It carries a load on an oil film. */
    LOAD(Key.quantity("load", Dimension.FORCE, "load that it carries, side loads and weight together")
            .allowed("0 N", "1000000 N")
            .usual("10 N", "20000 N")),
    /** It turns. */
    SPEED(Key.quantity("speed", Dimension.SPEED, "speed at which it turns")
            .allowed("0 rpm", "20000 rpm")
            .usual("400 rpm", "7000 rpm")),
    /** It makes a pressure that it is asked for. */
    COMMAND(Key.quantity("command", Dimension.PRESSURE, "pilot pressure that it is asked for")
            .allowed("0 psi", "5000 psi")
            .usual("0 psi", "300 psi")),
    /** It can be locked up. */
    LOCKUP(Key.choice("lockup", "state of the lockup clutch", "off", "slipping", "on")
            .byDefault("off", "assumed")),
    /** A cable or a lever opens it with the throttle. */
    THROTTLE(Key.quantity("throttle", Dimension.RATIO, "how far the throttle is open: 0 % shut, 100 % full")
            .allowed("0 %", "100 %")),
    /** The engine's vacuum pulls at it. */
    VACUUM(Key.quantity("manifold-vacuum", Dimension.PRESSURE, "how far the engine's manifold stands below ambient")
            .allowed("0 psi", "1 bar")
            .usual("0 inHg", "25 inHg")),
    /** It turns with the output shaft. */
    OUTPUT_SPEED(Key.quantity("output-speed", Dimension.SPEED, "speed of the output shaft")
            .allowed("0 rpm", "20000 rpm")
            .usual("0 rpm", "6000 rpm"));

    private final Key key;

    DutyKey(Key key) {
        this.key = key;
    }

    /** The key by which it is asked for. */
    public Key key() {
        return key;
    }
}

package hotidle.plots.scheme;

import hotidle.plots.scheme.Envelope.Arrow;
import hotidle.plots.scheme.Pin.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Made circuits. */
final class Schemes {

    private Schemes() {}

    /** One box of each symbol in a row from a reservoir to a reservoir, with a spool valve whose pilot is its own outlet. */
    static Scheme ofEverySymbol(boolean known) {
        List<SchemePart> parts = new ArrayList<>();
        List<SchemeNet> nets = new ArrayList<>();
        nets.add(new SchemeNet("pan", "", SchemeNet.Look.RESERVOIR, 0, "", "", List.of(), "pan", false));
        Symbol[] all = Symbol.values();
        for (int i = 0; i < all.length; i++) {
            String from = i == 0 ? "pan" : "n" + i;
            String to = i == all.length - 1 ? "pan" : "n" + (i + 1);
            if (i > 0) {
                nets.add(new SchemeNet(
                        from,
                        i < 6 ? "pump" : "lubrication",
                        i % 2 == 0 ? SchemeNet.Look.GAUGE : SchemeNet.Look.TAG,
                        known ? i / 20.0 : Double.NaN,
                        known ? i + " psi" : "",
                        known && i == 4 ? "was 9 psi" : "",
                        i % 3 == 0 ? List.of(i + " leaks") : List.of(),
                        "net " + i,
                        i == 4));
            }
            parts.add(part(all[i], i < 6 ? "pump" : "lubrication", from, to, known));
        }
        return new Scheme(
                "every symbol",
                List.of("a note"),
                List.of("pump", "lubrication"),
                parts,
                nets,
                new Scheme.ScaleKey(known ? "0 psi" : "", known ? "20 psi" : "", "widest line 1 gpm", "dashed: pilot"));
    }

    private static SchemePart part(Symbol symbol, String frame, String from, String to, boolean known) {
        boolean valve = Stream.of(Symbol.SPOOL_VALVE, Symbol.SOLENOID_VALVE, Symbol.SIGNAL_VALVE)
                .anyMatch(symbol::equals);
        List<Envelope> envelopes = valve
                ? List.of(new Envelope(List.of(new Arrow(from, to))), new Envelope(List.of()))
                : symbol == Symbol.SELECTOR ? List.of(new Envelope(List.of(new Arrow(from, to)))) : List.of();
        List<Pin> pins = new ArrayList<>();
        pins.add(new Pin(from, Role.IN, known ? 0.5 : Double.NaN));
        pins.add(new Pin(to, Role.OUT, known ? 0.5 : Double.NaN));
        if (symbol == Symbol.SPOOL_VALVE) {
            pins.add(new Pin(to, Role.PILOT, Double.NaN));
            pins.add(new Pin(from, Role.PILOT_AT_SPRING, Double.NaN));
        }
        return new SchemePart(
                symbol.name().toLowerCase(java.util.Locale.ROOT),
                symbol,
                frame,
                known ? List.of("0.50 gpm") : List.of(),
                "title of " + symbol,
                pins,
                envelopes,
                known && symbol == Symbol.SPOOL_VALVE ? 0.7 : Double.NaN,
                symbol == Symbol.FILTER);
    }
}

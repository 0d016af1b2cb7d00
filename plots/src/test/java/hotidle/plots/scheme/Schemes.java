package hotidle.plots.scheme;

import hotidle.plots.scheme.Envelope.Arrow;
import hotidle.plots.scheme.Pin.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Made circuits. */
final class Schemes {

    private Schemes() {}

    /** One box of each symbol in a row from a reservoir to a reservoir, with a spool valve whose pilot is its own outlet. */
    static Scheme ofEverySymbol(boolean known) {
        List<SchemePart> parts = new ArrayList<>();
        List<SchemeNet> nets = new ArrayList<>();
        nets.add(new SchemeNet(
                "pan", "pan", "", SchemeNet.Look.RESERVOIR, 0, "", "", List.of(), Widest.NOTHING, "pan", false));
        Symbol[] all = Symbol.values();
        for (int i = 0; i < all.length; i++) {
            String from = i == 0 ? "pan" : "n" + i;
            String to = i == all.length - 1 ? "pan" : "n" + (i + 1);
            if (i > 0) {
                nets.add(new SchemeNet(
                        from,
                        i % 2 == 0 ? "port " + i + " (" + from + ")" : from,
                        i < 6 ? "pump" : "lubrication",
                        i % 2 == 0 ? SchemeNet.Look.GAUGE : SchemeNet.Look.TAG,
                        known ? i / 20.0 : Double.NaN,
                        known ? i + " psi" : "",
                        known && i == 4 ? "was 9 psi" : "",
                        drips(i),
                        new Widest("20 psi", i % 3 == 0 ? List.of("was 20 psi", "20 leaks") : List.of("was 20 psi")),
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
                new Scheme.ScaleKey(
                        known ? "0 psi" : "",
                        known ? "20 psi" : "",
                        "widest line 1 gpm",
                        known ? "changed from another" : "",
                        "dashed: pilot"));
    }

    /** Four clutches, each with its own net, and a net without one; nothing joins them. */
    static Scheme ofClutches() {
        List<SchemePart> parts = new ArrayList<>();
        List<SchemeNet> nets = new ArrayList<>();
        nets.add(new SchemeNet(
                "pan", "pan", "", SchemeNet.Look.RESERVOIR, 0, "", "", List.of(), Widest.NOTHING, "pan", false));
        for (String name : List.of("alone", "low", "direct with a long name", "reverse", "high")) {
            nets.add(new SchemeNet(
                    name,
                    name,
                    "clutches",
                    SchemeNet.Look.TAG,
                    Double.NaN,
                    "",
                    "",
                    drips(name.equals("reverse") ? 3 : 1),
                    Widest.NOTHING,
                    name,
                    false));
            if (!name.equals("alone")) {
                parts.add(new SchemePart(
                        name + " clutch",
                        Symbol.CLUTCH,
                        "clutches",
                        List.of(),
                        Widest.NOTHING,
                        name,
                        List.of(new Pin(name, Role.IN, Double.NaN)),
                        List.of(),
                        false,
                        Double.NaN,
                        false));
            }
        }
        return new Scheme(
                "clutches", List.of(), List.of("clutches"), parts, nets, new Scheme.ScaleKey("", "", "", "", ""));
    }

    private static List<SchemeNet.Drip> drips(int i) {
        List<Symbol> fits = List.of(Symbol.GAP, Symbol.SEALING_RING, Symbol.JOINT, Symbol.ACCUMULATOR);
        return i % 3 == 0
                ? List.of(new SchemeNet.Drip(
                        i == 3 ? Optional.empty() : Optional.of(fits.get(i / 3 % fits.size())), i + " leaks", i == 6))
                : List.of();
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
                new Widest("", List.of("20.00 gpm")),
                "title of " + symbol,
                pins,
                envelopes,
                symbol == Symbol.SPOOL_VALVE,
                known && symbol == Symbol.SPOOL_VALVE ? 0.7 : Double.NaN,
                symbol == Symbol.FILTER);
    }
}

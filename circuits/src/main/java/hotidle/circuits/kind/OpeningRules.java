package hotidle.circuits.kind;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Rules for the openings of one spool valve together: they share a circumference and a stroke. */
final class OpeningRules {

    private OpeningRules() {}

    /** Notes openings that do not fit round the bore, and openings through which oil passes straight to another node. */
    static void check(Attributes valve) {
        List<Attributes> openings = valve.groups("openings").values().stream()
                .filter(opening -> !opening.broken())
                .toList();
        openings.forEach(opening -> holes(opening, valve));
        openings.forEach(opening -> unreachable(opening, valve));
        for (int i = 0; i < openings.size(); i++) {
            crowded(openings.get(i), openings.subList(0, i));
            for (Attributes other : openings.subList(0, i)) {
                straightThrough(openings.get(i), other, valve);
                straightThrough(other, openings.get(i), valve);
            }
        }
    }

    private static void holes(Attributes opening, Attributes valve) {
        double bore = opening.numberIf("bore").orElse(valve.number("bore"));
        double taken =
                opening.count("holes") * opening.numberIf("hole-diameter").orElse(0);
        if (taken > Math.PI * bore) {
            opening.error(
                    ProblemCode.HOLES_OVERLAP,
                    "holes",
                    String.format(Locale.ROOT, "has holes that overlap: they take %.1f mm", taken * 1000),
                    String.format(Locale.ROOT, "the bore has %.1f mm of circumference", Math.PI * bore * 1000),
                    "look at number and diameter of the holes");
        }
    }

    /** An opening at whose edge the spool never comes. */
    private static void unreachable(Attributes opening, Attributes valve) {
        boolean up = opening.word("opens").equals("up");
        double edge = opening.number("edge");
        double low = valve.rows("stops").get(0).x();
        double high = valve.rows("stops").get(1).x();
        if (up ? edge >= high : edge <= low) {
            opening.error(
                    ProblemCode.OPENING_OUT_OF_REACH,
                    "edge",
                    String.format(
                            Locale.ROOT,
                            "never opens: it begins to at %.2f mm, and the spool stops at %.2f mm",
                            edge * 1000,
                            (up ? high : low) * 1000),
                    "an opening beyond the stops is a mistake in one of them",
                    "correct edge, opens or stops, or leave the opening out");
        }
    }

    /** Openings of one edge between the same nodes share one ring of the bore. */
    private static void crowded(Attributes opening, List<Attributes> before) {
        List<Attributes> same = new ArrayList<>(before.stream()
                .filter(other -> List.of("from", "to", "opens").stream()
                                .allMatch(key -> other.text(key).equals(opening.text(key)))
                        && other.number("edge") == opening.number("edge"))
                .toList());
        double share = opening.number("share")
                + same.stream().mapToDouble(other -> other.number("share")).sum();
        if (!same.isEmpty() && share > 1 + 1e-9) {
            opening.error(
                    ProblemCode.OPENINGS_SHARE_TOO_MUCH,
                    "share",
                    String.format(
                            Locale.ROOT,
                            "overlaps '%s': together they open %.0f %% of the circumference",
                            same.get(0).name(),
                            share * 100),
                    "openings of one edge between the same two nodes share one circumference",
                    "write the share of each, or leave one of them out");
        }
    }

    /** One opening into a node and one out of it that are both open in a part of the stroke. */
    private static void straightThrough(Attributes in, Attributes out, Attributes valve) {
        boolean through =
                in.text("to").equals(out.text("from")) && !in.text("from").equals(out.text("to"));
        boolean upAndDown = !in.text("opens").equals(out.text("opens"));
        if (!through || !upAndDown) {
            return;
        }
        Attributes up = in.text("opens").equals("up") ? in : out;
        Attributes down = up == in ? out : in;
        double from = Math.max(up.number("edge"), valve.rows("stops").get(0).x());
        double to = Math.min(down.number("edge"), valve.rows("stops").get(1).x());
        if (to > from) {
            out.warning(
                    ProblemCode.OPENINGS_OPEN_TOGETHER,
                    "edge",
                    String.format(
                            Locale.ROOT,
                            "overlaps '%s': both are open from %.2f to %.2f mm",
                            in.name(),
                            from * 1000,
                            to * 1000),
                    "there oil passes straight from " + in.text("from") + " through " + in.text("to") + " to "
                            + out.text("to"),
                    "leave it if it is meant");
        }
    }
}

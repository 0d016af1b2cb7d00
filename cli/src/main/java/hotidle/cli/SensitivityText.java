package hotidle.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hotidle.answer.StateJson;
import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.assess.Margin;
import hotidle.study.Judgement;
import hotidle.study.Sensitivity;
import hotidle.transmission.Adjustable;
import hotidle.transmission.WearSize;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What each size does to the margins of a build, in words and numbers.
 *
 * @param units of the user
 * @param build what was asked
 * @param found slopes
 */
record SensitivityText(Quantity.UnitSystem units, Adjustable build, Sensitivity found) {

    /** Rows of a table. */
    private static final int ROWS = 25;

    /** Less than this share of headroom in a step is not worth a row [-]. */
    private static final double WORTH = 5e-4;

    private static final double THOUSANDTH = 25.4e-6;
    private static final double HUNDREDTH = 1e-5;
    private static final double SQUARE_INCH = 0.0254 * 0.0254;

    /** The change of a size for which effects are told [m] or [m²]. */
    private double step(WearSize dimension) {
        boolean shop = units == Quantity.UnitSystem.SHOP;
        if (dimension.kind() == WearSize.Kind.AREA) {
            return shop ? 1e-4 * SQUARE_INCH : 1e-7;
        }
        return shop ? THOUSANDTH : HUNDREDTH;
    }

    private String stepWords(WearSize.Kind kind) {
        boolean shop = units == Quantity.UnitSystem.SHOP;
        return kind == WearSize.Kind.AREA ? shop ? "0.0001 in2" : "0.1 mm2" : shop ? "0.001 in" : "0.01 mm";
    }

    private double effect(Sensitivity.Rate rate) {
        return rate.slope() * step(rate.dimension());
    }

    private static String limit(Judgement.Key key) {
        return MarginWords.label(key.kind()) + " (" + key.part() + ") at " + key.duty();
    }

    /** The limit that a size moves most, counted in headroom. */
    private Optional<Sensitivity.Rate> strongest(WearSize dimension) {
        return found.rates().stream()
                .filter(rate -> rate.dimension().equals(dimension))
                .max(Comparator.comparingDouble(rate -> Math.abs(rate.slope())));
    }

    private static String points(double effect) {
        return String.format(Locale.ROOT, "%+.2f", 100 * effect);
    }

    private String now(WearSize dimension) {
        return dimension.kind() == WearSize.Kind.AREA
                ? Quantity.AREA.with(units, dimension.value())
                : dimension.value() < 1e-3
                        ? Quantity.FILM.with(units, dimension.value())
                        : Quantity.SIZE.with(units, dimension.value());
    }

    String table() {
        String name = build.unit().build();
        Optional<Judgement.Key> least = found.least();
        if (least.isEmpty()) {
            return Wrap.lines(name + ": no limit is judged or known, so nothing can be ranked." + leftOut(), "", "  ");
        }
        Margin margin = found.margins().get(least.get());
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(
                name + ": least headroom " + new MarginWords(units).headroom(margin) + ", " + limit(least.get())
                        + (margin.speed().isPresent()
                                ? ", at "
                                        + Quantity.SPEED.with(
                                                units, margin.speed().getAsDouble())
                                : "")
                        + ". A size made larger by " + stepWords(WearSize.Kind.LENGTH) + " (an area by "
                        + stepWords(WearSize.Kind.AREA) + ") changes it by so many points of headroom:",
                "",
                "  "));
        List<Sensitivity.Rate> ranked = found.of(least.get(), this::step);
        TextTable table = new TextTable(List.of("size", "now", "points", "moves most", "points there"));
        List<Sensitivity.Rate> shown = ranked.stream()
                .filter(rate -> Math.abs(effect(rate)) >= WORTH)
                .limit(ROWS)
                .toList();
        for (Sensitivity.Rate rate : shown) {
            Sensitivity.Rate most = strongest(rate.dimension()).orElseThrow();
            table.add(List.of(
                    rate.dimension().name(),
                    now(rate.dimension()),
                    points(effect(rate)) + (rate.oneSided() ? " *" : ""),
                    limit(most.key()),
                    points(effect(most)) + (most.oneSided() ? " *" : "")));
        }
        text.append(shown.isEmpty() ? "  No size moves it by as much as 0.05 points.\n" : table.aligned());
        if (shown.size() < ranked.size()) {
            double next = Math.abs(effect(ranked.get(shown.size())));
            text.append(String.format(
                    Locale.ROOT,
                    "  %d more sizes move it by %s points or less each.%n",
                    ranked.size() - shown.size(),
                    next < WORTH ? "0.05" : String.format(Locale.ROOT, "%.2f", 100 * next)));
        }
        if (shown.stream().anyMatch(rate -> rate.dimension().wears() && effect(rate) > 0)) {
            text.append(Wrap.lines(
                    "A plus is no reason to leave a worn fit: what leaks there feeds this one limit and costs others, see"
                            + " the last two columns. For the order of repairs ask leaks.",
                    "  ",
                    "    "));
        }
        boolean sided = found.rates().stream().anyMatch(Sensitivity.Rate::oneSided);
        if (sided) {
            text.append(Wrap.lines(
                    "* a stop takes hold or lets go next to this state: the slope holds to one side only.",
                    "  ",
                    "    "));
        }
        String left = leftOut();
        return text.append(left.isEmpty() ? "" : Wrap.lines(left.strip(), "  ", "    "))
                .toString();
    }

    private String leftOut() {
        String unsolved = found.unsolved().isEmpty()
                ? ""
                : " Not known at " + String.join(", ", found.unsolved()) + ": no steady state was found.";
        return (found.leftOut().isEmpty() ? "" : " Not counted: " + String.join("; ", found.leftOut()) + ".")
                + unsolved;
    }

    static String legend() {
        return "Headroom is what is there over what is needed, less 1; a point is one per cent of it. Effects are slopes at the"
                + " present size: they hold for changes that are small against the clearance, since leaks grow with its cube;"
                + " 'hotidle wear' solves larger ones. Film and unit load are taken at the engine speed at which they bind now."
                + " The set pressure stays; all sizes are diameters or gaps as measured cold.";
    }

    static List<String> head() {
        return List.of(
                "build", "size", "now", "unit", "limit", "part", "duty", "headroom", "change", "for", "to one side");
    }

    List<List<String>> rows() {
        return found.rates().stream().map(this::row).toList();
    }

    private List<String> row(Sensitivity.Rate rate) {
        Quantity quantity = rate.dimension().kind() == WearSize.Kind.AREA ? Quantity.AREA : Quantity.SIZE;
        return List.of(
                build.unit().build(),
                rate.dimension().name(),
                Digits.four(quantity.value(units, rate.dimension().value())),
                quantity.in(units).unit(),
                rate.key().kind().word(),
                rate.key().part(),
                rate.key().duty(),
                Digits.four(found.margins().get(rate.key()).headroom()),
                Digits.four(effect(rate)),
                stepWords(rate.dimension().kind()),
                rate.oneSided() ? "yes" : "no");
    }

    ObjectNode json() {
        ObjectNode node = StateJson.object();
        node.put("build", build.unit().build());
        node.set("least", found.least().map(this::json).orElse(null));
        ArrayNode rates = node.putArray("sensitivities");
        for (Sensitivity.Rate rate : found.rates()) {
            ObjectNode one = json(rate.key());
            one.put("size", rate.dimension().name());
            one.put("size_unit", rate.dimension().kind() == WearSize.Kind.AREA ? "m2" : "m");
            one.put("now", rate.dimension().value());
            one.put("headroom_by_size", rate.slope());
            one.put("one_sided", rate.oneSided());
            rates.add(one);
        }
        ArrayNode left = node.putArray("left_out");
        found.leftOut().forEach(left::add);
        ArrayNode unsolved = node.putArray("unsolved_duties");
        found.unsolved().forEach(unsolved::add);
        return node;
    }

    private ObjectNode json(Judgement.Key key) {
        ObjectNode node = StateJson.object();
        node.put("margin", key.kind().word());
        node.put("part", key.part());
        node.put("duty", key.duty());
        StateJson.putFinite(node, "headroom", found.margins().get(key).headroom());
        return node;
    }
}

package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.HeldLinePhrase;
import hotidle.answer.phrase.UnsolvedPhrase;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.result.Unsolved;
import hotidle.study.HeldLine;
import hotidle.study.HubOverSpeed;
import hotidle.study.Judgement;
import hotidle.transmission.DutyPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The margins of one build at one duty point, for readers. */
record DutyMargins(Quantity.UnitSystem units, Judgement judged) {

    /**
     * A limit as it is shown.
     *
     * @param label what it is called
     */
    record Row(String label, Margin margin) {}

    private MarginWords words() {
        return new MarginWords(units);
    }

    /**
     * The margins in the order in which they are shown. A clutch that holds and slips with one coefficient of friction has one
     * limit, not two that read alike.
     */
    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (Margin margin : judged.margins()) {
            int last = rows.size() - 1;
            boolean again = margin.kind() == Margin.Kind.APPLY_SLIDING
                    && figures(margin).equals(figures(rows.get(last).margin));
            if (again) {
                rows.set(last, new Row(MarginWords.APPLY_BOTH, rows.get(last).margin));
            } else {
                rows.add(new Row(MarginWords.label(margin) + speed(margin), margin));
            }
        }
        return rows;
    }

    /** The speed of a limit that is judged over the range of speeds. */
    private String speed(Margin margin) {
        return margin.speed().isPresent()
                ? " at " + Quantity.SPEED.with(units, margin.speed().getAsDouble())
                : "";
    }

    private List<String> figures(Margin margin) {
        return List.of(
                margin.part(),
                words().value(margin),
                (margin.kind().upper() ? "at most " : "") + words().needed(margin),
                words().headroom(margin),
                MarginWords.verdict(margin));
    }

    private List<String> cells(Row row) {
        List<String> cells = new ArrayList<>(List.of(row.label));
        cells.addAll(figures(row.margin));
        return cells;
    }

    /** What does not hold, and what holds with something to be said of it that a reader would ask. */
    private static boolean explained(Row row) {
        boolean odd = row.margin.kind() == Margin.Kind.REGULATION
                && !row.margin.notes().isEmpty();
        return odd || row.margin.verdict() != Margin.Verdict.HOLDS;
    }

    private String why(Row row) {
        return MarginWords.verdict(row.margin) + " " + row.label + " (" + row.margin.part() + "). "
                + words().why(judged, row.margin);
    }

    /** All of it; the heading begins with the name of the build where there are several. */
    String text(String build) {
        StringBuilder text = new StringBuilder();
        DutyPoint duty = judged.duty();
        text.append(Wrap.lines(
                build + OptionValues.titled(duty.name(), duty.about()) + ": "
                        + Quantity.SPEED.with(units, duty.speed()) + ", " + duty.range() + ", lockup "
                        + duty.lockup().name().toLowerCase(Locale.ROOT) + ", sump "
                        + Quantity.TEMPERATURE.with(units, duty.temperatures().get("sump"))
                        + ", engine torque " + Quantity.TORQUE.with(units, duty.engineTorque()) + line(),
                "",
                "  "));
        if (judged.outcome().state().isEmpty()) {
            return text.append(Wrap.lines(
                            why(judged.outcome().unsolved().orElseThrow()) + "; nothing is known here.", "  ", "  "))
                    .toString();
        }
        TextTable table = new TextTable(List.of("limit", "part", "is", "needed or allowed", "headroom", "verdict"));
        List<Row> rows = rows();
        rows.forEach(row -> table.add(cells(row)));
        text.append(table.aligned());
        rows.stream().filter(DutyMargins::explained).forEach(row -> text.append(Wrap.lines(why(row), "  ", "    ")));
        words().dragging(judged).forEach(line -> text.append(Wrap.lines("FAILS " + line, "  ", "    ")));
        override().ifPresent(line -> text.append(Wrap.lines(line, "  ", "    ")));
        judged.leaky()
                .forEach((clutch, below) -> text.append(Wrap.lines(
                        clutch + " is " + Quantity.PRESSURE.with(units, below)
                                + " below the line: more than 15 psi points to a leak in its circuit (common practice).",
                        "  ",
                        "    ")));
        unknown().ifPresent(line -> text.append(Wrap.lines(line, "  ", "    ")));
        hub().ifPresent(line -> text.append(Wrap.lines(line, "  ", "    ")));
        return text.toString();
    }

    /** A line far above what is commanded: the regulator cannot get rid of the oil, or does not move. */
    private Optional<String> override() {
        return judged.outcome()
                .state()
                .map(state -> Figures.of(judged.unit(), state))
                .filter(Figures::farAboveSet)
                .map(f -> "Here "
                        + new HeldLinePhrase(units).farAbove(f.line(), f.set().orElseThrow(), f.reliefOpen()));
    }

    private static String why(Unsolved unsolved) {
        return UnsolvedPhrase.why(unsolved.culprit(), unsolved.residual(), unsolved.tried());
    }

    /** Line pressure and what is commanded. */
    private String line() {
        return judged.outcome()
                .state()
                .map(state -> Figures.of(judged.unit(), state))
                .map(figures -> ", line " + Quantity.PRESSURE.with(units, figures.line())
                        + (figures.commanded()
                                ? " of the "
                                        + Quantity.PRESSURE.with(
                                                units, figures.set().orElseThrow()) + " commanded"
                                : ""))
                .orElse("");
    }

    private Optional<String> unknown() {
        List<Double> open = judged.hub().map(HubOverSpeed::unsolved).orElse(List.of());
        Optional<Unsolved> held = judged.held().flatMap(HeldLine::unsolved);
        if (held.isPresent()) {
            return Optional.of("Regulation is not known: " + why(held.get()) + ".");
        }
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of("At " + open.size() + " of the speeds searched no steady state was found, the first "
                        + Quantity.SPEED.with(units, open.get(0))
                        + ": film and load are not known there.");
    }

    /** Load, unit load, film and Trumpler's film where the film is thinnest. */
    private Optional<String> hub() {
        return judged.hub().flatMap(HubOverSpeed::thinnest).map(state -> {
            String hub = Roles.of(judged.unit()).hub().map(Placed::name).orElseThrow();
            return "Hub where its film is thinnest, " + Quantity.SPEED.with(units, speedOf(state))
                    + ": load "
                    + Quantity.FORCE.with(
                            units, state.measure(hub, Bushing.LOAD).orElseThrow()) + ", unit load "
                    + Quantity.PRESSURE.with(
                            units, state.measure(hub, Bushing.UNIT_LOAD).orElseThrow()) + ", film "
                    + Quantity.FILM.with(
                            units, state.measure(hub, Bushing.LEAST_FILM).orElseThrow())
                    + ". For comparison, not judged here: Trumpler's rule for ground journals asks for "
                    + Quantity.FILM.with(
                            units, state.measure(hub, Bushing.TRUMPLER_FILM).orElseThrow()) + ".";
        });
    }

    static double speedOf(Solution state) {
        return state.conditions().speed();
    }
}

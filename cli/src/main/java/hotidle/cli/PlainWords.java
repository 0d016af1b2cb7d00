package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.assess.Consumers;
import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.Roles;
import hotidle.network.Placed;
import hotidle.part.Bushing;
import hotidle.result.Solution;
import hotidle.study.Comparison;
import hotidle.study.Judgement;
import hotidle.study.SpeedSweep;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Says what a comparison shows, each sentence from its own numbers, at the circuit's first duty point. */
final class PlainWords {

    /** A change smaller than this share is called no change. */
    private static final double NOTHING = 0.02;

    /** Soon after the primary begins to bypass, the secondary is unloaded: up to this multiple of that speed. */
    private static final double UNLOADED_BY = 1.1;

    private final Comparison comparison;
    private final Quantity.UnitSystem units;
    private final DutyPoint duty;

    private PlainWords(Comparison comparison, Quantity.UnitSystem units) {
        this.comparison = comparison;
        this.units = units;
        duty = comparison.duties().get(0);
    }

    /** The sentences. */
    static List<String> of(Comparison comparison, Quantity.UnitSystem units) {
        PlainWords words = new PlainWords(comparison, units);
        List<String> lines = new ArrayList<>();
        List<Transmission> builds = comparison.units();
        for (int i = 0; i < builds.size(); i++) {
            lines.addAll(words.build(builds.get(i)));
            if (i > 0) {
                lines.addAll(words.change(builds.get(i - 1), builds.get(i)));
            }
        }
        lines.addAll(words.power());
        return lines;
    }

    private Comparison.Cell cell(Transmission unit) {
        return comparison.cell(unit.build(), duty.name());
    }

    private List<String> build(Transmission unit) {
        Comparison.Cell cell = cell(unit);
        Optional<Figures> found = cell.figures();
        if (found.isEmpty()) {
            return List.of(
                    unit.build() + ": no steady state was found at " + duty.name() + ", so nothing is known there.");
        }
        Figures f = found.get();
        List<String> lines = new ArrayList<>();
        String asked = Quantity.PRESSURE.with(units, f.set().orElse(Double.NaN));
        String got = Quantity.PRESSURE.with(units, f.line());
        if (!f.commanded()) {
            return List.of(
                    unit.build() + ": nothing is commanded; at " + duty.name() + " the line stands at " + got + ".");
        }
        String lube = Roles.of(unit).lube().isEmpty() ? "" : ", lubrication " + Quantity.FLOW.with(units, f.lube());
        String starved = starved(cell);
        if (f.regulated()) {
            String holds = override(f, units).isEmpty() ? " holds its " : " overshoots its ";
            lines.add(unit.build() + holds + asked + " at " + duty.name() + ": line " + got + lube + "."
                    + (starved.isEmpty() ? "" : " Even so too little (is, of needed) for " + starved + "."));
        } else {
            lines.add(unit.build() + " cannot hold its " + asked + " at " + duty.name() + ": line " + got
                    + (f.offSeat() ? "" : ", regulator on its seat") + (f.reliefOpen() ? ", relief valve open" : "")
                    + lube + "."
                    + (starved.isEmpty() ? "" : " Too little (is, of needed) for " + starved + "."));
        }
        overrides(unit).ifPresent(lines::add);
        lines.addAll(clutches(unit));
        lines.add(("  " + onset(cell.sweep()) + " " + film(worstFilm(unit))).stripTrailing());
        lines.addAll(shortages(unit));
        return lines;
    }

    /** Clutches that slip, and those that press where they should be off, at any duty point. */
    private List<String> clutches(Transmission unit) {
        MarginWords words = new MarginWords(units);
        List<String> lines = new ArrayList<>();
        for (Comparison.Cell cell : comparison.cells()) {
            if (!cell.unit().build().equals(unit.build())
                    || cell.outcome().state().isEmpty()) {
                continue;
            }
            Solution state = cell.outcome().state().get();
            Judgement.slipping(unit, cell.duty(), state).stream()
                    .filter(margin -> margin.kind() != Margin.Kind.APPLY_SLIDING)
                    .forEach(margin ->
                            lines.add("  At " + cell.duty().name() + " too little pressure on " + margin.part()
                                    + ": " + words.value(margin) + " where it needs " + words.needed(margin)
                                    + " with its capacity factor; it may slip."));
            words.dragging(unit, cell.duty(), Judgement.dragging(unit, cell.duty(), state))
                    .forEach(line -> lines.add("  " + line));
        }
        return lines;
    }

    /** Duty points at which the line stands far above what is commanded. */
    private Optional<String> overrides(Transmission unit) {
        List<String> found = comparison.cells().stream()
                .filter(cell -> cell.unit().build().equals(unit.build()))
                .flatMap(cell -> cell.figures().flatMap(f -> override(f, units)).stream()
                        .map(words -> "At " + cell.duty().name() + " " + words))
                .toList();
        return found.isEmpty() ? Optional.empty() : Optional.of("  " + String.join(" ", found));
    }

    /** What is said of a line far above the pressure commanded; empty where it is not. */
    static Optional<String> override(Figures f, Quantity.UnitSystem units) {
        if (!f.farAboveSet()) {
            return Optional.empty();
        }
        return Optional.of("the line stands at " + Quantity.PRESSURE.with(units, f.line()) + ", far above the "
                + Quantity.PRESSURE.with(units, f.set().orElseThrow())
                + " commanded: the regulator cannot let go of the oil, or sticks"
                + (f.reliefOpen() ? "; the relief valve holds the line." : "."));
    }

    /** What gets less than it needs at the duty's own speed, with both figures; empty where nothing does. */
    private String starved(Comparison.Cell cell) {
        MarginWords words = new MarginWords(units);
        return cell.outcome()
                .state()
                .map(state -> Consumers.starved(cell.unit(), cell.duty(), state).stream()
                        .map(margin -> margin.part() + " "
                                + MarginWords.quantity(margin).number(units, margin.value()) + " of "
                                + words.needed(margin))
                        .collect(Collectors.joining(", ")))
                .orElse("");
    }

    /** Duty points besides the first at which something gets less oil than it needs. */
    private List<String> shortages(Transmission unit) {
        return comparison.cells().stream()
                .filter(cell -> cell.unit().build().equals(unit.build())
                        && !cell.duty().name().equals(duty.name()))
                .filter(cell -> !starved(cell).isEmpty())
                .map(cell -> "  At " + cell.duty().name() + " too little (is, of needed) for " + starved(cell) + ".")
                .toList();
    }

    /** The cell whose oil leaves the hub its thinnest film over all speeds; one in metal contact before any other. */
    private Comparison.Cell worstFilm(Transmission unit) {
        String hub = Roles.of(unit).hub().map(Placed::name).orElse("");
        return comparison.cells().stream()
                .filter(cell -> cell.unit().build().equals(unit.build()))
                .min(Comparator.comparingDouble(cell ->
                        cell.sweep().contactSpeeds().isEmpty()
                                ? cell.sweep()
                                        .thinnestFilm()
                                        .map(state -> state.measure(hub, Bushing.LEAST_FILM)
                                                .orElseThrow())
                                        .orElse(Double.POSITIVE_INFINITY)
                                : -1))
                .orElseThrow();
    }

    private String onset(SpeedSweep sweep) {
        OptionalDouble onset = sweep.onset();
        double lowest = sweep.rising().get(0).conditions().speed();
        double highest =
                sweep.rising().get(sweep.rising().size() - 1).conditions().speed();
        if (onset.isEmpty()) {
            return "Regulates at no speed up to " + Quantity.SPEED.with(units, highest) + ".";
        }
        String from = onset.getAsDouble() <= lowest
                ? "Regulates from " + Quantity.SPEED.with(units, lowest) + " or below."
                : "Regulates from " + Quantity.SPEED.with(units, onset.getAsDouble()) + " up.";
        return from + starvedRange(sweep);
    }

    private String starvedRange(SpeedSweep sweep) {
        List<Double> speeds = sweep.states().stream()
                .filter(state ->
                        !Consumers.starved(sweep.unit(), sweep.duty(), state).isEmpty())
                .map(state -> state.conditions().speed())
                .toList();
        if (speeds.size() == 1) {
            return " Converter, cooler or lubrication short at " + Quantity.SPEED.with(units, speeds.get(0)) + ".";
        }
        return speeds.isEmpty()
                ? ""
                : " Converter, cooler or lubrication short from " + Quantity.SPEED.number(units, speeds.get(0)) + " to "
                        + Quantity.SPEED.with(units, speeds.get(speeds.size() - 1)) + ".";
    }

    private String film(Comparison.Cell cell) {
        List<Double> contact = cell.sweep().contactSpeeds();
        if (!contact.isEmpty()) {
            return "At the temperatures of " + cell.duty().name() + " the hub loses its film from "
                    + Quantity.SPEED.number(units, contact.get(0)) + " to "
                    + Quantity.SPEED.with(units, contact.get(contact.size() - 1)) + ": metal contact, film not known.";
        }
        Optional<Solution> thinnest = cell.sweep().thinnestFilm();
        if (thinnest.isEmpty()) {
            return "";
        }
        String hub = Roles.of(cell.unit()).hub().map(Placed::name).orElseThrow();
        double film = thinnest.get().measure(hub, Bushing.LEAST_FILM).orElseThrow();
        double permissible =
                thinnest.get().measure(hub, Bushing.PERMISSIBLE_FILM).orElseThrow();
        double at = thinnest.get().conditions().speed();
        return "Hub film thinnest at " + Quantity.SPEED.with(units, at) + ", "
                + cell.duty().name() + " temperatures: "
                + Quantity.FILM.with(units, film)
                + (film < permissible ? ", TOO THIN, " : ", ")
                + Quantity.FILM.number(units, permissible)
                + " is the least allowed (assumed)" + unloadNote(cell.sweep(), at) + ".";
    }

    private String unloadNote(SpeedSweep sweep, double at) {
        OptionalDouble unloading = sweep.unloading();
        OptionalDouble bypassing = sweep.bypassing();
        boolean above = unloading.isPresent()
                && bypassing.isPresent()
                && at >= unloading.getAsDouble()
                && at <= UNLOADED_BY * bypassing.getAsDouble();
        return above ? "; there the secondary stops balancing the primary's side load" : "";
    }

    private List<String> change(Transmission before, Transmission after) {
        Optional<Figures> was = cell(before).figures();
        Optional<Figures> is = cell(after).figures();
        if (was.isEmpty() || is.isEmpty()) {
            return List.of();
        }
        List<String> parts = new ArrayList<>();
        parts.add("line " + moved(Quantity.PRESSURE, was.get().line(), is.get().line()));
        if (is.get().commanded()) {
            change(
                            "set pressure",
                            Quantity.PRESSURE,
                            was.get().set().orElse(Double.NaN),
                            is.get().set().orElse(Double.NaN))
                    .ifPresent(parts::add);
        }
        double lostBefore = was.get().slip() + was.get().leak();
        change("oil lost", Quantity.FLOW, lostBefore, is.get().slip() + is.get().leak())
                .ifPresent(parts::add);
        if (!Roles.of(after).lube().isEmpty()) {
            change("lubrication", Quantity.FLOW, was.get().lube(), is.get().lube())
                    .ifPresent(parts::add);
        }
        String verdict = "";
        if (is.get().set().orElse(Double.NaN) > was.get().set().orElse(Double.NaN) * (1 + NOTHING)
                && !is.get().regulated()
                && is.get().line() < was.get().line() * (1 + NOTHING)) {
            verdict = " The pump has no more oil to give: a higher set pressure raises nothing here.";
        }
        return List.of("  Against " + before.build() + ", at " + duty.name() + ": " + String.join("; ", parts) + "."
                + verdict + onsetChange(cell(before).sweep(), cell(after).sweep()));
    }

    /** What changed, or nothing where it did not. */
    private Optional<String> change(String what, Quantity quantity, double was, double is) {
        return same(was, is) ? Optional.empty() : Optional.of(what + " " + moved(quantity, was, is));
    }

    private static boolean same(double was, double is) {
        return Math.abs(is - was) <= NOTHING * Math.max(Math.abs(was), Math.abs(is));
    }

    private String onsetChange(SpeedSweep before, SpeedSweep after) {
        OptionalDouble was = before.onset();
        OptionalDouble is = after.onset();
        if (was.isPresent() && is.isPresent() && Math.abs(is.getAsDouble() - was.getAsDouble()) * 60 >= 1) {
            double lowest = before.rising().get(0).conditions().speed();
            return " Onset of regulation moves from " + Quantity.SPEED.number(units, was.getAsDouble())
                    + (was.getAsDouble() <= lowest ? " or below" : "") + " to "
                    + Quantity.SPEED.with(units, is.getAsDouble())
                    + (is.getAsDouble() <= lowest ? " or below" : "") + ".";
        }
        if (was.isPresent() && is.isEmpty()) {
            return " It no longer regulates at any speed searched.";
        }
        return "";
    }

    private String moved(Quantity quantity, double was, double is) {
        if (same(was, is)) {
            boolean alike = quantity.number(units, was).equals(quantity.number(units, is));
            return alike
                    ? "stays at " + quantity.with(units, is)
                    : "hardly moves, " + quantity.number(units, was) + " to " + quantity.with(units, is);
        }
        return (is > was ? "rises from " : "falls from ") + quantity.number(units, was) + " to "
                + quantity.with(units, is);
    }

    /** Where the pump takes most power, for each build. */
    private List<String> power() {
        Optional<Comparison.Cell> most = comparison.cells().stream()
                .filter(cell -> cell.figures().isPresent())
                .max(Comparator.comparingDouble(
                        cell -> cell.figures().orElseThrow().pumpPower()));
        if (most.isEmpty() || !(most.get().figures().orElseThrow().pumpPower() > 0)) {
            return List.of();
        }
        String worst = most.get().duty().name();
        List<String> each = comparison.units().stream()
                .map(unit -> comparison.cell(unit.build(), worst))
                .map(cell -> cell.unit().build() + " "
                        + cell.figures()
                                .map(f -> Quantity.POWER.with(units, f.pumpPower()))
                                .orElse("not known"))
                .toList();
        return List.of("Power for the pump is greatest at " + worst + ": " + String.join(", ", each)
                + "; all of it ends as heat in the oil.");
    }
}

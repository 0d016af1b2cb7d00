package hotidle.study;

import hotidle.assess.Figures;
import hotidle.assess.Margin;
import hotidle.assess.StateFault;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Finds what fails in a comparison's cell. It judges the state, ratings included, and the hub's film over speed; whether the pump could
 * hold the line with less on it, and what oil the film's ends get, is asked by {@link JudgedBuild}.
 */
final class StateFaults {

    private StateFaults() {}

    /** All that fails in a cell, the gravest first; within a kind by what is left of what is needed. */
    static List<StateFault> of(Comparison.BuildAtDuty cell) {
        if (cell.assessed().isEmpty()) {
            return List.of(
                    new StateFault(StateFault.Kind.NOT_KNOWN, "", OptionalDouble.empty(), OptionalDouble.empty()));
        }
        List<StateFault> faults = new ArrayList<>();
        line(faults, cell.figures().orElseThrow());
        sorted(cell.slipping()).forEach(margin -> faults.add(of(StateFault.Kind.CLUTCH_SLIPS, margin)));
        cell.dragging()
                .forEach((clutch, pressure) ->
                        faults.add(new StateFault(StateFault.Kind.CLUTCH_DRAGS, clutch, pressure, 0)));
        over(cell.rated(), Margin.Kind.RATED_TORQUE)
                .ifPresent(margin -> faults.add(of(StateFault.Kind.OVER_TORQUE, margin)));
        over(cell.rated(), Margin.Kind.RATED_PRESSURE)
                .ifPresent(margin -> faults.add(of(StateFault.Kind.OVER_PRESSURE, margin)));
        sorted(cell.starved()).forEach(margin -> faults.add(of(StateFault.Kind.SHORT_OF_OIL, margin)));
        cell.hubFilm().filter(RunningFilm::fails).ifPresent(film -> faults.add(of(film)));
        RunningFilm.heaviest(cell.sweep()).ifPresent(load -> faults.add(load));
        return List.copyOf(faults);
    }

    /** The first to give of what bears more than its rating; the others would give after it. */
    private static Optional<Margin> over(List<Margin> rated, Margin.Kind kind) {
        return sorted(rated).stream()
                .filter(margin -> margin.kind() == kind && margin.verdict() == Margin.Verdict.FAILS)
                .findFirst();
    }

    private static List<Margin> sorted(List<Margin> margins) {
        return margins.stream()
                .sorted(Comparator.comparingDouble(Margin::headroom))
                .toList();
    }

    private static StateFault of(StateFault.Kind kind, Margin margin) {
        return new StateFault(kind, margin.part(), margin.value(), OptionalDouble.of(margin.needed()));
    }

    private static StateFault of(RunningFilm film) {
        return new StateFault(
                film.contact() ? StateFault.Kind.METAL_CONTACT : StateFault.Kind.FILM_THIN,
                film.hub(),
                film.film(),
                OptionalDouble.of(film.allowed()));
    }

    private static void line(List<StateFault> faults, Figures figures) {
        if (figures.low()) {
            faults.add(new StateFault(
                    StateFault.Kind.LINE_LOW, "", figures.line(), figures.set().orElseThrow()));
        } else if (figures.farAboveSet()) {
            faults.add(new StateFault(
                    StateFault.Kind.LINE_HIGH, "", figures.line(), figures.set().orElseThrow()));
        }
        if (figures.commanded() && figures.reliefOpen()) {
            faults.add(new StateFault(
                    StateFault.Kind.RELIEF_OPEN,
                    "",
                    figures.line(),
                    figures.set().orElseThrow()));
        }
        if (figures.inletStarved()) {
            faults.add(new StateFault(StateFault.Kind.INLET_STARVED, "", figures.filling(), 1));
        }
    }
}

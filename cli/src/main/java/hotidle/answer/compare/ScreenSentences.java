package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.CompareScreenPhrase;
import hotidle.assess.Figures;
import hotidle.assess.FiguresChange;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Comparison;
import hotidle.study.OnsetShift;
import hotidle.transmission.Transmission;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What is said under the first screen of a comparison, what fails before all else.
 *
 * @param duty the driving condition shown
 * @param made names of the builds that no file has
 */
record ScreenSentences(
        DescribedCircuit described, Comparison comparison, String duty, Quantity.UnitSystem units, List<String> made) {

    /** What is said where no command is at hand to be asked next. */
    List<String> onPaper() {
        List<String> all = new ArrayList<>(verdicts());
        all.addAll(places());
        comparison.units().forEach(unit -> against(unit).ifPresent(all::add));
        return all;
    }

    List<String> all() {
        List<String> all = new ArrayList<>(verdicts());
        all.addAll(places());
        comparison.units().stream()
                .filter(unit -> !comparison.failing(unit.build()).isEmpty())
                .findFirst()
                .ifPresent(unit -> all.add(next(unit.build())));
        comparison.units().forEach(unit -> against(unit).ifPresent(all::add));
        return all;
    }

    /** A build that came of jobs or another pressure is asked for as it was here. */
    private String next(String build) {
        return made.contains(build)
                ? CompareScreenPhrase.nextAfter(
                        described.standsOn(build, described.units().keySet()).orElse(build))
                : CompareScreenPhrase.next(build);
    }

    private List<String> verdicts() {
        CompareScreenPhrase phrase = new CompareScreenPhrase(units);
        List<String> all = new ArrayList<>();
        List<String> fail = new ArrayList<>();
        List<String> holding = new ArrayList<>();
        for (Transmission unit : comparison.units()) {
            List<Comparison.BuildAtDuty> failing = comparison.failing(unit.build());
            if (failing.isEmpty()) {
                holding.add(unit.build());
            } else {
                Comparison.BuildAtDuty first = failing.get(0);
                fail.add(phrase.fails(
                        unit.build(),
                        first.faults().get(0),
                        first.duty().name(),
                        names(failing.subList(1, failing.size()))));
            }
        }
        if (!fail.isEmpty()) {
            all.add(CompareScreenPhrase.fail(fail));
        }
        if (!holding.isEmpty()) {
            all.add(CompareScreenPhrase.holds(holding, comparison.duties().size()));
        }
        List<String> open = comparison.units().stream()
                .map(Transmission::build)
                .filter(build -> comparison.of(build).anyMatch(ScreenSentences::filmNotKnown))
                .toList();
        if (!open.isEmpty()) {
            all.add(CompareScreenPhrase.filmNotKnown(
                    open, open.size() == comparison.units().size()));
        }
        return all;
    }

    private static boolean filmNotKnown(Comparison.BuildAtDuty cell) {
        return cell.hubFilm().filter(film -> !film.fails() && !film.known()).isPresent();
    }

    private static List<String> names(List<Comparison.BuildAtDuty> cells) {
        return cells.stream().map(cell -> cell.duty().name()).toList();
    }

    /** Where the weakest link and the most pump power are. */
    private List<String> places() {
        List<String> all = new ArrayList<>();
        Map<String, List<String>> links = by(unit -> comparison
                .weakestLink(unit.build())
                .map(cell -> CompareScreenPhrase.place(
                        CompareFigures.link(cell.weakestLink().orElseThrow()),
                        cell.duty().name())));
        Map<String, List<String>> power = by(unit ->
                comparison.mostPower(unit.build()).map(cell -> cell.duty().name()));
        if (!links.isEmpty()) {
            all.add(CompareScreenPhrase.where(CompareScreenPhrase.LINK_PLACE, links));
        }
        if (!power.isEmpty()) {
            all.add(CompareScreenPhrase.where(CompareScreenPhrase.POWER_PLACE, power));
        }
        return all.isEmpty() ? all : List.of(String.join(" ", all));
    }

    private Map<String, List<String>> by(Function<Transmission, Optional<String>> place) {
        Map<String, List<String>> builds = new LinkedHashMap<>();
        for (Transmission unit : comparison.units()) {
            place.apply(unit)
                    .ifPresent(at -> builds.computeIfAbsent(at, name -> new ArrayList<>())
                            .add(unit.build()));
        }
        return builds;
    }

    /** A build against the one of those shown that it stands on. */
    private Optional<String> against(Transmission unit) {
        List<String> shown =
                comparison.units().stream().map(Transmission::build).toList();
        return described.standsOn(unit.build(), shown).flatMap(on -> {
            Comparison.BuildAtDuty was = comparison.cell(on, duty);
            Comparison.BuildAtDuty is = comparison.cell(unit.build(), duty);
            return was.figures().isEmpty() || is.figures().isEmpty()
                    ? Optional.empty()
                    : Optional.of(CompareScreenPhrase.against(unit.build(), on, changes(was, is)));
        });
    }

    private List<String> changes(Comparison.BuildAtDuty before, Comparison.BuildAtDuty after) {
        Figures was = before.figures().orElseThrow();
        Figures is = after.figures().orElseThrow();
        List<String> all = new ArrayList<>();
        moved(all, CompareScreenPhrase.GAUGE_MOVES, Quantity.PRESSURE, was.line(), is.line());
        moved(all, CompareScreenPhrase.LOST, Quantity.FLOW, was.lost(), is.lost());
        OnsetShift shift = after.onsetSince(before);
        CompareFigures figures = new CompareFigures(comparison, units);
        if (shift == OnsetShift.MOVED) {
            all.add(CompareScreenPhrase.holdsFrom(figures.holdsFrom(before), figures.holdsFrom(after)));
        } else if (shift == OnsetShift.LOST) {
            all.add(CompareScreenPhrase.HOLDS_NOWHERE);
        }
        if (new FiguresChange(was, is).noMoreOil()) {
            all.add(CompareScreenPhrase.NO_MORE_OIL);
        }
        return all.isEmpty() ? List.of(CompareScreenPhrase.NOTHING_MOVES) : all;
    }

    private void moved(List<String> all, String what, Quantity quantity, double was, double is) {
        if (!FiguresChange.same(was, is)) {
            all.add(new CompareScreenPhrase(units).moves(what, quantity, was, is));
        }
    }
}

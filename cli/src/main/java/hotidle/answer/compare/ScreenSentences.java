package hotidle.answer.compare;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.CompareScreenPhrase;
import hotidle.assess.Figures;
import hotidle.assess.FiguresChange;
import hotidle.circuits.DescribedCircuit;
import hotidle.study.Comparison;
import hotidle.study.OnsetShift;
import hotidle.transmission.Command;
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
        open().ifPresent(all::add);
        all.addAll(places());
        comparison.units().forEach(unit -> against(unit).ifPresent(all::add));
        return all;
    }

    /** @param unmeasured what sizes that nobody has measured would do, behind what fails */
    List<String> all(List<String> unmeasured) {
        List<String> all = new ArrayList<>(verdicts());
        all.addAll(unmeasured);
        List<String> against = comparison.units().stream()
                .flatMap(unit -> against(unit).stream())
                .toList();
        if (!made.isEmpty()) {
            all.add(nextAfter());
            all.addAll(against); // what was done here is what was asked
        }
        comparison.units().stream()
                .filter(unit ->
                        made.isEmpty() && !comparison.failing(unit.build()).isEmpty())
                .findFirst()
                .ifPresent(unit -> all.add(CompareScreenPhrase.next(unit.build())));
        open().ifPresent(all::add);
        setPressures().ifPresent(all::add);
        all.addAll(places());
        if (made.isEmpty()) {
            all.addAll(against);
        }
        return all;
    }

    /** Of the builds that no file has the last that stands on what was measured, or where no sheet was given the last. */
    private String asked() {
        return made.stream()
                .filter(name -> described.sheet().isPresent() && standsOn(name).equals(described.sheet()))
                .reduce((one, later) -> later)
                .orElse(made.get(made.size() - 1));
    }

    private Optional<String> standsOn(String build) {
        return described.standsOn(
                build,
                described.units().keySet().stream()
                        .filter(name -> !made.contains(name))
                        .toList());
    }

    /** What comes after jobs or another pressure: every limit where the build asked for holds here, else the jobs that keep them. */
    private String nextAfter() {
        String last = asked();
        if (comparison.failing(last).isEmpty()) {
            return CompareScreenPhrase.nextHolds(last);
        }
        String from = standsOn(last).orElse(last);
        double set = described.units().get(last).highestSet();
        boolean other = Math.abs(set - described.units().get(from).highestSet()) > Command.AGREE;
        String sheet = described.sheet().filter(from::equals).isPresent() ? CompareScreenPhrase.SAME_SHEET : "";
        return CompareScreenPhrase.nextJobs(from, sheet, other ? new CompareScreenPhrase(units).setTo(set) : "");
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
            all.add(
                    made.isEmpty()
                            ? phrase.holds(holding, comparison.duties().size(), hardest())
                            : phrase.holdsHere(holding, comparison.duties().size(), hardest()));
        }
        narrow(holding).ifPresent(all::add);
        return all;
    }

    /** Those of the builds that hold in which a limit holds only just. */
    private Optional<String> narrow(List<String> holding) {
        List<String> found = new ArrayList<>();
        for (String build : holding) {
            comparison
                    .narrowest(build)
                    .ifPresent(cell -> found.add(CompareScreenPhrase.narrow(
                            build, cell.narrow().orElseThrow(), cell.duty().name())));
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(CompareScreenPhrase.narrow(found));
    }

    /** Builds of which it is not known whether the hub film holds; empty where it is of all. */
    private Optional<String> open() {
        List<String> open = comparison.units().stream()
                .map(Transmission::build)
                .filter(build -> comparison.of(build).anyMatch(ScreenSentences::filmNotKnown))
                .toList();
        return open.isEmpty()
                ? Optional.empty()
                : Optional.of(CompareScreenPhrase.filmNotKnown(
                        open, open.size() == comparison.units().size()));
    }

    /** The highest engine torque of all driving conditions of all builds [N·m]. */
    private double hardest() {
        return comparison.cells().stream()
                .mapToDouble(cell -> cell.duty().engineTorque())
                .max()
                .orElse(0);
    }

    /** What units are set to; empty where as much is commanded at the condition shown. */
    private Optional<String> setPressures() {
        CompareScreenPhrase phrase = new CompareScreenPhrase(units);
        boolean less = comparison.units().stream()
                .anyMatch(unit -> comparison
                        .cell(unit.build(), duty)
                        .figures()
                        .filter(figures -> figures.set().orElse(unit.highestSet()) < unit.highestSet() - Command.AGREE)
                        .isPresent());
        return less
                ? Optional.of(phrase.setPressures(
                        duty,
                        comparison.units().stream()
                                .map(unit -> phrase.set(unit.build(), unit.highestSet()))
                                .toList()))
                : Optional.empty();
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
        if (!links.isEmpty()) {
            all.add(CompareScreenPhrase.where(CompareScreenPhrase.LINK_PLACE, links));
        }
        comparison.mostPower().flatMap(this::power).ifPresent(all::add);
        return all.isEmpty() ? all : List.of(String.join(" ", all));
    }

    /** Pump power is compared where one build takes the most of all; another may take its own most elsewhere. */
    private Optional<String> power(Comparison.BuildAtDuty most) {
        Map<String, List<String>> elsewhere = by(unit -> comparison
                .mostPower(unit.build())
                .filter(cell -> !cell.duty().name().equals(most.duty().name()))
                .map(cell -> CompareScreenPhrase.power(
                        Quantity.POWER.with(units, cell.figures().orElseThrow().pumpPower()),
                        cell.duty().name())));
        return elsewhere.isEmpty() ? Optional.empty() : Optional.of(CompareScreenPhrase.morePower(elsewhere));
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
        if (is.line() > was.line() && is.lost() > was.lost() && !FiguresChange.same(was.lost(), is.lost())) {
            int last = all.size() - 1;
            all.set(last, all.get(last) + CompareScreenPhrase.MORE_PRESSURE);
        }
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

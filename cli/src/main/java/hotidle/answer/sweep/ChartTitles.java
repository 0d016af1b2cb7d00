package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.ChartPhrase;
import hotidle.assess.Assessment;
import hotidle.assess.Figures;
import hotidle.assess.HubReading;
import hotidle.result.Solution;
import hotidle.study.RunningFilm;
import hotidle.study.SpeedSweep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the charts of some sweeps have found, as their titles. */
record ChartTitles(Quantity.UnitSystem units, List<SpeedSweep> sweeps) {

    private ChartPhrase phrase() {
        return new ChartPhrase(units);
    }

    private String name(SpeedSweep sweep) {
        return SweepPicture.name(sweeps, sweep, units);
    }

    /** From which speed on each build holds its line. */
    String pressure() {
        List<String> findings = new ArrayList<>();
        List<String> holding = new ArrayList<>();
        for (SpeedSweep sweep : sweeps) {
            OptionalDouble onset = sweep.onset();
            double set = sweep.unit()
                    .setPressure(sweep.unit().conditions(sweep.duty()))
                    .orElse(Double.NaN);
            if (sweep.assessed().stream().allMatch(Optional::isEmpty)) {
                findings.add(ChartPhrase.notKnown(name(sweep)));
            } else if (onset.isEmpty()) {
                findings.add(phrase().notHeld(name(sweep), set, last(sweep), some(sweep, Double.POSITIVE_INFINITY)));
            } else if (onset.getAsDouble() > first(sweep)) {
                double from = onset.getAsDouble();
                findings.add(phrase().holdsFrom(name(sweep), set, from, some(sweep, from)));
            } else {
                holding.add(name(sweep));
            }
        }
        double lowest = sweeps.stream().mapToDouble(ChartTitles::first).min().orElse(0);
        return ChartPhrase.title(findings, holding.isEmpty() ? List.of() : List.of(phrase().hold(holding, lowest)));
    }

    private static double first(SpeedSweep sweep) {
        return sweep.shown().get(0).conditions().speed();
    }

    private static double last(SpeedSweep sweep) {
        return sweep.shown().get(sweep.shown().size() - 1).conditions().speed();
    }

    /** Whether the line is held at some speed below another, or nothing is known there. */
    private static boolean some(SpeedSweep sweep, double below) {
        for (int i = 0; i < sweep.shown().size(); i++) {
            boolean slower = sweep.shown().get(i).conditions().speed() < below;
            if (slower
                    && sweep.assessed()
                            .get(i)
                            .map(one -> one.figures().regulated())
                            .orElse(true)) {
                return true;
            }
        }
        return false;
    }

    /** How much of its oil a build loses, slow and fast. */
    String oil(SpeedSweep sweep) {
        List<Assessment> known =
                sweep.assessed().stream().flatMap(Optional::stream).toList();
        if (known.size() < 2) {
            return ChartPhrase.oil(name(sweep));
        }
        Assessment slow = known.get(0);
        Assessment fast = known.get(known.size() - 1);
        return phrase().oilLost(
                        name(sweep),
                        slow.state().conditions().speed(),
                        lost(slow.figures()),
                        fast.state().conditions().speed(),
                        lost(fast.figures()));
    }

    private static double lost(Figures figures) {
        return (figures.slip() + figures.leak()) / figures.swept();
    }

    /** Whose hub film holds at the speeds at which it runs. */
    String film() {
        List<String> fails = new ArrayList<>();
        List<String> open = new ArrayList<>();
        List<String> holds = new ArrayList<>();
        for (SpeedSweep sweep : sweeps) {
            Optional<RunningFilm> film = sweep.runningFilm();
            boolean whole =
                    sweep.shown().stream().allMatch(outcome -> outcome.state().isPresent());
            boolean bad = film.map(RunningFilm::fails).orElse(false);
            boolean sure = whole && film.map(RunningFilm::known).orElse(false);
            (bad ? fails : sure ? holds : open).add(name(sweep));
        }
        return ChartPhrase.film(fails, open, holds);
    }

    /** The greatest load on a hub, and where. */
    String load() {
        String most = "";
        double greatest = Double.NEGATIVE_INFINITY;
        for (SpeedSweep sweep : sweeps) {
            for (Solution state : sweep.states()) {
                double load = HubReading.of(sweep.roles(), state).load();
                if (load > greatest) {
                    greatest = load;
                    most = phrase().load(name(sweep), load, state.conditions().speed());
                }
            }
        }
        return most;
    }
}

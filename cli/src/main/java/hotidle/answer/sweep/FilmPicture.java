package hotidle.answer.sweep;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.ChartPhrase;
import hotidle.answer.phrase.HubFilmPhrase;
import hotidle.assess.HubReading;
import hotidle.circuits.DescribedCircuit;
import hotidle.plots.Chart;
import hotidle.plots.FigureChart;
import hotidle.plots.FigureCurve;
import hotidle.plots.Picture;
import hotidle.plots.PressureCurve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.study.SpeedSweep;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The picture of a sweep's hub: its film against the least one allowed, and the load that thins it. */
final class FilmPicture {

    private FilmPicture() {}

    /** The picture; empty where no sweep knows a film. */
    static Optional<Picture> of(DescribedCircuit circuit, List<SpeedSweep> sweeps, Quantity.UnitSystem units) {
        List<SpeedSweep> shown = sweeps.stream().limit(FigureChart.MOST_CURVES).toList();
        return shown.stream().allMatch(sweep -> sweep.thinnestFilm().isEmpty())
                ? Optional.empty()
                : Optional.of(new Picture(List.of(film(circuit, shown, units), load(shown, units))));
    }

    /** The film from which on every build is known to hold, as a multiple of the least one allowed. */
    private static Optional<FigureChart.LimitLine> known(List<SpeedSweep> sweeps) {
        return sweeps.stream()
                .flatMap(sweep -> sweep.thinnestFilm().stream().map(state -> HubReading.of(sweep.roles(), state)))
                .flatMap(hub -> hub.known().stream().mapToObj(film -> film / hub.allowed()))
                .filter(multiple -> multiple > 1)
                .max(Double::compare)
                .map(multiple -> new FigureChart.LimitLine(multiple, ChartPhrase.KNOWN_FILM));
    }

    /** Builds differ in the film that they are allowed, so each film is shown as a multiple of its own. */
    private static Chart film(DescribedCircuit circuit, List<SpeedSweep> sweeps, Quantity.UnitSystem units) {
        List<FigureCurve> curves = sweeps.stream()
                .map(sweep -> curve(
                        sweeps,
                        sweep,
                        units,
                        state -> share(HubReading.of(sweep.roles(), state)),
                        sweep.thinnestFilm().map(state -> thinnest(sweep, state, units))))
                .toList();
        return new FigureChart(
                new ChartTitles(units, sweeps).film(),
                SweepPicture.subtitle(circuit, sweeps, units),
                ChartPhrase.FILM_AXIS,
                Optional.of(new FigureChart.LimitLine(1, ChartPhrase.LEAST_FILM)),
                known(sweeps),
                curves);
    }

    private static FigureCurve.LabelledPoint thinnest(SpeedSweep sweep, Solution state, Quantity.UnitSystem units) {
        HubReading hub = HubReading.of(sweep.roles(), state);
        return new FigureCurve.LabelledPoint(
                Rpm.of(state.conditions().speed()),
                share(hub),
                new HubFilmPhrase(units)
                        .mark(
                                sweep.unit().build(),
                                hub.least().orElseThrow(),
                                state.conditions().speed(),
                                sweep.filmIn(state).known()));
    }

    private static Chart load(List<SpeedSweep> sweeps, Quantity.UnitSystem units) {
        List<FigureCurve> curves = sweeps.stream()
                .map(sweep -> curve(
                        sweeps,
                        sweep,
                        units,
                        state -> Quantity.FORCE.value(
                                units, HubReading.of(sweep.roles(), state).load()),
                        Optional.empty()))
                .toList();
        return new FigureChart(
                new ChartTitles(units, sweeps).load(),
                sweeps.get(0).roles().secondary().isPresent() ? ChartPhrase.TWO_CHAMBERS : ChartPhrase.ONE_CHAMBER,
                "load [" + Quantity.FORCE.in(units).unit() + "]",
                Optional.empty(),
                Optional.empty(),
                curves);
    }

    private static FigureCurve curve(
            List<SpeedSweep> all,
            SpeedSweep sweep,
            Quantity.UnitSystem units,
            ToDoubleFunction<Solution> figure,
            Optional<FigureCurve.LabelledPoint> mark) {
        return new FigureCurve(
                SweepPicture.name(all, sweep, units),
                sweep.shown().stream()
                        .map(outcome -> new PressureCurve.SweepPoint(
                                Rpm.of(outcome.conditions().speed()), known(outcome, figure)))
                        .toList(),
                mark,
                Rpm.of(SweepPicture.unloaded(sweep)),
                ChartPhrase.NO_FILM);
    }

    private static double known(Outcome outcome, ToDoubleFunction<Solution> figure) {
        return outcome.state().map(figure::applyAsDouble).orElse(Double.NaN);
    }

    /** The film as a multiple of the least one allowed; NaN in metal contact. */
    private static double share(HubReading hub) {
        return hub.least().isEmpty() ? Double.NaN : hub.least().getAsDouble() / hub.allowed();
    }
}

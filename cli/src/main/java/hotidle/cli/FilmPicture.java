package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.assess.Roles;
import hotidle.circuits.DescribedCircuit;
import hotidle.part.Bushing;
import hotidle.part.Measure;
import hotidle.plots.Chart;
import hotidle.plots.FigureChart;
import hotidle.plots.FigureCurve;
import hotidle.plots.PressureCurve;
import hotidle.result.Outcome;
import hotidle.result.Solution;
import hotidle.study.SpeedSweep;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The picture of a sweep's hub: its film against the least one allowed, and the load that thins it. */
final class FilmPicture {

    private FilmPicture() {}

    /**
     * Draws sweeps into a file.
     *
     * @return what had to be left out, empty where all is drawn
     * @throws WrongInputException where there is no film to draw, or the file cannot be written
     */
    static String write(DescribedCircuit circuit, List<SpeedSweep> sweeps, Quantity.UnitSystem units, Path file) {
        List<SpeedSweep> shown = sweeps.stream().limit(FigureChart.MOST_CURVES).toList();
        if (shown.stream().allMatch(sweep -> sweep.thinnestFilm().isEmpty())) {
            throw new WrongInputException("hotidle: --plot-film: there is no film to draw: "
                    + (Roles.of(sweeps.get(0).unit()).hub().isEmpty()
                            ? circuit.name() + " has no hub bushing that chambers load"
                            : "metal touches, or no state was found, at every speed"));
        }
        PictureFile.write(List.of(film(circuit, shown, units), load(shown, units)), file);
        return sweeps.size() <= FigureChart.MOST_CURVES
                ? ""
                : "; it shows the first " + shown.size() + " of " + sweeps.size() + " sweeps";
    }

    /** Builds differ in the film that they are allowed, so each film is shown as a multiple of its own. */
    private static Chart film(DescribedCircuit circuit, List<SpeedSweep> sweeps, Quantity.UnitSystem units) {
        List<FigureCurve> curves = sweeps.stream()
                .map(sweep -> curve(
                        sweeps,
                        sweep,
                        units,
                        state -> film(sweep, state) / measure(sweep, state, Bushing.PERMISSIBLE_FILM),
                        sweep.thinnestFilm().map(state -> thinnest(sweep, state, units))))
                .toList();
        return new FigureChart(
                "Film in the hub bushing against engine speed",
                SweepPicture.subtitle(circuit, sweeps.get(0), units),
                "film / least film allowed [-]",
                Optional.of(new FigureChart.Level(1, "least film allowed (assumed from roughness)")),
                curves);
    }

    private static FigureCurve.Mark thinnest(SpeedSweep sweep, Solution state, Quantity.UnitSystem units) {
        double film = film(sweep, state);
        return new FigureCurve.Mark(
                state.conditions().speed() * 60,
                film / measure(sweep, state, Bushing.PERMISSIBLE_FILM),
                String.format(
                        Locale.ROOT,
                        "%s: thinnest %s at %s rpm",
                        sweep.unit().build(),
                        Quantity.FILM.with(units, film),
                        Quantity.SPEED.number(units, state.conditions().speed())));
    }

    private static Chart load(List<SpeedSweep> sweeps, Quantity.UnitSystem units) {
        List<FigureCurve> curves = sweeps.stream()
                .map(sweep -> curve(
                        sweeps,
                        sweep,
                        units,
                        state -> Quantity.FORCE.value(units, measure(sweep, state, Bushing.LOAD)),
                        Optional.empty()))
                .toList();
        return new FigureChart(
                Roles.of(sweeps.get(0).unit()).secondary().isPresent()
                        ? "Load on the hub: weight alone while both chambers carry line pressure, side load once one is unloaded"
                        : "Load on the hub: side load of the pump and weight",
                "",
                "load [" + Quantity.FORCE.in(units).unit() + "]",
                Optional.empty(),
                curves);
    }

    private static FigureCurve curve(
            List<SpeedSweep> all,
            SpeedSweep sweep,
            Quantity.UnitSystem units,
            ToDoubleFunction<Solution> figure,
            Optional<FigureCurve.Mark> mark) {
        return new FigureCurve(
                SweepPicture.name(all, sweep, units),
                sweep.shown().stream()
                        .map(outcome ->
                                new PressureCurve.Point(outcome.conditions().speed() * 60, known(outcome, figure)))
                        .toList(),
                mark,
                Roles.of(sweep.unit()).secondary().isPresent()
                        ? SweepPicture.revolutions(sweep.bypassing())
                        : OptionalDouble.empty(),
                "metal contact or unsolved");
    }

    private static double known(Outcome outcome, ToDoubleFunction<Solution> figure) {
        return outcome.state().map(figure::applyAsDouble).orElse(Double.NaN);
    }

    private static double film(SpeedSweep sweep, Solution state) {
        return measure(sweep, state, Bushing.METAL_CONTACT) > 0
                ? Double.NaN
                : measure(sweep, state, Bushing.LEAST_FILM);
    }

    private static double measure(SpeedSweep sweep, Solution state, Measure measure) {
        return Roles.of(sweep.unit())
                .hub()
                .map(hub -> state.measure(hub.name(), measure).orElse(Double.NaN))
                .orElse(Double.NaN);
    }
}

package hotidle.answer.sweep;

import hotidle.answer.phrase.EnlargedPhrase;
import hotidle.plots.Chart;
import hotidle.plots.Enlargement;
import hotidle.plots.Picture;
import java.util.List;
import java.util.Optional;

/** The charts of some sweeps one by one, for a page that gives each a place of its own. */
public record SweepCharts(SweepAnswer of) {

    /** Line pressure of all builds, as far as they can be told apart. */
    public Chart pressure() {
        return SweepPicture.pressure(of.described(), of.sweeps(), of.units(), List.of());
    }

    /** Its low speeds enlarged, where the story is; empty where nothing is won by it. */
    public Optional<Chart> lowPressure() {
        return LowSpeeds.of(of.sweeps()).stream()
                .mapToObj(speed -> (Chart) Enlargement.of(
                        SweepPicture.pressure(of.described(), of.sweeps(), of.units(), List.of()),
                        speed,
                        EnlargedPhrase.pressure(speed)))
                .findFirst();
    }

    /** Where the oil of each build goes. */
    public List<Chart> oil() {
        return of.sweeps().stream()
                .map(sweep -> (Chart) SweepPicture.oil(of.sweeps(), sweep, of.units()))
                .toList();
    }

    /** The hub's film and load; none where no film is known. */
    public List<Chart> hub() {
        return of.filmPicture().map(Picture::charts).orElse(List.of());
    }
}

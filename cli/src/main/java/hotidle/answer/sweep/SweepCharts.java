package hotidle.answer.sweep;

import hotidle.plots.Chart;
import hotidle.plots.Picture;
import java.util.List;

/** The charts of some sweeps one by one, for a page that gives each a place of its own. */
public record SweepCharts(SweepAnswer of) {

    /** Line pressure of all builds, as far as they can be told apart. */
    public Chart pressure() {
        return SweepPicture.pressure(of.described(), of.sweeps(), of.units(), List.of());
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

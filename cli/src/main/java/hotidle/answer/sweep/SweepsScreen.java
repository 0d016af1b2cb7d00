package hotidle.answer.sweep;

import hotidle.answer.format.FirstScreen;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.NoStallPhrase;
import hotidle.answer.phrase.SweepPhrase;
import hotidle.study.FrictionBands;
import hotidle.study.SpeedSweep;
import java.util.Comparator;
import java.util.List;

/** The first screen of some sweeps: a table of each where there is room, what fails in any of them in any case. */
record SweepsScreen(List<SpeedSweep> sweeps, FrictionBands bands, Quantity.UnitSystem units) {

    /**
     * The whole of it.
     *
     * @param lowAtIdle names of the builds that do not hold their line at idle
     */
    String text(List<String> lowAtIdle) {
        boolean commanded = sweeps.get(0).unit().commanded().isPresent();
        FirstScreen screen = new FirstScreen(NoStallPhrase.of(lowAtIdle) + Caution.of(commanded, false));
        for (int i = 0; i < sweeps.size(); i++) {
            int left = sweeps.size() - i;
            SweepScreen one = new SweepScreen(sweeps.get(i), bands, units);
            if (screen.room() / left < SweepScreen.LEAST) {
                rest(screen, sweeps.subList(i, sweeps.size()));
                break;
            }
            screen.add(head(sweeps.get(i)));
            one.fails().forEach(line -> screen.add(Wrap.lines(line, "  ", "    ")));
            screen.add(one.table((screen.room() - heads(sweeps.subList(i + 1, sweeps.size()))) / left));
        }
        return screen.text();
    }

    /** Lines that stand over the tables of some sweeps. */
    private int heads(List<SpeedSweep> some) {
        return some.stream()
                .mapToInt(sweep -> (int) head(sweep).lines().count()
                        + new SweepScreen(sweep, bands, units)
                                .fails().stream()
                                        .mapToInt(line -> (int) Wrap.lines(line, "  ", "    ")
                                                .lines()
                                                .count())
                                        .sum())
                .sum();
    }

    /** Sweeps without room for a table: their heads, or a count; those of which something fails come first. */
    private void rest(FirstScreen screen, List<SpeedSweep> rest) {
        List<SpeedSweep> sorted = rest.stream()
                .sorted(Comparator.comparing(
                        sweep -> new SweepScreen(sweep, bands, units).fails().isEmpty()))
                .toList();
        for (int i = 0; i < sorted.size(); i++) {
            List<String> fails = new SweepScreen(sorted.get(i), bands, units).fails();
            StringBuilder text = new StringBuilder(head(sorted.get(i)));
            fails.forEach(line -> text.append(Wrap.lines(line, "  ", "    ")));
            if (screen.room() <= text.toString().lines().count()) {
                long failing = sorted.subList(i, sorted.size()).stream()
                        .filter(sweep ->
                                !new SweepScreen(sweep, bands, units).fails().isEmpty())
                        .count();
                screen.add(SweepPhrase.more(sorted.size() - i, failing));
                break;
            }
            screen.add(text.toString());
        }
    }

    private String head(SpeedSweep sweep) {
        return new SweepHead(units).of(sweep);
    }
}

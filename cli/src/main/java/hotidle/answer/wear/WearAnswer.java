package hotidle.answer.wear;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.page.Block;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.WearLimitPhrase;
import hotidle.plots.Picture;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * How far the fits of some builds may wear.
 *
 * @param units   of the user
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param work    what was done to each build; may be empty
 * @param builds  at least one
 */
public record WearAnswer(Quantity.UnitSystem units, String circuit, String about, String work, List<BuildWear> builds)
        implements Answer {

    public WearAnswer {
        builds = List.copyOf(builds);
    }

    @Override
    public String screen() {
        return new WearScreen(units, circuit, work, builds).text();
    }

    @Override
    public String full() {
        return Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  ")
                + builds.stream().map(BuildWear::said).collect(Collectors.joining())
                + "\n" + Caution.WHOLE + "\n"
                + builds.stream().map(one -> one.fits(builds.size() > 1)).collect(Collectors.joining())
                + "\n" + Wrap.lines(WearLimitPhrase.LEGEND, "", "");
    }

    /** The same on a page. */
    public List<Block> page() {
        return new WearScreen(units, circuit, work, builds).page();
    }

    @Override
    public TextTable table() {
        return FitRows.all(builds);
    }

    @Override
    public Object json() {
        return WearRecord.of(circuit, builds);
    }

    @Override
    public Optional<Picture> picture() {
        return new WearPicture(units, circuit, builds).picture();
    }

    @Override
    public boolean complete() {
        return builds.stream().allMatch(one -> one.wear().unsolved().isEmpty());
    }
}

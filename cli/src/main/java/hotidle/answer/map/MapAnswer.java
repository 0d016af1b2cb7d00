package hotidle.answer.map;

import hotidle.answer.Answer;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.HeadingPhrase;
import hotidle.answer.phrase.MapPhrase;
import hotidle.plots.Chart;
import hotidle.plots.Picture;
import hotidle.study.WindowMap;
import hotidle.transmission.SetPressure;
import java.util.List;
import java.util.Optional;

/**
 * The least headroom of some builds over set pressure and one size.
 *
 * @param units   of the user
 * @param circuit its name
 * @param about   what its file says of it; may be empty
 * @param work    what was done to each build, in words behind the name; may be empty
 * @param by      how the set pressures are reached
 * @param maps    one a build, at least one
 */
public record MapAnswer(
        Quantity.UnitSystem units, String circuit, String about, String work, SetPressure.By by, List<Mapped> maps)
        implements Answer {

    /**
     * A build and its map.
     *
     * @param rated whether the file rates anything in its gear train
     */
    public record Mapped(String build, WindowMap map, boolean rated) {}

    public MapAnswer {
        maps = List.copyOf(maps);
    }

    @Override
    public String screen() {
        return new MapScreen(units, circuit, work, maps).text();
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder(Wrap.lines(HeadingPhrase.headed(circuit, about), "", "  "));
        text.append("\n").append(Caution.WHOLE).append("\n");
        maps.forEach(one -> text.append("\n").append(new MapSection(units, one.build, one.map).table()));
        return text.append("\n")
                .append(Wrap.lines(MapPhrase.legend(by), "", ""))
                .toString();
    }

    @Override
    public TextTable table() {
        TextTable table = new TextTable(new MapRows(units, maps.get(0).build, maps.get(0).map).head());
        maps.forEach(one -> new MapRows(units, one.build, one.map).rows().forEach(table::add));
        return table;
    }

    @Override
    public Object json() {
        return new MapRecord(
                circuit,
                maps.stream().map(one -> MapRecord.of(one.build, one.map)).toList());
    }

    /** A chart a build. */
    public List<Chart> charts() {
        return maps.stream()
                .map(one -> (Chart) new MapPicture(units, one.build, one.map).chart(circuit, by))
                .toList();
    }

    @Override
    public Optional<Picture> picture() {
        return Optional.of(new Picture(charts()));
    }

    @Override
    public boolean complete() {
        return maps.stream().allMatch(one -> one.map.known());
    }
}

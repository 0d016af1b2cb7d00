package hotidle.answer.map;

import hotidle.answer.NotKnown;
import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.Caution;
import hotidle.answer.phrase.MapPhrase;
import hotidle.answer.phrase.WindowPhrase;
import hotidle.study.MapFindings;
import java.util.List;

/** The first screen: whether each build holds as it is, and at which sizes and set pressures every limit does. */
record MapScreen(Quantity.UnitSystem units, String circuit, String work, List<MapAnswer.Mapped> maps) {

    /** Rows of a build at most (chosen). */
    private static final int MOST = 10;

    /** Of more builds than this only the point of each as it is, is told in words (chosen). */
    private static final int SEVERAL = 1;

    private static final int ALL_MARKS = 3;

    /** Lines of a table beside its rows: a blank one, its head and rule, what is assumed and what is not shown. */
    private static final int AROUND = 5;

    String text() {
        StringBuilder text = new StringBuilder(Wrap.lines(MapPhrase.title(circuit, work), "", "  "));
        text.append(Wrap.lines(WindowPhrase.notJudged(maps.get(0).rated()), "", "  "));
        String end = "\n" + Caution.LINE + "\n";
        for (int i = 0; i < maps.size(); i++) {
            String said = said(maps.get(i));
            boolean last = i + 1 == maps.size();
            if (lines(text + said + end) + (last ? 0 : 1) > Wrap.LINES) {
                int nowhere = (int) maps.subList(i, maps.size()).stream()
                        .filter(one -> one.map().findings().holding() == 0)
                        .count();
                text.append(MapPhrase.moreBuilds(maps.size() - i, nowhere)).append("\n");
                return text + end;
            }
            text.append(said);
        }
        long left = Wrap.LINES - lines(text.toString()) - lines(end);
        int rows = (int) Math.min(MOST, left / maps.size() - AROUND);
        if (rows > 1) {
            maps.forEach(one -> text.append("\n").append(table(one, rows)));
        }
        return text + end;
    }

    private static long lines(String text) {
        return text.lines().count();
    }

    private String said(MapAnswer.Mapped one) {
        MapFindings found = one.map().findings();
        MapSection section = new MapSection(units, one.build(), one.map());
        StringBuilder text = new StringBuilder();
        one.map().marks().stream()
                .limit(maps.size() > SEVERAL ? 1 : ALL_MARKS)
                .forEach(mark -> text.append(Wrap.lines(section.sentence(mark), "", "  ")));
        String best = found.best()
                .map(cell -> MapPhrase.best(
                        section.grid().quantity().with(units, cell.value()),
                        Quantity.PRESSURE.with(units, cell.pressure()),
                        section.grid().headroom(cell)))
                .orElse("");
        text.append(Wrap.lines(
                MapPhrase.counted(
                        one.build(),
                        found.points(),
                        found.holding(),
                        one.map().undecided().isEmpty(),
                        found.failing(),
                        best),
                "",
                "  "));
        if (found.notKnown() > 0) {
            text.append(Wrap.lines(MapPhrase.notKnownAt(found.notKnown(), section.whyUnknown()), "", "  "));
        }
        String open = NotKnown.brief(one.map().undecided());
        return text + (open.isEmpty() ? "" : Wrap.lines(open, "  ", "  "));
    }

    /** With the driving conditions where they fit, else by the kind of limit alone. */
    private String table(MapAnswer.Mapped one, int rows) {
        SizeRows sizes = new SizeRows(units, one.map(), rows);
        String text = sizes.table(true).aligned();
        boolean fits = text.lines().allMatch(line -> line.length() <= Wrap.WIDTH);
        int more = sizes.more();
        String shown = fits ? text : sizes.table(false).fitted(Wrap.WIDTH);
        return shown
                + (shown.contains(MapPhrase.ASSUMED_MARK) ? MapPhrase.ASSUMED_NOTE + "\n" : "")
                + (more == 0 ? "" : MapPhrase.moreSizes(more) + "\n");
    }
}

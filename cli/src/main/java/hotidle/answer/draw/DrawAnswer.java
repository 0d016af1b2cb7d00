package hotidle.answer.draw;

import hotidle.answer.Answer;
import hotidle.answer.format.TextTable;
import hotidle.answer.format.Wrap;
import hotidle.answer.phrase.DrawPhrase;
import hotidle.plots.scheme.Scheme;
import hotidle.plots.scheme.SchemeNet;
import java.util.List;

/**
 * What was drawn, and where it lies.
 *
 * @param shown  build and state
 * @param drawn  what was drawn
 * @param file   where it lies
 * @param paper  on which it is drawn
 */
public record DrawAnswer(DrawnState shown, DrawnScheme drawn, String file, String paper) implements Answer {

    Scheme scheme() {
        return drawn.scheme();
    }

    @Override
    public String full() {
        StringBuilder text = new StringBuilder();
        text.append(Wrap.lines(scheme().title(), "", "  "));
        scheme().notes().forEach(note -> text.append(Wrap.lines(note, "", "  ")));
        text.append(Wrap.lines(
                DrawPhrase.drawn(file, paper, scheme().parts().size(), drawn.leaks(), nets().size()), "", "  "));
        return text.toString();
    }

    private List<SchemeNet> nets() {
        return scheme().nets().stream()
                .filter(net -> net.look() != SchemeNet.Look.RESERVOIR)
                .toList();
    }

    @Override
    public TextTable table() {
        TextTable table = new TextTable(List.of("what", "name", "frame", "shown", "changed"));
        scheme().parts()
                .forEach(part -> table.add(List.of(
                        "part",
                        part.name(),
                        part.frame(),
                        String.join("; ", part.lines()),
                        part.changed() ? "yes" : "no")));
        nets().forEach(net ->
                table.add(List.of("node", net.name(), net.frame(), net.value(), net.changed() ? "yes" : "no")));
        return table;
    }

    @Override
    public Object json() {
        return DrawRecord.of(this);
    }

    @Override
    public boolean complete() {
        return shown.duty().isEmpty()
                || (shown.state().isPresent()
                        && (shown.against().isEmpty() || shown.before().isPresent()));
    }
}

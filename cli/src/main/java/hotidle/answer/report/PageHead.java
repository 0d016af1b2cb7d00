package hotidle.answer.report;

import hotidle.answer.page.Figure;
import java.util.List;

/**
 * Who made a page, of which unit.
 *
 * @param lines       above all else; may be empty
 * @param photographs of the unit; may be empty
 */
public record PageHead(List<String> lines, List<Figure> photographs) {
    public PageHead {
        lines = List.copyOf(lines);
        photographs = List.copyOf(photographs);
    }
}

package hotidle.answer.live;

import java.util.Optional;

/**
 * The circuit drawn.
 *
 * @param svg   an element whose pieces carry in {@code data-piece} what they belong to; empty while it is being laid out
 * @param range that the selector stands in
 * @param tried in how many ways it was laid out so far
 * @param ways  in which it is
 */
public record LiveDrawingRecord(Optional<String> svg, String range, int tried, int ways) {

    /** One that stands. */
    public static LiveDrawingRecord of(String svg, String range) {
        return new LiveDrawingRecord(Optional.of(svg), range, 0, 0);
    }
}

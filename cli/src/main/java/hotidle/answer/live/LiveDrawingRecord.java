package hotidle.answer.live;

/**
 * The circuit drawn.
 *
 * @param svg   an element whose pieces carry in {@code data-piece} what they belong to
 * @param range that the selector stands in
 */
public record LiveDrawingRecord(String svg, String range) {}

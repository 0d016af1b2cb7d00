package hotidle.answer.page;

/**
 * A picture on a page.
 *
 * @param svg     the picture, an element of its own with a name that is read aloud
 * @param caption under it; says what is to be seen
 * @param sheet   whether it takes a sheet of its own, printed across
 */
public record Figure(String svg, String caption, boolean sheet) {}

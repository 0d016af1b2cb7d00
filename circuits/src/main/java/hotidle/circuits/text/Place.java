package hotidle.circuits.text;

/**
 * Where a value stands in its file.
 *
 * @param line   from 1
 * @param column from 1
 * @param width  characters on its first line, at least 1
 */
public record Place(int line, int column, int width) {

    /** The beginning of a file. */
    public static final Place START = new Place(1, 1, 1);
}

package hotidle.circuits.text;

/**
 * Where a value stands in its file.
 *
 * @param line   from 1
 * @param column from 1
 * @param width  characters on its first line, at least 1
 * @param source which of the files of one reading: 0 the file itself, others as {@link Problems#source} counts them
 */
public record Place(int line, int column, int width, int source) {

    /** The beginning of a file. */
    public static final Place START = new Place(1, 1, 1);

    /** A place in the file itself. */
    public Place(int line, int column, int width) {
        this(line, column, width, 0);
    }
}

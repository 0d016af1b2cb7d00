package hotidle.circuits.text;

/**
 * A position in a file, counted from 1.
 *
 * @param file   name as the user gave it
 * @param line   from 1
 * @param column from 1
 */
public record Position(String file, int line, int column) {

    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}

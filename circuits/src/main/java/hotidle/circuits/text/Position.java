package hotidle.circuits.text;

/**
 * A position in a file, counted from 1, or in a command.
 *
 * @param file   name as the user gave it; of a command, the command
 * @param line   from 1; 0 in a command, which has no lines
 * @param column from 1
 */
public record Position(String file, int line, int column) {

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}

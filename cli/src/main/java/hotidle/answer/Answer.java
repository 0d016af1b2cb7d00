package hotidle.answer;

import hotidle.answer.format.TextTable;
import hotidle.plots.Picture;
import java.util.Optional;

/**
 * What a command answers. Screen, table, JSON and picture show the same values: what was solved is handed in, nothing is solved or
 * judged here.
 */
public interface Answer {

    /**
     * The first screen: it answers the question in at most {@link hotidle.answer.format.Wrap#LINES} lines, and what fails is on it or
     * counted there. With a line feed at its end.
     */
    default String screen() {
        return full();
    }

    /** All that there is to say, for who asks for it; with a line feed at its end. */
    String full();

    /** The rows that a spreadsheet gets. */
    TextTable table();

    /** The rows separated by commas, RFC 4180. */
    default String csv() {
        return table().csv();
    }

    /** The record that {@link hotidle.answer.format.Json} writes. */
    Object json();

    /** What is drawn where a picture is asked for; empty where there is nothing to draw. */
    default Optional<Picture> picture() {
        return Optional.empty();
    }

    /** Whether everything asked for is known; where it is not, the exit code is 1. */
    default boolean complete() {
        return true;
    }
}

package hotidle.plots.scheme;

import java.util.List;

/**
 * The widest that may come to be written somewhere. Room is kept for it whatever is written, so that all builds and states of a circuit
 * are laid out alike and lie over one another.
 *
 * @param value beside a name
 * @param below under it, line by line
 */
public record Widest(String value, List<String> below) {

    /** Room for nothing but what is written. */
    public static final Widest NOTHING = new Widest("", List.of());

    public Widest {
        below = List.copyOf(below);
    }

    /** Lines that fit below. */
    int rows(int written) {
        return Math.max(written, below.size());
    }
}

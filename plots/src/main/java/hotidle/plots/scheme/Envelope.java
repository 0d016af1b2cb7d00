package hotidle.plots.scheme;

import java.util.List;

/**
 * What a valve joins in one of its positions.
 *
 * @param links open ways in it
 */
public record Envelope(List<Arrow> links) {

    /**
     * An open way.
     *
     * @param from net that it leaves
     * @param to   net that it goes to
     */
    public record Arrow(String from, String to) {}

    public Envelope {
        links = List.copyOf(links);
    }
}

package hotidle.circuits.words;

import hotidle.law.Channel;
import hotidle.part.Fit;
import hotidle.part.Part;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What can be said of a kind of part on its own.
 *
 * @param law      its law in a line, as its solver's part has it
 * @param source   where the law comes from
 * @param channels what the oil wets on each path, by the path's name; paths that have no geometry are left out
 * @param fits     clearances that grow with temperature, by what they are called
 */
public record Physics(
        String law,
        String source,
        Function<Part, Map<String, Channel>> channels,
        Function<Part, Map<String, Fit>> fits) {

    /** Source of the loss at the ends of a gap. */
    static final String SLOT_ENTRY = "T. Lundgren, E. Sparrow, J. Starr, J. Basic Eng. 86 (1964) 620 (from memory)";

    /** Source of the law of a gap. */
    static final String SLOT =
            "H. E. Merritt, Hydraulic Control Systems, 1967, §2-5 (from memory); entry and exit: " + SLOT_ENTRY;

    /** Source of the law of a restriction known by one point. */
    static final String RATED = "laminar and turbulent loss through the measured point (our own form)";

    /** A law and its source. */
    static Physics of(String law, String source) {
        return new Physics(law, source, part -> Map.of(), part -> Map.of());
    }

    /** The same with what is wetted on the only path. */
    <P extends Part> Physics channel(Class<P> type, Function<P, Channel> one) {
        return channels(type, part -> Map.of("", one.apply(part)));
    }

    /** The same with what is wetted on each path. */
    <P extends Part> Physics channels(Class<P> type, Function<P, Map<String, Channel>> all) {
        return new Physics(law, source, part -> all.apply(type.cast(part)), fits);
    }

    /** The same with a clearance. */
    <P extends Part> Physics fit(Class<P> type, String name, Function<P, Fit> one) {
        return fits(type, part -> Map.of(name, one.apply(part)));
    }

    /** The same with several clearances. */
    <P extends Part> Physics fits(Class<P> type, Function<P, Map<String, Fit>> all) {
        return new Physics(law, source, channels, part -> new TreeMap<>(all.apply(type.cast(part))));
    }
}

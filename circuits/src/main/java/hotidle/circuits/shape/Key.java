package hotidle.circuits.shape;

import hotidle.circuits.text.Dimension;
import java.util.List;
import java.util.Optional;

/**
 * A key of the circuit language.
 *
 * @param name     the word that stands before the colon
 * @param type     what may stand behind it
 * @param meaning  in a few words
 * @param needed   whether it must be written
 * @param fallback value where it is not written
 * @param allowed  values outside are errors
 * @param usual    values outside are worth a warning
 * @param measure  how a shop measures it; empty where nothing needs saying
 * @param where    in which case it must be written although it may be left out else; empty where in none
 */
public record Key(
        String name,
        Type type,
        String meaning,
        boolean needed,
        Optional<Default> fallback,
        Optional<Bounds> allowed,
        Optional<Bounds> usual,
        String measure,
        String where) {

    /**
     * A value taken where nothing is written.
     *
     * @param text   as a user would write it
     * @param source common practice, assumed, or a published source
     */
    public record Default(String text, String source) {}

    /** A key that must be written. */
    public static Key of(String name, Type type, String meaning) {
        return new Key(name, type, meaning, true, Optional.empty(), Optional.empty(), Optional.empty(), "", "");
    }

    /** A quantity. */
    public static Key quantity(String name, Dimension dimension, String meaning) {
        return of(name, new Type.Dimensioned(dimension), meaning);
    }

    /** A size that grows as it wears: a bore, a gap. */
    public static Key size(String name, String meaning) {
        return of(name, new Type.Wearing(false), meaning);
    }

    /** A size that shrinks as it wears: what runs in a bore. */
    public static Key shaft(String name, String meaning) {
        return of(name, new Type.Wearing(true), meaning);
    }

    /** A whole number. */
    public static Key count(String name, String meaning) {
        return of(name, new Type.WholeNumber(), meaning);
    }

    /** The name of a node. */
    public static Key node(String name, String meaning) {
        return of(name, new Type.Name(Names.NODE), meaning);
    }

    /** One of several words. */
    public static Key choice(String name, String meaning, String... words) {
        return of(name, new Type.Choice(List.of(words)), meaning);
    }

    /** Any text. */
    public static Key text(String name, String meaning) {
        return of(name, new Type.FreeText(), meaning).optional();
    }

    /** The same, but it may be left out. */
    public Key optional() {
        return new Key(name, type, meaning, false, fallback, allowed, usual, measure, where);
    }

    /** The same, but it may be left out, with a default or without, unless something is so: "needed where ...". */
    public Key neededWhere(String something) {
        return new Key(name, type, meaning, false, fallback, allowed, usual, measure, something);
    }

    /** The same, but it must be written. */
    public Key demanded() {
        return new Key(name, type, meaning, true, Optional.empty(), allowed, usual, measure, "");
    }

    /** The same with a value for where it is left out. */
    public Key byDefault(String text, String source) {
        return new Key(
                name, type, meaning, false, Optional.of(new Default(text, source)), allowed, usual, measure, where);
    }

    /** The same with limits. */
    public Key allowed(String low, String high) {
        Bounds limits = Bounds.of(low, high, dimension());
        return new Key(name, type, meaning, needed, fallback, Optional.of(limits), usual, measure, where);
    }

    /** The same with the usual range. */
    public Key usual(String low, String high) {
        Bounds limits = Bounds.of(low, high, dimension());
        return new Key(name, type, meaning, needed, fallback, allowed, Optional.of(limits), measure, where);
    }

    /** The same with how it is measured. */
    public Key measured(String how) {
        return new Key(name, type, meaning, needed, fallback, allowed, usual, how, where);
    }

    /** In front of how a size is found that no gauge reads. */
    private static final String NO_GAUGE = "no gauge reads it: ";

    /** The same of a size that stands for what leaks and that no gauge reads, with how it is found. */
    public Key foundBy(String how) {
        return measured(NO_GAUGE + how);
    }

    /** Whether a gauge reads it. */
    public boolean gauged() {
        return !measure.startsWith(NO_GAUGE);
    }

    private Dimension dimension() {
        if (type instanceof Type.Dimensioned quantity) {
            return quantity.dimension();
        }
        if (type instanceof Type.RisingPair pair) {
            return pair.dimension();
        }
        if (type instanceof Type.PerName per) {
            return per.dimension();
        }
        return type instanceof Type.Wearing ? Dimension.LENGTH : Dimension.RATIO;
    }
}

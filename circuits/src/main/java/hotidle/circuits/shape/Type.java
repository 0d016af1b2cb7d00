package hotidle.circuits.shape;

import hotidle.circuits.text.Dimension;
import java.util.List;

/** What may stand behind a key. */
public sealed interface Type {

    /** A number with its unit. */
    record Dimensioned(Dimension dimension) implements Type {}

    /**
     * A size that wears: a quantity, or {@code {new: , limit: , measured: }}.
     *
     * @param shrinks whether wear makes it smaller, as a shaft, and not larger, as a bore
     */
    record Wearing(boolean shrinks) implements Type {}

    /** A whole number. */
    record WholeNumber() implements Type {}

    /** One of several words. */
    record Choice(List<String> words) implements Type {
        public Choice {
            words = List.copyOf(words);
        }
    }

    /** Any text. */
    record FreeText() implements Type {}

    /** A name that the file declares. */
    record Name(Names of) implements Type {}

    /** A list of such names. */
    record NameList(Names of) implements Type {}

    /** Two quantities in rising order. */
    record RisingPair(Dimension dimension) implements Type {}

    /** Keys of its own. */
    record OneGroup(Shape shape) implements Type {}

    /** Named groups, each with the same keys. */
    record NamedGroups(Shape shape) implements Type {}

    /** Names of one's own, each for a node. */
    record Ports() implements Type {}

    /** Names that the file declares, each with a quantity. */
    record PerName(Names of, Dimension dimension) implements Type {}

    /** Names of one's own, each with a text, or a list of them. */
    record Notes() implements Type {}

    /** A table of rows {@code [x, y]} with rising x. */
    record Table(Dimension x, Dimension y) implements Type {}

    /** The parts; what may stand there depends on their kind. */
    record PartNames() implements Type {}

    /** Anything; its meaning depends on what it is for. */
    record Anything() implements Type {}

    /** Viscosity at one to four temperatures: {@code 34.0 mm2/s at 40 degC}. */
    record ViscosityLine() implements Type {}

    /** What a reader of the reference is told. */
    default String says() {
        if (this instanceof Dimensioned quantity) {
            return quantity.dimension().words();
        } else if (this instanceof Wearing) {
            return "a length, or {new, limit, measured}";
        } else if (this instanceof WholeNumber) {
            return "a whole number";
        } else if (this instanceof Choice choice) {
            return String.join(" or ", choice.words());
        } else if (this instanceof Name name) {
            return "name of " + name.of().withArticle();
        } else if (this instanceof NameList names) {
            return "list, each the name of " + names.of().withArticle();
        } else if (this instanceof RisingPair pair) {
            return "two of " + pair.dimension().words() + ", [low, high]";
        } else if (this instanceof OneGroup) {
            return "keys of its own, below";
        } else if (this instanceof NamedGroups) {
            return "names with keys of their own, below";
        } else if (this instanceof Ports) {
            return "port: node, for each port";
        } else if (this instanceof PerName per) {
            return per.of().word() + ": " + per.dimension().words() + ", for each";
        } else if (this instanceof Notes) {
            return "name: text, for each, or [name, name]";
        } else if (this instanceof Table table) {
            return "rows [" + table.x().words() + ", " + table.y().words() + "]";
        } else if (this instanceof PartNames) {
            return "names, each with the keys of its kind";
        } else if (this instanceof ViscosityLine) {
            return "[34.0 mm2/s at 40 degC, 7.4 mm2/s at 100 degC], up to four, or one value for every temperature";
        }
        return this instanceof Anything ? "a value" : "text";
    }
}

package hotidle.answer.phrase;

import java.util.List;

/** What the help of 'hotidle part' says of kinds of parts and of their keys. */
public final class KindHelpPhrase {

    /** Over the kinds. */
    public static final String KINDS = "Kinds of parts";

    /** In place of ports that the keys name. */
    public static final String OWN_PORTS = "those that you name yourself in the keys below";

    /** What a group of keys under names of one's own takes. */
    public static final String OWN_NAMES = "names of your own, each with the keys below";

    /** What a key takes that names a port. */
    public static final String OWN_PORT = "name of a port of your own";

    private KindHelpPhrase() {}

    /** Over the keys. */
    public static String keys(boolean any) {
        return any ? "Keys" : "No keys.";
    }

    /** Over the ports. */
    public static String ports(boolean drop) {
        return "Ports, held with --at PORT=PRESSURE"
                + (drop ? " or with --drop PRESSURE from the first to the second" : "");
    }

    /** What is taken for a key that is left out; its source is empty where it is not asked for. */
    public static String leftOut(String value, String source) {
        return "left out: " + value + (source.isEmpty() ? "" : ", " + source);
    }

    /** Where the sources of a kind's law are told. */
    public static String sources(String kind) {
        return "Sources of the law and of these numbers: hotidle part " + kind + " --help --full";
    }

    /** Of a key for which nothing is taken. */
    public static String needed(boolean needed) {
        return needed ? "needed" : "may be left out";
    }

    public static String neededWhere(String where) {
        return "needed where " + where;
    }

    /** Bounds of a value; what is usual is empty where nothing is said of it. */
    public static String allowed(String allowed, String usual) {
        return "allowed: " + allowed + (usual.isEmpty() ? "" : "; usual: " + usual);
    }

    /** How a size is measured. */
    public static String measure(String how) {
        return "measure: " + how;
    }

    /** A quantity with the units that it can be written in. */
    public static String in(String quantity, List<String> units) {
        return quantity + " in " + String.join(", ", units);
    }

    /** A share, which needs no unit. */
    public static String bare(String quantity) {
        return quantity + ", bare or in %";
    }

    /** Two values of a quantity. */
    public static String two(String quantity) {
        return "two of " + quantity;
    }
}

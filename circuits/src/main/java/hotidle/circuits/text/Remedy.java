package hotidle.circuits.text;

/**
 * What to write in place of a faulty quantity; a file and a command write it differently.
 *
 * @param number of the quantity to write; empty where the remedy is words alone
 * @param unit   of the quantity; empty for a bare number
 * @param words  behind the quantity, or all there is to say
 */
public record Remedy(String number, String unit, String words) {

    /** Nothing can be advised. */
    public static final Remedy NONE = words("");

    static Remedy write(String number, String unit, String after) {
        return new Remedy(number, unit, after);
    }

    static Remedy words(String words) {
        return new Remedy("", "", words);
    }

    /** As in a file: {@code write 3 mm}. */
    public String inFile() {
        return number.isEmpty() ? words : "write " + (number + " " + unit).strip() + words;
    }

    /** As behind an option of a command: {@code write --clearance 3mm}. */
    public String behind(String option) {
        return number.isEmpty() ? words : "write " + option + " " + number + unit + words;
    }
}

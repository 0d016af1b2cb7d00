package hotidle.cli;

import hotidle.circuits.text.Dimension;

/** Reads the values that the options of a part on its own have. */
final class PartOptionText {

    private PartOptionText() {}

    /** A quantity between two limits. */
    static double within(String option, String text, Dimension dimension, double low, double high, String allowed) {
        double value = OptionValues.quantity(option, text, dimension);
        if (!(value >= low && value <= high)) {
            throw new WrongInputException(
                    "hotidle part: " + option + " " + text + " is out of range\nallowed: " + allowed);
        }
        return value;
    }

    /** A name and its value. */
    static String[] halves(String option, String text, String example) {
        String[] halves = text.split("=", 2);
        if (halves.length != 2 || halves[0].isBlank()) {
            throw new WrongInputException("hotidle part: " + option + " " + text
                    + " is no name with its value\nmend: write " + option + " " + example);
        }
        return new String[] {halves[0].strip(), halves[1].strip()};
    }
}

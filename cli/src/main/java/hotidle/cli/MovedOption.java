package hotidle.cli;

/** An option that became a command of its own, or has another name. */
final class MovedOption {

    private MovedOption() {}

    /**
     * Says where it went.
     *
     * @param given as written; null where it was not
     * @throws WrongInputException where it was given
     */
    static void refuse(String option, Object given, String now) {
        if (given != null) {
            throw new WrongInputException("hotidle: " + option + " is a command of its own now\nmend: " + now);
        }
    }

    /**
     * Says what it is called.
     *
     * @param given as written; null where it was not
     * @throws WrongInputException where it was given
     */
    static void renamed(String option, Object given, String now) {
        if (given != null) {
            throw new WrongInputException("hotidle: " + option + " is called " + now + " now\nmend: write " + now);
        }
    }
}

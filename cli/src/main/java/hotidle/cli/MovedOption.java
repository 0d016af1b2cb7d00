package hotidle.cli;

/** An option that became a command of its own. */
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
}

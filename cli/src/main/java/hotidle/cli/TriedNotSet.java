package hotidle.cli;

import picocli.CommandLine.Option;

/** The option --set where many set pressures are tried; kept to say that there it would not set a build. */
final class TriedNotSet {

    /** Between first and last of a series. */
    private static final String SERIES = "..";

    @Option(names = "--set", hidden = true)
    private String set;

    /**
     * Says which option tries pressures, and which command sets a build to one.
     *
     * @throws WrongInputException where a pressure or a series of them was given
     */
    void refuse() {
        if (set != null) {
            throw new WrongInputException("hotidle: --set " + set
                    + ": sets a build to one pressure; here many are tried, which is called --try"
                    + "\nmend: " + (set.contains(SERIES) ? "write --try " + set : oneOrMany(set)));
        }
    }

    private static String oneOrMany(String pressure) {
        return "what a build does at that pressure: hotidle margins CIRCUIT --set " + pressure
                + "; which pressures hold: --try " + SetPressures.USUAL;
    }
}

package hotidle.cli;

import picocli.CommandLine.Option;

/** Options of window that went to the command map; kept to say so. */
final class MovedToMap {

    @Option(names = "--vary", hidden = true)
    private String vary;

    @Option(names = "--map", hidden = true)
    private String map;

    /**
     * Says where they went.
     *
     * @throws WrongInputException where one was given
     */
    void refuse() {
        MovedOption.refuse("--vary", vary, "hotidle map CIRCUIT --vary PART.key=LOW..HIGHunit");
        MovedOption.refuse("--map", map, "hotidle map CIRCUIT --vary PART.key=LOW..HIGHunit --plot FILE");
    }
}

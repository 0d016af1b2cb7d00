package hotidle.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** What the program is asked without a command, and with any. */
@Command(
        name = "hotidle",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Steady-state solver for the oil circuit of an automatic transmission.",
            "Can the worn pump still hold that pressure at hot idle, and what does it cost?"
        },
        footer = {
            "",
            "Exit codes: 0 done; 1 done, and something asked for could not be solved; 2 the input is wrong; 70 our own fault.",
            "Results are estimates, not approvals: follow the unit maker's procedures and limits."
        })
final class ProgramOptions implements Runnable {

    @Option(
            names = "--verbose",
            scope = ScopeType.INHERIT,
            description = "says at the end on standard error how many states were solved, and in how many steps")
    private boolean verbose;

    /** Whether it says at its end what it took. */
    boolean verbose() {
        return verbose;
    }

    @Override
    public void run() {
        throw new WrongInputException("hotidle: name a command; 'hotidle --help' lists them");
    }
}

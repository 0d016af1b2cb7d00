package hotidle.cli;

import picocli.CommandLine.Option;

/** The port of this machine that a page is served at. */
final class PortOption {

    private static final int MOST = 65_535;

    @Option(
            names = "--port",
            paramLabel = "NUMBER",
            defaultValue = "0",
            description = "port of this machine to answer on. Default: any that is free")
    private int port;

    /**
     * Its number; 0 for any that is free.
     *
     * @throws WrongInputException where no port has it
     */
    int number() {
        if (port < 0 || port > MOST) {
            throw new WrongInputException("hotidle: --port " + port + ": allowed is 0 to " + MOST);
        }
        return port;
    }
}

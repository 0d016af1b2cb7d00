package hotidle.cli;

import hotidle.answer.phrase.LivePhrase;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.text.Dimension;
import hotidle.cli.live.LiveServer;
import hotidle.cli.live.LiveUnit;
import hotidle.cli.live.SystemOpener;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The unit in a browser, answering while it is turned at. */
@Command(
        name = "live",
        mixinStandardHelpOptions = true,
        description =
                "Opens a page on this machine on which the unit answers while you turn at it: every fit of the measurement sheet,"
                        + " set pressure, speed and temperature. Nothing leaves this machine.")
final class LiveCommand implements Callable<Integer> {

    @Parameters(
            arity = "0..1",
            paramLabel = "CIRCUIT",
            defaultValue = "shuttle-five",
            description = "a ready circuit (see 'hotidle list') or a circuit file. Default: ${DEFAULT-VALUE}")
    private String circuit;

    @Mixin
    private FilledSheet sheet;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "the build to begin with. Default: the circuit's first")
    private String build;

    @Mixin
    private PortOption ports;

    @Option(names = "--no-browser", description = "opens no browser; the address is printed in any case")
    private boolean noBrowser;

    @Option(
            names = "--for",
            paramLabel = "TIME",
            description = "ends by itself after so long, for example 90min. Default: when it is ended")
    private String longest;

    @Mixin
    private UnitsOption units;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        double seconds = longest == null ? Integer.MAX_VALUE : OptionValues.quantity("--for", longest, Dimension.TIME);
        int port = ports.number();
        ReadInputs inputs = new ReadInputs();
        DescribedCircuit described = Circuits.load(circuit, sheet.file(), err, inputs);
        units.ofFile(described.unitSystem());
        LiveUnit unit = new LiveUnit(
                described,
                circuit,
                units.shown(),
                Circuits.adjustable(described, build).unit().build());
        try (LiveServer server =
                LiveServer.start(unit, port, new LiveCommands(described, inputs, spec.root()), err::println)) {
            server.ahead();
            out.println(LivePhrase.address(described.name(), server.address()));
            out.println(LivePhrase.HOW_IT_ENDS);
            out.flush();
            if (!noBrowser && !SystemOpener.opened(server.address())) {
                err.println(LivePhrase.NO_OPENER);
            }
            server.await(Stop.BY_USER::asked, seconds);
        } catch (IOException taken) {
            throw new WrongInputException("hotidle: --port " + port + " cannot be used: " + taken.getMessage()
                    + "\nmend: leave out --port, or give another");
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        out.println(LivePhrase.ended(described.name()));
        return HotIdle.DONE;
    }
}

package hotidle.cli;

import hotidle.answer.list.ListAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadyCircuit;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists circuits with their builds, kinds of parts, oils and units. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description =
                "Lists the ready circuits with their builds and oils, the kinds of parts and of faults, and the units.")
final class ListCommand implements Callable<Integer> {

    /** What can be listed. */
    enum What {
        CIRCUITS(ListAnswer.Listing.CIRCUITS),
        PARTS(ListAnswer.Listing.PARTS),
        FAULTS(ListAnswer.Listing.FAULTS),
        UNITS(ListAnswer.Listing.UNITS),
        ALL(ListAnswer.Listing.values());

        private final Set<ListAnswer.Listing> sections;

        What(ListAnswer.Listing... sections) {
            this.sections = Set.of(sections);
        }
    }

    @Parameters(
            arity = "0..1",
            defaultValue = "all",
            paramLabel = "WHAT",
            description = "circuits, parts, faults, units or all")
    What what;

    @Option(names = "--full", description = "all of it, not only what fits on one screen")
    boolean full;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        boolean shown = what.sections.contains(ListAnswer.Listing.CIRCUITS);
        List<ReadyCircuit> ready = shown && !full ? ReadyCircuit.all() : List.of();
        List<DescribedCircuit> circuits = shown && full
                ? Library.names().stream()
                        .map(name -> Circuits.load(name, spec.commandLine().getErr()))
                        .toList()
                : List.of();
        ListAnswer answer = new ListAnswer(what.sections, ready, circuits);
        spec.commandLine().getOut().print(full ? answer.full() : answer.screen());
        return HotIdle.DONE;
    }
}

package hotidle.cli;

import hotidle.answer.list.BuildListing;
import hotidle.answer.list.FaultListing;
import hotidle.answer.list.JobListing;
import hotidle.answer.list.ListAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadyCircuit;
import hotidle.fault.UnitFaults;
import hotidle.study.JobPlace;
import hotidle.transmission.Workshop;
import java.util.List;
import java.util.Optional;
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
                "Lists the ready circuits with their builds and oils, the kinds of parts and of faults, and the units; of one"
                        + " circuit its builds, its jobs, or the faults that it can have.")
final class ListCommand implements Callable<Integer> {

    @Parameters(
            arity = "0..2",
            paramLabel = "WHAT",
            description =
                    "circuits, parts, faults, units or all; or a circuit: its builds; or jobs or faults and a circuit: what"
                            + " --job or --fault takes there. Default: all")
    List<String> what = List.of();

    @Option(names = "--full", description = "all of it, not only what fits on one screen")
    boolean full;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(text(what.isEmpty() ? "all" : what.get(0)));
        return HotIdle.DONE;
    }

    private String text(String word) {
        if (word.equalsIgnoreCase(ListWord.JOBS)) {
            return jobs();
        }
        Optional<ListWord> listed = ListWord.of(word);
        if (what.size() > 1 && listed.equals(Optional.of(ListWord.FAULTS))) {
            DescribedCircuit circuit = load(what.get(1));
            return new FaultListing(
                            circuit.name(),
                            UnitFaults.of(
                                    circuit.adjustables().values().iterator().next()))
                    .text();
        }
        if (listed.isEmpty()) {
            ListWord.refuseUnknown(word);
        }
        if (what.size() > 1) {
            throw new WrongInputException("hotidle: list " + word + " takes no '" + what.get(1)
                    + "' behind it\nmend: hotidle list " + word + ", or hotidle list " + ListWord.JOBS
                    + " CIRCUIT or hotidle list faults CIRCUIT");
        }
        if (listed.isEmpty()) {
            return new BuildListing(load(word)).text();
        }
        return words(listed.get());
    }

    private String words(ListWord listed) {
        boolean shown = listed.sections().contains(ListAnswer.Listing.CIRCUITS);
        List<ReadyCircuit> ready = shown && !full ? ReadyCircuit.all() : List.of();
        List<DescribedCircuit> circuits =
                shown && full ? Library.names().stream().map(this::load).toList() : List.of();
        ListAnswer answer = new ListAnswer(listed.sections(), ready, circuits);
        return full ? answer.full() : answer.screen();
    }

    private String jobs() {
        if (what.size() < 2) {
            throw new WrongInputException(
                    "hotidle: list " + ListWord.JOBS + ": jobs are those of a circuit\nmend: hotidle list "
                            + ListWord.JOBS + " shuttle-five, for example");
        }
        DescribedCircuit circuit = load(what.get(1));
        boolean named = circuit.workshop(circuit.unit().build()).isPresent();
        List<Workshop> shops = circuit.adjustables().values().stream()
                .map(build -> circuit.workshop(build.unit().build()).orElseGet(() -> JobPlace.workshop(build)))
                .toList();
        return new JobListing(circuit.name(), named, shops).text();
    }

    private DescribedCircuit load(String circuit) {
        return Circuits.load(circuit, spec.commandLine().getErr());
    }
}

package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.kind.Kinds;
import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists circuits with their builds, kinds of parts, oils and units. */
@Command(
        name = "list",
        mixinStandardHelpOptions = true,
        description = "Lists the ready circuits with their builds and oils, the kinds of parts and the units.")
final class ListCommand implements Callable<Integer> {

    /** What can be listed. */
    enum What {
        CIRCUITS,
        PARTS,
        UNITS,
        ALL
    }

    @Parameters(
            arity = "0..1",
            defaultValue = "all",
            paramLabel = "WHAT",
            description = "circuits, parts, units or all")
    What what;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (what == What.CIRCUITS || what == What.ALL) {
            out.println("circuits");
            Library.names()
                    .forEach(name ->
                            circuit(out, Circuits.load(name, spec.commandLine().getErr())));
        }
        if (what == What.PARTS || what == What.ALL) {
            out.println("kinds of parts");
            Kinds.ALL.forEach(kind -> out.println("  " + kind.word() + ": " + kind.about()));
            if (what == What.ALL) {
                out.println();
            }
        }
        if (what == What.UNITS || what == What.ALL) {
            out.println("units");
            for (Dimension dimension : Dimension.values()) {
                List<String> units = Units.of(dimension);
                if (!units.isEmpty()) {
                    String name = dimension.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                    out.println("  " + name + ": " + String.join(", ", units));
                }
            }
        }
        return HotIdle.DONE;
    }

    private static void circuit(PrintWriter out, DescribedCircuit circuit) {
        out.println("  " + Choice.headed(circuit.name(), circuit.about()));
        circuit.builds().forEach(build -> out.println("    build " + Choice.headed(build.name(), build.about())));
        out.println("    duty points: "
                + String.join(
                        ", ",
                        circuit.unit().duties().stream()
                                .map(duty -> duty.name())
                                .toList()));
        out.println("    oils: " + String.join(", ", circuit.oils()));
        out.println();
    }
}

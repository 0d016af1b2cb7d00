package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.text.Problem;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks a circuit file and says what it leaves to the program. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks a circuit file: every fault with its place, then what the file leaves to the program.")
final class CheckCommand implements Callable<Integer> {

    @Parameters(paramLabel = "FILE", description = "a circuit file, or the name of a ready circuit")
    String file;

    @Option(names = "--units", defaultValue = "shop", description = "shop, metric or si. Default: shop")
    Quantity.UnitSystem units;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        ReadCircuit read = Circuits.read(file);
        PrintWriter out = spec.commandLine().getOut();
        if (read.circuit().isEmpty()) {
            long errors = read.problems().stream()
                    .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                    .count();
            throw new WrongInputException(Circuits.text(read.problems()) + "\n" + file + ": " + count(errors, "error"));
        }
        read.problems().forEach(problem -> spec.commandLine().getErr().println(problem.text()));
        DescribedCircuit circuit = read.circuit().get();
        out.println(circuit.name() + ": " + count(circuit.nodes().size(), "node") + ", "
                + count(circuit.parts().size(), "part") + ", "
                + count(circuit.builds().size(), "build") + ", "
                + count(circuit.sizes().size(), "size") + " that wear, "
                + count(read.problems().size(), "warning"));
        out.println();
        out.print(sizes(circuit));
        out.println();
        out.println("left to the program");
        TextTable defaults = new TextTable(List.of("key", "value", "source"));
        circuit.defaults().forEach(line -> defaults.add(List.of(line.where(), line.value(), line.source())));
        out.print(defaults.aligned());
        return HotIdle.DONE;
    }

    private String sizes(DescribedCircuit circuit) {
        String unit = Quantity.TRAVEL.in(units).unit();
        TextTable table = new TextTable(List.of("size", "new " + unit, "limit " + unit, "measured " + unit, ""));
        for (DescribedCircuit.SizeLine size : circuit.sizes()) {
            table.add(List.of(
                    size.part() + "." + size.key(),
                    length(size.fresh()),
                    size.limit().isPresent() ? length(size.limit().getAsDouble()) : "-",
                    size.measured().isPresent() ? length(size.measured().getAsDouble()) : "-",
                    size.measured().isPresent() ? "" : "not measured: assumed new"));
        }
        return table.aligned();
    }

    /** A size to a tenth of a thousandth of an inch, or a micrometre. */
    private String length(double metres) {
        String pattern = units == Quantity.UnitSystem.SI ? "%.7f" : units == Quantity.UnitSystem.SHOP ? "%.4f" : "%.3f";
        return String.format(java.util.Locale.ROOT, pattern, Quantity.TRAVEL.value(units, metres));
    }

    private static String count(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}

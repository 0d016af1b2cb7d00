package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Wrap;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.check.NotJudged;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.text.Problem;
import hotidle.oil.Oil;
import hotidle.part.PumpChamber;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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

    @Option(names = "--all", description = "lists every value left to the program, not only each sort of them once")
    boolean all;

    @Mixin
    FilledSheet sheet;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        ReadCircuit read = Circuits.read(file, sheet.file());
        PrintWriter out = spec.commandLine().getOut();
        if (read.circuit().isEmpty()) {
            throw new WrongInputException(Circuits.text(read.problems()) + "\n" + totals(read.problems()));
        }
        read.problems().forEach(problem -> spec.commandLine().getErr().println(problem.text()));
        DescribedCircuit circuit = read.circuit().get();
        out.println(circuit.name() + ": " + count(circuit.nodes().size(), "node") + ", "
                + count(circuit.parts().size(), "part") + ", "
                + count(circuit.builds().size(), "build") + ", "
                + count(circuit.sizes().size(), "size") + " that wear, "
                + count(read.problems().size(), "warning"));
        out.println(oil(circuit.unit(circuit.builds().get(0).name()).oil()));
        displacements(circuit, units).ifPresent(out::println);
        circuit.sheet().ifPresent(build -> out.println(Circuits.measured(circuit, build)));
        if (!circuit.sizes().isEmpty()) {
            out.println();
            out.print(SizesText.of(circuit, units));
        }
        Map<String, List<String>> unjudged = NotJudged.of(circuit.unit());
        if (!unjudged.isEmpty()) {
            out.println();
            out.print(unjudged(unjudged));
        }
        out.println();
        out.println("left to the program" + (all ? "" : ", each value once (--all lists it for each part)"));
        out.print(all ? each(circuit) : DefaultsText.of(circuit));
        return HotIdle.DONE;
    }

    /** What each pump chamber displaces in a turn, which a builder knows of his pump. */
    private static Optional<String> displacements(DescribedCircuit circuit, Quantity.UnitSystem units) {
        List<String> each = circuit.unit().network().parts().stream()
                .filter(placed -> placed.part() instanceof PumpChamber)
                .map(placed -> placed.name() + " displaces "
                        + Quantity.DISPLACEMENT.with(units, ((PumpChamber) placed.part()).displacement()))
                .toList();
        return each.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", each));
    }

    /** How many errors each file has: the circuit, what it is based on, a sheet. */
    private static String totals(List<Problem> problems) {
        Map<String, Long> errors = problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .collect(Collectors.groupingBy(
                        problem -> problem.position().file(), LinkedHashMap::new, Collectors.counting()));
        return errors.entrySet().stream()
                .map(file -> file.getKey() + ": " + count(file.getValue(), "error"))
                .collect(Collectors.joining("\n"));
    }

    /** The oil with its viscosity index, by which a user knows it again, and where its viscosity was measured. */
    private String oil(Oil oil) {
        String measured = oil.line().b() == 0
                ? "one viscosity at every temperature"
                : "viscosity measured at "
                        + Quantity.TEMPERATURE.with(units, oil.line().coldest()) + " and "
                        + Quantity.TEMPERATURE.with(units, oil.line().hottest());
        String index = oil.viscosityIndex().isPresent()
                ? ", viscosity index " + Math.round(oil.viscosityIndex().getAsDouble()) + " (ASTM D2270)"
                : "";
        return "oil " + oil.name() + ": " + measured + index;
    }

    private static String unjudged(Map<String, List<String>> unjudged) {
        String names = unjudged.entrySet().stream()
                .map(one -> one.getKey() + " (" + String.join(", ", one.getValue()) + ")")
                .collect(Collectors.joining(", "));
        return Wrap.lines(
                "Not judged, since no duty point is in a range that applies it: " + names
                        + ". 'margins' says nothing of it before there is a duty point in such a range.",
                "",
                "  ");
    }

    private static String each(DescribedCircuit circuit) {
        StringBuilder text = new StringBuilder();
        circuit.defaults()
                .forEach(line -> text.append("  " + line.where() + ": " + line.value() + "; " + line.source() + "\n"));
        return text.toString();
    }

    private static String count(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}

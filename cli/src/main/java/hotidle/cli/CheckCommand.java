package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.text.Problem;
import hotidle.oil.Oil;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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

    /** Below this a length is shown as a clearance [m]. */
    private static final double SMALL = 1e-3;

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
        circuit.sheet().ifPresent(build -> out.println(Circuits.measured(circuit, build)));
        if (!circuit.sizes().isEmpty()) {
            out.println();
            out.print(sizes(circuit));
        }
        out.println();
        out.println("left to the program" + (all ? "" : ", each value once (--all lists it for each part)"));
        out.print(all ? each(circuit) : DefaultsText.of(circuit));
        return HotIdle.DONE;
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

    private static String each(DescribedCircuit circuit) {
        StringBuilder text = new StringBuilder();
        circuit.defaults()
                .forEach(line -> text.append("  " + line.where() + ": " + line.value() + "; " + line.source() + "\n"));
        return text.toString();
    }

    private String sizes(DescribedCircuit circuit) {
        TextTable table = new TextTable(List.of("size", "new", "limit", "measured", ""));
        for (DescribedCircuit.SizeLine size : circuit.sizes()) {
            String name = size.part() + "." + size.key();
            Optional<String> measured = measured(circuit, size);
            table.add(List.of(
                    name,
                    length(size.fresh()),
                    size.limit().isPresent() ? length(size.limit().getAsDouble()) : "-",
                    measured.orElse("-"),
                    measured.isPresent() ? "" : "not measured: assumed new"));
        }
        return table.aligned();
    }

    /** What the sheet says, where there is one; otherwise what the file says. */
    private Optional<String> measured(DescribedCircuit circuit, DescribedCircuit.SizeLine size) {
        if (circuit.sheet().isEmpty()) {
            return size.measured().isPresent()
                    ? Optional.of(length(size.measured().getAsDouble()))
                    : Optional.empty();
        }
        return circuit.builds().stream()
                .filter(build -> build.name().equals(circuit.sheet().get()))
                .flatMap(build -> build.changes().stream())
                .filter(change -> change.what().equals(size.part() + "." + size.key()))
                .map(change -> change.value().replaceFirst("^to ", ""))
                .findFirst();
    }

    /** A size with its unit; a clearance in thousandths of an inch, or micrometres, so that it shows. */
    private String length(double metres) {
        boolean small = Math.abs(metres) < SMALL;
        return switch (units) {
            case SHOP -> small ? text("%.2f thou", metres / 25.4e-6) : text("%.4f in", metres / 0.0254);
            case METRIC -> small ? text("%.1f um", metres * 1e6) : text("%.3f mm", metres * 1e3);
            case SI -> text("%.9f m", metres);
        };
    }

    private static String text(String pattern, double value) {
        return String.format(Locale.ROOT, pattern, value);
    }

    private static String count(long count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}

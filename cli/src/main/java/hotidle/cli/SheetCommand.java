package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.SheetPhrase;
import hotidle.answer.sheet.SheetAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.SheetWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a sheet to fill in at the bench. */
@Command(
        name = "sheet",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a measurement sheet to fill in with a spreadsheet: a row for each fit that wears. Without --out it is printed.",
            "Filled in, '--sheet FILE.csv' makes a build of it in every command. What is left blank is not measured.",
            "With --readings it is a sheet of gauge readings for 'hotidle gauge'."
        })
final class SheetCommand implements Callable<Integer> {

    @Parameters(paramLabel = "CIRCUIT", description = "a ready circuit (see 'hotidle list') or a circuit file")
    String circuit;

    @Option(
            names = "--out",
            paramLabel = "FILE.csv",
            description = "file to write; it must be new. Default: the sheet is printed")
    Path out;

    @Option(
            names = "--readings",
            description = "a sheet of gauge readings: taps, ranges, speeds and temperatures filled in, readings empty")
    boolean readings;

    @Option(
            names = "--expected",
            description =
                    "a sheet of gauge readings with what a sound build reads beside each: 95 of 100 sound units lie"
                            + " between, before the gauge's own error")
    boolean expected;

    @Option(
            names = "--build",
            paramLabel = "BUILD",
            description = "the build of which readings are taken. Default: the circuit's first")
    String build;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            defaultValue = "shop",
            description = "shop (new sizes and limits in inches), metric or si (in millimetres). Default: shop")
    Quantity.UnitSystem units;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        DescribedCircuit described = Circuits.load(circuit, spec.commandLine().getErr());
        if (readings || expected) {
            return new ReadingsRun(spec, units).run(described, build, expected, Optional.ofNullable(out));
        }
        if (build != null) {
            throw new WrongInputException(
                    "hotidle: --build goes with --readings or --expected: a measurement sheet is the"
                            + " same for every build\nmend: leave --build out");
        }
        SheetWriter.LengthUnit unit =
                units == Quantity.UnitSystem.SHOP ? SheetWriter.LengthUnit.INCH : SheetWriter.LengthUnit.MM;
        SheetAnswer sheet = new SheetAnswer(described.measurementSheet(unit));
        if (out == null) {
            spec.commandLine().getOut().print(sheet.screen());
        } else {
            NewFile.write("--out", out, sheet.file());
            spec.commandLine()
                    .getErr()
                    .println(SheetPhrase.written(
                            out, sheet.rows(), described.sizes().size()));
        }
        return HotIdle.DONE;
    }
}

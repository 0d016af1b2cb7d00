package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.SheetPhrase;
import hotidle.answer.sheet.SheetAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.SheetWriter;
import hotidle.transmission.Adjustable;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
            "With --readings it is a sheet of gauge readings for 'hotidle gauge'; with --expected it says beside each what the"
                    + " unit is to read, after --job and --set too."
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

    @Mixin
    private FilledSheet measured;

    @Mixin
    private JobOption jobs;

    @Mixin
    private AskedPressure set;

    /** Known only to say what to ask instead. */
    @Option(names = "--fault", hidden = true)
    private String fault;

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        if (fault != null) {
            throw new WrongInputException("hotidle: --fault " + fault
                    + ": a sheet says what a sound unit reads\nmend: what gauges read with a fault: hotidle sweep "
                    + circuit + " --fault " + fault + " --plot-taps taps.svg");
        }
        if (readings || expected) {
            return readings();
        }
        forReadingsOnly("--build", build != null);
        forReadingsOnly("--job", !jobs.named().isEmpty());
        forReadingsOnly("--set", set.given());
        forReadingsOnly("--sheet", measured.file().isPresent());
        DescribedCircuit described = Circuits.load(circuit, spec.commandLine().getErr());
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

    /** What to read on a build after the work that is asked for. */
    private int readings() {
        PrintWriter err = spec.commandLine().getErr();
        DescribedCircuit described = Circuits.load(circuit, measured.file(), err, new ReadInputs());
        BuildWork work = new BuildWork(jobs.named(), set.pressure(), new FaultOption());
        Adjustable chosen = work.on(described, List.of(Circuits.adjustable(described, build)), units)
                .first();
        if (work.given()) {
            err.println(work.said(units));
        }
        return new ReadingsRun(spec, units).run(chosen, expected, Optional.ofNullable(out));
    }

    private static void forReadingsOnly(String option, boolean given) {
        if (given) {
            throw new WrongInputException("hotidle: " + option
                    + " goes with --readings or --expected: a measurement sheet is the"
                    + " same for every build\nmend: leave " + option + " out");
        }
    }
}

package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.format.Rpm;
import hotidle.answer.phrase.SheetPhrase;
import hotidle.answer.sheet.SheetAnswer;
import hotidle.circuits.sheet.ReadingsWriter;
import hotidle.study.gauge.AcceptanceSheet;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Tap;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;

/** Writes a sheet of gauge readings. */
record ReadingsRun(CommandSpec spec, Quantity.UnitSystem units) {

    int run(Adjustable chosen, boolean expected, Optional<Path> out) {
        PrintWriter err = spec.commandLine().getErr();
        AcceptanceSheet sheet = AcceptanceSheet.of(chosen);
        SheetAnswer answer = new SheetAnswer(ReadingsWriter.write(
                sheet,
                chosen.unit().taps().stream().collect(Collectors.toMap(Tap::name, Tap::port)),
                units == Quantity.UnitSystem.SHOP ? ReadingsWriter.SheetUnits.SHOP : ReadingsWriter.SheetUnits.METRIC,
                expected));
        sheet.unsolved().forEach(point -> err.println(SheetPhrase.notExpected(point.range(), Rpm.of(point.speed()))));
        if (out.isEmpty()) {
            spec.commandLine().getOut().print(answer.screen());
        } else {
            NewFile.write("--out", out.get(), answer.file());
            err.println(SheetPhrase.readingsWritten(out.get(), sheet.lines().size()));
        }
        return sheet.unsolved().isEmpty() ? HotIdle.DONE : HotIdle.UNSOLVED;
    }
}

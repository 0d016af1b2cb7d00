package hotidle.cli;

import hotidle.answer.format.Quantity;
import hotidle.answer.gauge.GaugeAnswer;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.sheet.GaugeReadings;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** Option of what gauges read of a unit, shown beside what is solved. */
final class ReadingsOption {

    @Option(
            names = "--readings",
            paramLabel = "FILE.csv",
            description = "a filled sheet of gauge readings, taken on the first build named (see 'hotidle sheet CIRCUIT"
                    + " --readings')")
    private Path file;

    /**
     * A sheet of readings.
     *
     * @param file its name
     * @param read what stands in it
     */
    record TakenReadings(String file, GaugeReadings read) {

        /** What they say of a build, without a word of how far that is. */
        GaugeAnswer answer(Quantity.UnitSystem units, DescribedCircuit circuit, String build) {
            return new GaugeRun(new PrintWriter(Writer.nullWriter()), circuit.adjustable(build))
                    .answer(units, circuit, file, read);
        }
    }

    /**
     * The readings; empty where none were given. Warnings go to {@code err}, the file to {@code inputs}.
     *
     * @throws WrongInputException where it is not there or has errors
     */
    Optional<TakenReadings> of(Transmission unit, ReadInputs inputs, PrintWriter err) {
        if (file == null) {
            return Optional.empty();
        }
        inputs.add(file.toString(), Circuits.bytes(file, "--readings "));
        return Optional.of(new TakenReadings(file.getFileName().toString(), ReadingsFile.read(file, unit, err)));
    }
}

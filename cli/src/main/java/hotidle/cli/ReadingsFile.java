package hotidle.cli;

import hotidle.circuits.sheet.GaugeReadings;
import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.sheet.ReadingsReader;
import hotidle.transmission.Transmission;
import java.io.PrintWriter;
import java.nio.file.Path;

/** A filled sheet of gauge readings. */
final class ReadingsFile {

    private ReadingsFile() {}

    /**
     * Reads it; warnings go to {@code err}.
     *
     * @throws WrongInputException where it is not there or has errors
     */
    static GaugeReadings read(Path file, Transmission unit, PrintWriter err) {
        GaugeReadings read =
                ReadingsReader.read(MeasurementSheet.of(file.toString(), Circuits.bytes(file, "--readings ")), unit);
        if (read.wrong()) {
            throw new WrongInputException(Circuits.text(read.problems()));
        }
        read.problems().forEach(problem -> err.println(problem.text()));
        return read;
    }
}

package hotidle.cli;

import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.UnknownBuildException;
import hotidle.circuits.text.Problem;
import hotidle.duty.Unit;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Finds a circuit by its library name or its file, and the builds that were asked for. */
final class Circuits {

    private Circuits() {}

    /**
     * Reads a circuit; warnings go to {@code err}.
     *
     * @throws WrongInputException where it is not there or has errors
     */
    static DescribedCircuit load(String nameOrFile, PrintWriter err) {
        ReadCircuit read = read(nameOrFile);
        if (read.circuit().isEmpty()) {
            throw new WrongInputException(text(read.problems()));
        }
        read.problems().forEach(problem -> err.println(problem.text()));
        return read.circuit().get();
    }

    /** What reading gives, problems and all. */
    static ReadCircuit read(String nameOrFile) {
        Path file = Path.of(nameOrFile);
        if (Files.isDirectory(file)) {
            throw new WrongInputException("hotidle: " + nameOrFile + " is a folder; name a circuit file in it");
        }
        if (Files.isRegularFile(file)) {
            try {
                return CircuitReader.read(Files.readAllBytes(file), nameOrFile);
            } catch (IOException e) {
                throw new WrongInputException("hotidle: " + nameOrFile + " cannot be read: " + e.getMessage());
            }
        }
        return Library.text(nameOrFile)
                .map(text -> CircuitReader.read(text, nameOrFile + ".yaml"))
                .orElseThrow(() -> new WrongInputException("hotidle: there is no file " + nameOrFile
                        + ", nor a ready circuit of that name\nready circuits: " + String.join(", ", Library.names())));
    }

    static String text(List<Problem> problems) {
        return problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
    }

    /** The units of the builds asked for; the circuit's first build where none was. */
    static List<Unit> units(DescribedCircuit circuit, List<String> builds) {
        try {
            return builds.isEmpty()
                    ? List.of(circuit.unit())
                    : builds.stream().distinct().map(circuit::unit).toList();
        } catch (UnknownBuildException e) {
            throw new WrongInputException(e.problem().text());
        }
    }
}

package hotidle.cli;

import hotidle.answer.phrase.SheetPhrase;
import hotidle.circuits.BaseFiles;
import hotidle.circuits.CircuitReader;
import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.Library;
import hotidle.circuits.ReadCircuit;
import hotidle.circuits.UnknownBuildException;
import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.text.Problem;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
        return load(nameOrFile, Optional.empty(), err);
    }

    /**
     * The same with the build that a measurement sheet makes, which then is the first one.
     *
     * @throws WrongInputException where circuit or sheet is not there or has errors
     */
    static DescribedCircuit load(String nameOrFile, Optional<Path> sheet, PrintWriter err) {
        return load(nameOrFile, sheet, err, new ReadInputs());
    }

    /**
     * The same.
     *
     * @param inputs gets every file that was read
     * @throws WrongInputException where circuit or sheet is not there or has errors
     */
    static DescribedCircuit load(String nameOrFile, Optional<Path> sheet, PrintWriter err, ReadInputs inputs) {
        ReadCircuit read = read(nameOrFile, sheet, inputs);
        if (read.circuit().isEmpty()) {
            throw new WrongInputException(text(read.problems()));
        }
        read.problems().forEach(problem -> err.println(problem.text()));
        DescribedCircuit circuit = read.circuit().get();
        circuit.sheet()
                .ifPresent(build -> err.println(SheetPhrase.filled(
                                build, circuit.measured(build), circuit.sizes().size())
                        + "; 'hotidle check' with the same --sheet lists them"));
        circuit.reduced().forEach(err::println);
        return circuit;
    }

    /** What reading gives, problems and all. */
    static ReadCircuit read(String nameOrFile, Optional<Path> sheet) {
        return read(nameOrFile, sheet, new ReadInputs());
    }

    /**
     * A circuit file that was written just now.
     *
     * @throws WrongInputException where it has errors
     */
    static DescribedCircuit written(String text, String fileName, ReadInputs inputs) {
        inputs.add(fileName, text);
        ReadCircuit read = CircuitReader.read(text, fileName, bases(inputs), Optional.empty());
        return read.circuit().orElseThrow(() -> new WrongInputException(text(read.problems())));
    }

    private static BaseFiles bases(ReadInputs inputs) {
        return (name, from) -> {
            Optional<BaseFiles.FoundFile> found = base(name, from);
            found.ifPresent(one -> inputs.add(one.name(), one.text()));
            return found;
        };
    }

    private static ReadCircuit read(String nameOrFile, Optional<Path> sheet, ReadInputs inputs) {
        Path file = Path.of(nameOrFile);
        if (Files.isDirectory(file)) {
            throw new WrongInputException("hotidle: " + nameOrFile + " is a folder; name a circuit file in it");
        }
        Optional<MeasurementSheet> filled = sheet.map(path -> sheet(path, inputs));
        BaseFiles bases = bases(inputs);
        if (Files.isRegularFile(file)) {
            byte[] content = bytes(file, "");
            inputs.add(nameOrFile, content);
            return CircuitReader.read(content, nameOrFile, bases, filled);
        }
        return Library.text(nameOrFile)
                .map(text -> {
                    inputs.add(nameOrFile + ".yaml", text);
                    return CircuitReader.read(text, nameOrFile + ".yaml", bases, filled);
                })
                .orElseThrow(() -> new WrongInputException("hotidle: there is no file " + nameOrFile
                        + ", nor a ready circuit of that name\nready circuits: " + String.join(", ", Library.names())));
    }

    private static MeasurementSheet sheet(Path file, ReadInputs inputs) {
        byte[] content = bytes(file, "--sheet ");
        inputs.add(file.toString(), content);
        return MeasurementSheet.of(file.toString(), content);
    }

    static byte[] bytes(Path file, String option) {
        if (!Files.isRegularFile(file)) {
            throw new WrongInputException("hotidle: " + option + file + ": there is no such file");
        }
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new WrongInputException("hotidle: " + option + file + " cannot be read: " + FileReason.of(e));
        }
    }

    /** A file beside the one that is based on it, or a ready circuit. */
    private static Optional<BaseFiles.FoundFile> base(String name, String from) {
        try {
            Path file = Path.of(from).resolveSibling(name).normalize();
            if (Files.isRegularFile(file)) {
                return Optional.of(
                        new BaseFiles.FoundFile(file.toString(), new String(bytes(file, ""), StandardCharsets.UTF_8)));
            }
        } catch (InvalidPathException none) {
            return Optional.empty();
        }
        return BaseFiles.LIBRARY.find(name, from);
    }

    static String text(List<Problem> problems) {
        return problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
    }

    /** The build asked for, with the sizes of it that can be changed; the circuit's first build where none was. */
    static Adjustable adjustable(DescribedCircuit circuit, String build) {
        try {
            return circuit.adjustable(build == null ? circuit.builds().get(0).name() : build);
        } catch (UnknownBuildException e) {
            throw new WrongInputException(e.problem().text());
        }
    }

    /** The builds asked for, with the sizes of them that can be changed; the circuit's first build where none was. */
    static List<Adjustable> adjustable(DescribedCircuit circuit, List<String> builds) {
        return units(circuit, builds).stream()
                .map(unit -> circuit.adjustable(unit.build()))
                .toList();
    }

    /** The units of the builds asked for; the circuit's first build where none was. */
    static List<Transmission> units(DescribedCircuit circuit, List<String> builds) {
        try {
            return builds.isEmpty()
                    ? List.of(circuit.unit())
                    : builds.stream().distinct().map(circuit::unit).toList();
        } catch (UnknownBuildException e) {
            throw new WrongInputException(e.problem().text());
        }
    }
}

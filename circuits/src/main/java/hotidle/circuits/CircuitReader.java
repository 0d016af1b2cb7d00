package hotidle.circuits;

import hotidle.circuits.sheet.MeasurementSheet;
import hotidle.circuits.text.Fault;
import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problem;
import hotidle.circuits.text.ProblemCode;
import hotidle.circuits.text.Problems;
import hotidle.circuits.text.Value;
import hotidle.circuits.text.Yaml;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Reads circuit files. Whatever stands in one, the answer is a circuit or a list of problems, never an exception. */
public final class CircuitReader {

    private CircuitReader() {}

    /**
     * Reads a file.
     *
     * @param text     what stands in it
     * @param fileName what it is called in messages
     */
    public static ReadCircuit read(String text, String fileName) {
        return read(text, fileName, BaseFiles.LIBRARY, Optional.empty());
    }

    /**
     * Reads a file.
     *
     * @param text     what stands in it
     * @param fileName what it is called in messages
     * @param bases    finds the files that it is based on
     * @param sheet    a filled measurement sheet, of which a build is made
     */
    public static ReadCircuit read(String text, String fileName, BaseFiles bases, Optional<MeasurementSheet> sheet) {
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Problems problems = new Problems(fileName, plain);
        Optional<Value> tree = Yaml.read(plain, problems);
        if (tree.isPresent() && !(tree.get() instanceof Value.Entries)) {
            problems.error(
                    tree.get().place(),
                    ProblemCode.NO_CIRCUIT,
                    "this is no circuit",
                    "a circuit file begins with keys",
                    "write circuit: and its name first");
        }
        Optional<Value.Entries> whole = tree.isPresent() && tree.get() instanceof Value.Entries file
                ? BasedOn.whole(file, fileName, problems, bases)
                : Optional.empty();
        Optional<DescribedCircuit> circuit =
                whole.flatMap(file -> new CircuitAssembly(file, problems, sheet).circuit());
        return new ReadCircuit(problems.anyError() ? Optional.empty() : circuit, problems.inOrder());
    }

    /** The same without a base or a sheet, from the bytes of a file. */
    public static ReadCircuit read(byte[] bytes, String fileName) {
        return read(bytes, fileName, BaseFiles.LIBRARY, Optional.empty());
    }

    /** The same from the bytes of a file, which must be UTF-8. */
    public static ReadCircuit read(byte[] bytes, String fileName, BaseFiles bases, Optional<MeasurementSheet> sheet) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return read(text, fileName, bases, sheet);
        } catch (CharacterCodingException other) {
            Problem problem = new Problems(fileName, "")
                    .problem(
                            Place.START,
                            Problem.Severity.ERROR,
                            Fault.of(
                                    ProblemCode.NOT_UTF8,
                                    "the file is not in UTF-8",
                                    "circuit files are plain text in UTF-8",
                                    "save it as UTF-8 in your editor"));
            return new ReadCircuit(Optional.empty(), List.of(problem));
        }
    }
}

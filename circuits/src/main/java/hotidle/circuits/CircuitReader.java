package hotidle.circuits;

import hotidle.circuits.text.Place;
import hotidle.circuits.text.Problem;
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
        String plain = text.startsWith("\uFEFF") ? text.substring(1) : text;
        Problems problems = new Problems(fileName, plain);
        Optional<Value> tree = Yaml.read(plain, problems);
        if (tree.isPresent() && !(tree.get() instanceof Value.Entries)) {
            problems.error(
                    tree.get().place(),
                    "this is no circuit",
                    "a circuit file begins with keys",
                    "write circuit: and its name first");
        }
        Optional<DescribedCircuit> circuit = tree.isPresent() && tree.get() instanceof Value.Entries file
                ? new CircuitAssembly(file, problems).circuit()
                : Optional.empty();
        return new ReadCircuit(problems.anyError() ? Optional.empty() : circuit, problems.inOrder());
    }

    /** The same from the bytes of a file, which must be UTF-8. */
    public static ReadCircuit read(byte[] bytes, String fileName) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return read(text, fileName);
        } catch (CharacterCodingException other) {
            Problem problem = new Problems(fileName, "")
                    .problem(
                            Place.START,
                            Problem.Severity.ERROR,
                            "the file is not in UTF-8",
                            "circuit files are plain text in UTF-8",
                            "save it as UTF-8 in your editor");
            return new ReadCircuit(Optional.empty(), List.of(problem));
        }
    }
}

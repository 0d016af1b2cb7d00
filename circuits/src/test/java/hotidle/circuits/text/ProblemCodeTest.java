package hotidle.circuits.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A rule has a code of its own, so that it can be found, and asked for, without its sentence. */
class ProblemCodeTest {

    private static final Pattern USE = Pattern.compile("\\bProblemCode\\.([A-Z_0-9]+)");

    /** What several readers can find in their own way: anything about keys in general, and what two ways of reading meet. */
    private static final Set<ProblemCode> SHARED = Set.of(
            ProblemCode.MISSING_KEY,
            ProblemCode.UNKNOWN_KEY,
            ProblemCode.NO_VALUE,
            ProblemCode.UNKNOWN_NAME,
            ProblemCode.WRONG_SHAPE,
            ProblemCode.NO_QUANTITY,
            ProblemCode.TWICE,
            ProblemCode.NOT_RISING,
            ProblemCode.AGAINST_WEAR,
            ProblemCode.NO_YAML,
            ProblemCode.NO_CIRCUIT,
            ProblemCode.SECOND_DOCUMENT,
            ProblemCode.ALIAS,
            ProblemCode.NOT_TO_BE_BUILT);

    private static List<String> uses() throws IOException {
        List<String> uses = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher matcher = USE.matcher(Files.readString(file));
                while (matcher.find()) {
                    uses.add(matcher.group(1));
                }
            }
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
        return uses;
    }

    @Test
    void everyRuleHasACodeOfItsOwn() throws IOException {
        List<String> uses = uses();
        for (ProblemCode code : ProblemCode.values()) {
            long used = uses.stream().filter(code.name()::equals).count();
            assertEquals(SHARED.contains(code) ? Math.max(used, 2) : 1, used, code + " is used " + used + " times");
        }
    }
}

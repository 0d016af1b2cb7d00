package hotidle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example of solver/README.md, compiled and run as it stands there: a reader who copies it sees what is printed there. */
class ReadmeExampleTest {

    private static final String FENCE = "```";
    private static final String PRINTS = "It prints\n\n    ";

    /** Every type of the solver's packages that the example may name. */
    private static final String IMPORTS = List.of("network", "newton", "oil", "part", "result").stream()
            .map(name -> "import hotidle." + name + ".*;\n")
            .reduce("import java.util.*;\n", String::concat);

    @TempDir
    Path folder;

    @Test
    void aReaderWhoCopiesTheExampleSeesWhatIsPrintedThere() throws IOException, ReflectiveOperationException {
        String readme = Files.readString(Path.of("README.md"));
        String example = readme.split(FENCE + "java\n", 2)[1].split(FENCE, 2)[0];
        String printed = readme.split(PRINTS, 2)[1].split("\n", 2)[0];
        assertEquals(printed, run(compiled(example)).strip());
    }

    private Path compiled(String example) throws IOException {
        Path source = Files.writeString(
                folder.resolve("Example.java"),
                IMPORTS + "public class Example { public static void run() {\n" + example + "}}\n");
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int code = compiler.run(
                null,
                said,
                said,
                "-proc:none",
                "-cp",
                System.getProperty("java.class.path"),
                "-d",
                folder.toString(),
                source.toString());
        assertTrue(code == 0, said.toString(StandardCharsets.UTF_8));
        return folder;
    }

    private static String run(Path classes) throws IOException, ReflectiveOperationException {
        PrintStream before = System.out;
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        try (URLClassLoader loader =
                new URLClassLoader(new URL[] {classes.toUri().toURL()}, ReadmeExampleTest.class.getClassLoader())) {
            System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
            loader.loadClass("Example").getMethod("run").invoke(null);
        } catch (InvocationTargetException e) {
            throw new AssertionError(e.getCause());
        } finally {
            System.setOut(before);
        }
        return said.toString(StandardCharsets.UTF_8);
    }
}

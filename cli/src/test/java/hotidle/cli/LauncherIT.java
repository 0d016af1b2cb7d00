package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher, in a copy of the tree that holds itself and the jar. Where a test asks what is started and not what it answers, a
 * script stands for Java. Runs after the jar was packed.
 */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {

    /** Programs that the launcher calls beside Java and Maven. */
    private static final List<String> TOOLS = List.of(
            "sh",
            "basename",
            "cat",
            "cksum",
            "dirname",
            "find",
            "head",
            "id",
            "ls",
            "mkdir",
            "mv",
            "readlink",
            "rm",
            "sed",
            "touch",
            "tr");

    /** Makes the archive that it is asked for, and says how it was called. */
    private static final String PRETENDED = """
            #!/bin/sh
            case $1 in
              -XX:DumpLoadedClassList=*) echo list > "${1#*=}"; exit 0 ;;
              -Xshare:dump) echo archive >> "$MADE"; [ -z "${NONE:-}" ] || exit 1; echo x > "${3#*=}"; exit 0 ;;
            esac
            echo "$@"
            """;

    @TempDir
    Path folder;

    private Path tree;
    private Path launcher;

    @BeforeEach
    void copy() throws IOException {
        tree = Files.createDirectories(folder.resolve("a shop's folder"));
        launcher = tree.resolve("cli/hotidle");
        Files.createDirectories(tree.resolve("cli/target"));
        Files.copy(Path.of("hotidle"), launcher);
        assertTrue(launcher.toFile().setExecutable(true));
        Files.copy(Path.of("target/hotidle.jar"), tree.resolve("cli/target/hotidle.jar"));
    }

    private static final Map<String, String> QUICK = Map.of("HOTIDLE_NO_ARCHIVE", "1");

    private Run run(Map<String, String> environment, String... words) {
        try {
            ProcessBuilder builder = new ProcessBuilder(words).directory(folder.toFile());
            builder.environment().remove("JAVA_HOME");
            builder.environment().put("TMPDIR", folder.toString());
            builder.environment().putAll(environment);
            Path out = folder.resolve("out.txt");
            Path err = folder.resolve("err.txt");
            int code = builder.redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start()
                    .waitFor();
            return new Run(code, Files.readString(out), Files.readString(err));
        } catch (IOException | InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static void answers(Run run) {
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().startsWith("Hot Idle "), run.out());
        assertEquals("", run.err());
    }

    private static void wrong(Run run, String what, String mend) {
        assertEquals(2, run.code(), run.err());
        assertTrue(run.err().startsWith("hotidle: "), run.err());
        assertTrue(run.err().contains(what), run.err());
        assertTrue(run.err().contains("\nmend: "), run.err());
        assertTrue(run.err().contains(mend), run.err());
        assertEquals(2, run.err().lines().count(), run.err());
    }

    @Test
    void itRunsFromAFolderWithBlanksByShAndThroughALink() throws IOException {
        answers(run(QUICK, launcher.toString(), "--version"));
        answers(run(QUICK, "sh", launcher.toString(), "--version"));
        Path near = Files.createSymbolicLink(tree.resolve("near"), Path.of("cli/hotidle"));
        Path far = Files.createSymbolicLink(folder.resolve("hotidle"), near);
        answers(run(QUICK, far.toString(), "--version"));
        answers(run(QUICK, "./hotidle", "--version"));
    }

    @Test
    void aWrongJavaHomeIsToldAndNotPassedOver() {
        Run run = run(Map.of("JAVA_HOME", "/no/such/java"), launcher.toString(), "--version");
        wrong(run, "JAVA_HOME is /no/such/java", "unset JAVA_HOME");
    }

    @Test
    void anOldJavaIsToldByItsVersion() throws IOException {
        Run run = run(Map.of("JAVA_HOME", pretended("11.0.2").toString()), launcher.toString(), "--version");
        wrong(run, "is Java 11.0.2; Hot Idle needs 17 or newer", "install JDK 17");
    }

    @Test
    void withoutJavaOnThePathItSaysWhatToInstall() throws IOException {
        wrong(
                run(Map.of("PATH", tools().toString()), launcher.toString(), "list"),
                "no Java on the path",
                "install JDK 17");
    }

    @Test
    void aTreeThatIsNotBuiltAndCannotBeIsTold() throws IOException {
        Map<String, String> home = Map.of(
                "PATH", tools().toString(), "JAVA_HOME", pretended("17.0.1").toString());
        Files.delete(tree.resolve("cli/target/hotidle.jar"));
        wrong(run(home, launcher.toString(), "list"), "not built yet", "install Maven");
        Files.delete(tree.resolve("cli/target"));
        Files.createFile(tree.resolve("cli/target"));
        wrong(run(home, launcher.toString(), "list"), "cannot be written to", "copy the folder");
    }

    @Test
    void theArchiveOfClassesIsMadeOnceForEachJarAndJava() throws IOException {
        Map<String, String> home = Map.of(
                "JAVA_HOME",
                pretended("17.0.1").toString(),
                "MADE",
                folder.resolve("made").toString());
        String first = archiveOf(run(home, launcher.toString(), "list"));
        assertEquals(first, archiveOf(run(home, launcher.toString(), "list")));
        assertEquals(1, made());
        Files.writeString(tree.resolve("cli/target/hotidle.jar"), "another jar");
        String second = archiveOf(run(home, launcher.toString(), "list"));
        assertFalse(first.equals(second), second);
        assertEquals(2, made());
        pretended("17.0.2");
        String third = archiveOf(run(home, launcher.toString(), "list"));
        assertFalse(second.equals(third), third);
        assertEquals(3, made());
    }

    @Test
    void aJavaThatMakesNoArchiveIsAskedOnceAndTheCommandRuns() throws IOException {
        Map<String, String> home = Map.of(
                "JAVA_HOME",
                pretended("17.0.1").toString(),
                "MADE",
                folder.resolve("made").toString(),
                "NONE",
                "1");
        for (int start = 0; start < 2; start++) {
            Run run = run(home, launcher.toString(), "list");
            assertEquals(0, run.code(), run.err());
            assertFalse(run.out().contains("SharedArchiveFile"), run.out());
        }
        assertEquals(1, made());
    }

    @Test
    void whereNoArchiveCanBeWrittenItIsSaidOnceAndTheCommandRuns() throws IOException {
        Files.createFile(tree.resolve("cli/target/hotidle-start"));
        Map<String, String> home = Map.of("JAVA_HOME", pretended("17.0.1").toString());
        Run first = run(home, launcher.toString(), "list");
        assertEquals(0, first.code(), first.err());
        assertTrue(first.err().contains("cannot be written to, so each start takes"), first.err());
        assertEquals(1, first.err().lines().count(), first.err());
        Run second = run(home, launcher.toString(), "list");
        assertEquals(0, second.code(), second.err());
        assertEquals("", second.err());
    }

    @Test
    void withTheArchiveItAnswersTheSame() {
        Run without = run(QUICK, launcher.toString(), "explain", "line");
        Run making = run(Map.of(), launcher.toString(), "explain", "line");
        Run with = run(Map.of(), launcher.toString(), "explain", "line");
        assertEquals(without, making);
        assertEquals(without, with);
        assertTrue(tree.resolve("cli/target/hotidle-start").toFile().list().length == 1);
    }

    @Test
    void whatRunsLongEnoughIsLeftToTheBetterCompiler() throws IOException {
        Map<String, String> quick = Map.of("JAVA_HOME", pretended("17.0.1").toString(), "HOTIDLE_NO_ARCHIVE", "1");
        Map<String, Integer> levels = Map.of(
                "live training-rig", 4,
                "spread training-rig --samples 60000", 4,
                "spread training-rig --samples=10000 --pairs 0", 4,
                "spread training-rig --samples 2000 --seed 123456", 1,
                "spread training-rig --samples=9999", 1,
                "spread training-rig", 1,
                "compare training-rig --samples 60000", 1,
                "", 1);
        levels.forEach((words, level) -> {
            Run run = run(quick, (launcher + (words.isEmpty() ? "" : "|" + words.replace(' ', '|'))).split("\\|", -1));
            assertEquals(0, run.code(), run.err());
            assertTrue(run.out().contains(" -XX:TieredStopAtLevel=" + level + " "), words + ": " + run.out());
        });
    }

    private static String archiveOf(Run run) {
        assertEquals(0, run.code(), run.err());
        assertEquals("", run.err());
        return run.out().replaceFirst("(?s).*-XX:SharedArchiveFile=", "").replaceFirst("(?s)\\.jsa .*", "");
    }

    private long made() throws IOException {
        try (Stream<String> lines = Files.lines(folder.resolve("made"))) {
            return lines.count();
        }
    }

    /** A folder that looks like a Java of a version. */
    private Path pretended(String version) throws IOException {
        Path home = folder.resolve("java");
        Path java = Files.createDirectories(home.resolve("bin")).resolve("java");
        Files.writeString(java, PRETENDED);
        assertTrue(java.toFile().setExecutable(true));
        Files.writeString(home.resolve("release"), "JAVA_VERSION=\"" + version + "\"\n");
        return home;
    }

    /** A path on which neither Java nor Maven is. */
    private Path tools() throws IOException {
        Path tools = folder.resolve("tools");
        if (!Files.exists(tools)) {
            Files.createDirectories(tools);
            for (String tool : TOOLS) {
                Process which = new ProcessBuilder("sh", "-c", "command -v " + tool).start();
                String path = new String(which.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
                Files.createSymbolicLink(tools.resolve(tool), Path.of(path));
            }
        }
        return tools;
    }
}

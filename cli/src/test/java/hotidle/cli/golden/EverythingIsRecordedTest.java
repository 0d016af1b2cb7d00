package hotidle.cli.golden;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import hotidle.circuits.Library;
import hotidle.cli.HotIdle;
import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A command, an option or a ready circuit that is new is missed here until its output is recorded. */
class EverythingIsRecordedTest {

    /** Options by the command that has them, found as picocli finds them. */
    private static Map<String, List<Field>> commands() {
        Map<String, List<Field>> commands = new TreeMap<>();
        for (Class<?> command : HotIdle.class.getAnnotation(Command.class).subcommands()) {
            commands.put(command.getAnnotation(Command.class).name(), options(command));
        }
        return commands;
    }

    private static List<Field> options(Class<?> holder) {
        List<Field> options = new ArrayList<>();
        for (Field field : holder.getDeclaredFields()) {
            if (field.isAnnotationPresent(Option.class)) {
                options.add(field);
            } else if (field.isAnnotationPresent(Mixin.class)) {
                options.addAll(options(field.getType()));
            }
        }
        return options;
    }

    private static String name(Field option) {
        String[] names = option.getAnnotation(Option.class).names();
        return names[names.length - 1];
    }

    private static boolean takes(String command, String option) {
        return commands().get(command).stream().anyMatch(field -> name(field).equals(option));
    }

    private static List<Case> of(List<Case> cases, String command, Predicate<Case> which) {
        return cases.stream()
                .filter(one -> one.words().get(0).equals(command) && which.test(one))
                .toList();
    }

    private static boolean has(Case one, String option) {
        return one.words().stream().anyMatch(word -> word.equals(option) || word.startsWith(option + "="));
    }

    @Test
    void jsonIsRecordedOfEachCommandAndEachReadyCircuitOrItIsRefused() throws IOException {
        List<Case> cases = Case.recorded();
        List<Case> refused = MessagesGoldenTest.cases();
        List<String> missing = new ArrayList<>();
        for (String command : commands().keySet()) {
            for (String circuit : Library.names()) {
                Predicate<Case> asked = one -> one.words().contains(circuit);
                boolean sure = !takes(command, "--format")
                        || command.equals("part")
                        || !of(cases, command, asked.and(GoldenTest::json)).isEmpty()
                        || !of(refused, command, asked).isEmpty();
                if (!sure) {
                    missing.add(command + " " + circuit);
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void textCsvAndHelpAreRecordedOfEachCommand() throws IOException {
        List<Case> cases = Case.recorded();
        for (String command : commands().keySet()) {
            assertTrue(of(cases, command, one -> one.words().contains("--help")).size() > 0, command + " --help");
            assertTrue(
                    of(cases, command, one -> !has(one, "--format") && !has(one, "--help"))
                                    .size()
                            > 0,
                    command);
            if (takes(command, "--format")) {
                assertTrue(
                        of(cases, command, one -> one.command().contains("--format csv"))
                                        .size()
                                > 0,
                        command);
            }
        }
    }

    @Test
    void eachOptionIsUsedOnceAndGivenWronglyOnce() throws IOException {
        List<Case> cases = Case.recorded();
        List<Case> wrong = MessagesGoldenTest.cases();
        List<String> missing = new ArrayList<>();
        commands()
                .forEach((command, options) -> options.forEach(option -> {
                    String name = name(option);
                    boolean moved = option.getAnnotation(Option.class).hidden();
                    if (!moved && of(cases, command, one -> has(one, name)).isEmpty()) {
                        missing.add("cases.txt: " + command + " " + name);
                    }
                    if (option.getType() != boolean.class
                            && of(wrong, command, one -> has(one, name)).isEmpty()) {
                        missing.add("messages.txt: " + command + " " + name);
                    }
                }));
        assertEquals(List.of(), missing);
    }

    @Test
    void eachCommandIsAskedForAnOptionThatItDoesNotHave() throws IOException {
        assumeFalse(GoldenFiles.rewriting(), "the file is being written");
        String messages = Files.readString(GoldenFiles.ROOT.resolve("messages.txt"));
        commands()
                .keySet()
                .forEach(command ->
                        assertTrue(messages.contains(" is no option of hotidle " + command + "\n"), command));
    }

    @Test
    void aBuildServerNeverRecords() {
        assertThrows(AssertionError.class, () -> GoldenFiles.rewriting(true, "true"));
        assertTrue(GoldenFiles.rewriting(true, null) && !GoldenFiles.rewriting(false, "true"));
    }
}

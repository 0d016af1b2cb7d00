package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine.Command;

class RehearsalTest {

    /** These write a file of the user's, need one of his or ask him. */
    private static final Set<String> LEFT_OUT = Set.of("new", "sheet", "gauge", "report");

    @Test
    void eachCommandThatPutsNoFileBesideTheUsersIsRehearsed() {
        Set<String> rehearsed = Rehearsal.COMMANDS.stream()
                .map(command -> command.split(" ", -1)[0])
                .collect(Collectors.toCollection(TreeSet::new));
        Set<String> all = Arrays.stream(
                        HotIdle.class.getAnnotation(Command.class).subcommands())
                .map(command -> command.getAnnotation(Command.class).name())
                .filter(name -> !LEFT_OUT.contains(name))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(all, rehearsed);
    }

    @Test
    void whatIsRehearsedIsDoneAndNotRefused(@TempDir Path out) {
        Rehearsal.COMMANDS.forEach(command -> assertEquals(HotIdle.DONE, Rehearsal.run(command, out), command));
    }
}

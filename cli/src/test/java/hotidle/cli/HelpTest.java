package hotidle.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;

/** What stands in the help of every command, for whoever never saw the program from inside. */
class HelpTest {

    /** A word in capitals, with what parts its pieces: FILE, FILE.csv, KEY=FROM..TO, PART.key=LOW..HIGHunit, KIND[@PART]; or the one word
     * that it may be. */
    private static final String WORD = "[A-Z]+(\\[?[=.:@/]+[A-Za-z]+]?)*|balance";

    private static Map<String, CommandSpec> commands() {
        Map<String, CommandSpec> specs = new TreeMap<>();
        for (Class<?> command : HotIdle.class.getAnnotation(Command.class).subcommands()) {
            CommandSpec spec = new CommandLine(command).getCommandSpec();
            specs.put(spec.name(), spec);
        }
        return specs;
    }

    private static List<ArgSpec> args(CommandSpec spec) {
        List<ArgSpec> args = new ArrayList<>(spec.options());
        args.addAll(spec.positionalParameters());
        return args.stream().filter(arg -> !arg.hidden()).toList();
    }

    @Test
    void whatAnOptionTakesIsAWordOfItsUserNotOfTheProgramsInside() {
        List<String> wrong = new ArrayList<>();
        int seen = 0;
        for (Map.Entry<String, CommandSpec> command : commands().entrySet()) {
            for (ArgSpec arg : args(command.getValue())) {
                boolean takes = arg.arity().max() > 0;
                seen += takes ? 1 : 0;
                if (takes && !arg.paramLabel().replace("...", "").matches(WORD)) {
                    wrong.add(command.getKey() + " " + arg.paramLabel());
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertTrue(seen > 80, seen + " options and parameters");
    }

    @Test
    void aCommandIsFoundByItsNameAndAWordThatIsNoneIsNot() {
        commands()
                .forEach((name, spec) ->
                        assertEquals(Optional.of(spec.userObject().getClass()), HotIdle.command(name), name));
        for (String none : List.of("", "nosuch", "Compare", "compare ", "--help", "../compare")) {
            assertEquals(Optional.empty(), HotIdle.command(none), none);
        }
    }

    @Test
    void everyOptionIsDescribed() {
        commands()
                .forEach((name, spec) -> args(spec)
                        .forEach(arg -> assertTrue(
                                arg.description().length > 0 && !arg.description()[0].isBlank(),
                                name + " " + arg.paramLabel())));
    }
}

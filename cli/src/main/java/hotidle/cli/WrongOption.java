package hotidle.cli;

import hotidle.circuits.text.Nearest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Words what is wrong with a command line, with the nearest name of a command, an option or one of its words. */
final class WrongOption {

    /** What some call the units of a shop. */
    private static final Map<String, String> OTHER_WORDS = Map.of(
            "imperial", "shop", "us", "shop", "inch", "shop", "english", "shop", "mm", "metric", "bar", "metric");

    private WrongOption() {}

    /** The message, with what to write instead. */
    static String text(CommandLine.ParameterException wrong) {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        String name = command.qualifiedName();
        if (wrong instanceof CommandLine.UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            return unmatched(command, unmatched.getUnmatched().get(0));
        }
        if (wrong.getArgSpec() != null
                && wrong.getValue() != null
                && wrong.getArgSpec().typeInfo().isEnum()) {
            return noWord(wrong.getArgSpec(), wrong.getValue());
        }
        if (wrong.getArgSpec() != null && wrong.getArgSpec().type() == Path.class && wrong.getValue() != null) {
            return FileReason.noName(wrong.getValue());
        }
        if (wrong instanceof CommandLine.MissingParameterException missing) {
            return "hotidle: " + wrong.getMessage() + "\nmend: "
                    + missing.getMissing().stream().map(WrongOption::wanted).collect(Collectors.joining("; "))
                    + "; more: '"
                    + name + " --help'";
        }
        return "hotidle: " + wrong.getMessage() + "\nmend: '" + name + " --help' says what is allowed";
    }

    /** What has to be written, and what that is. */
    private static String wanted(ArgSpec argument) {
        String said = String.join(" ", argument.description()).replaceAll("\\.? Default: .*", "");
        return argument instanceof OptionSpec option
                ? "write " + option.longestName() + " " + option.paramLabel() + ": " + said
                : "write " + argument.paramLabel() + ": " + said;
    }

    private static String unmatched(CommandSpec command, String wrong) {
        boolean top = command.parent() == null;
        if (wrong.startsWith("-")) {
            String word = wrong.split("=", 2)[0];
            return "hotidle: " + word + " is no option of " + command.qualifiedName() + "\nmend: "
                    + Nearest.mend(word, options(command));
        }
        if (top) {
            return "hotidle: " + wrong + " is no command\nmend: "
                    + Nearest.mend(wrong, command.subcommands().keySet());
        }
        return "hotidle: " + command.qualifiedName() + " has no place for '" + wrong
                + "'\nmend: put a text with blanks in quotes; an option begins with --: "
                + String.join(", ", options(command));
    }

    private static List<String> options(CommandSpec command) {
        List<String> names = new ArrayList<>();
        for (OptionSpec option : command.options()) {
            if (!option.hidden()) {
                names.add(option.longestName());
            }
        }
        return names;
    }

    private static String noWord(ArgSpec argument, String wrong) {
        List<String> valid = argument.typeInfo().getEnumConstantNames().stream()
                .map(word -> word.toLowerCase(Locale.ROOT))
                .toList();
        String other = OTHER_WORDS.getOrDefault(wrong.toLowerCase(Locale.ROOT), "");
        String mend = valid.contains(other)
                ? "write " + other + "; valid: " + String.join(", ", valid)
                : Nearest.mend(wrong, valid);
        String option = argument instanceof OptionSpec named ? named.longestName() + " " : "";
        return "hotidle: " + option + wrong + " is none of its words\nmend: " + mend;
    }
}

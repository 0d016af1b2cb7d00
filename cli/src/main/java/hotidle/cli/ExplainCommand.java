package hotidle.cli;

import hotidle.answer.phrase.TermPhrase;
import hotidle.circuits.text.Nearest;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What a word means. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        description = "Says in three lines what a word means, where it is seen and what it is called in JSON.")
final class ExplainCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "TERM",
            arity = "0..*",
            description =
                    "a trade word or heading as it is copied from a screen, a key or value of JSON, or a name of a ready circuit."
                            + " Default: all words are listed")
    List<String> words = List.of();

    @Spec
    CommandSpec spec;

    @Override
    public Integer call() {
        if (words.isEmpty()) {
            spec.commandLine().getOut().print(TermPhrase.listed());
            return HotIdle.DONE;
        }
        String asked = String.join(" ", words);
        spec.commandLine()
                .getOut()
                .print(TermPhrase.of(asked)
                        .map(TermPhrase.Term::said)
                        .or(() -> NamedThing.said(asked))
                        .orElseThrow(() -> new WrongInputException(
                                "hotidle: there is no word '" + asked + "' to explain\nmend: " + near(asked))));
        return HotIdle.DONE;
    }

    private static String near(String asked) {
        List<String> near = Nearest.to(asked, names());
        return (near.isEmpty() ? "" : "did you mean " + String.join(" or ", near) + "? ")
                + "'hotidle explain' lists all words";
    }

    private static List<String> names() {
        return TermPhrase.ALL.stream()
                .flatMap(term -> term.names().stream())
                .distinct()
                .toList();
    }
}

package hotidle.cli;

import hotidle.answer.Answer;
import hotidle.answer.format.Json;
import picocli.CommandLine.Model.CommandSpec;

/** An answer printed in the format that was asked for. */
final class Printed {

    private Printed() {}

    /**
     * Prints to standard output.
     *
     * @return the command's exit code
     */
    static int print(CommandSpec spec, OutputOptions shared, Answer answer) {
        spec.commandLine()
                .getOut()
                .print(
                        switch (shared.format) {
                            case TABLE -> shared.full ? answer.full() : answer.screen();
                            case CSV -> answer.csv();
                            case JSON -> Json.text(shared.told(answer.json()));
                        });
        return answer.complete() ? HotIdle.DONE : HotIdle.UNSOLVED;
    }
}

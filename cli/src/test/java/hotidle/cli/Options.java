package hotidle.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** A group of options read from a command line of its own. */
final class Options {

    private Options() {}

    /** The group with what was written. */
    static <T> T of(T group, String... words) {
        CommandSpec spec = CommandSpec.create();
        spec.addMixin("group", CommandSpec.forAnnotatedObject(group));
        new CommandLine(spec).setCaseInsensitiveEnumValuesAllowed(true).parseArgs(words);
        return group;
    }
}

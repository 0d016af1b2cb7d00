package hotidle.cli;

import hotidle.answer.format.Wrap;
import hotidle.result.SolveCount;
import hotidle.transmission.NotCommandedException;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The program: its commands, its exit codes, and what it says when it fails. */
@Command(
        name = "hotidle",
        subcommands = {
            CompareCommand.class,
            SweepCommand.class,
            MarginsCommand.class,
            SensitivityCommand.class,
            LeaksCommand.class,
            WindowCommand.class,
            MapCommand.class,
            SpringCommand.class,
            WearCommand.class,
            SpreadCommand.class,
            HeatCommand.class,
            TorqueCommand.class,
            GaugeCommand.class,
            ShiftCommand.class,
            AirCommand.class,
            PartCommand.class,
            DrawCommand.class,
            ReportCommand.class,
            LiveCommand.class,
            CheckCommand.class,
            NewCommand.class,
            SheetCommand.class,
            ListCommand.class,
            ExplainCommand.class
        })
public final class HotIdle implements Runnable {

    static final int DONE = 0;
    static final int UNSOLVED = 1;
    static final int WRONG_INPUT = 2;
    static final int OUR_FAULT = 70;

    /** As a shell has it for a program that Ctrl-C ended. */
    static final int STOPPED = 130;

    @Mixin
    private final ProgramOptions options;

    /** The program with all its commands, for tools that ask for them by this class. */
    HotIdle() {
        this(new ProgramOptions());
    }

    private HotIdle(ProgramOptions options) {
        this.options = options;
    }

    @Override
    public void run() {
        options.run();
    }

    public static void main(String[] arguments) {
        KeptOutput kept = new KeptOutput(new FileOutputStream(FileDescriptor.out));
        PrintWriter out = new PrintWriter(kept, false, StandardCharsets.UTF_8);
        PrintWriter err = new ReadableLines(new OutputStreamWriter(System.err, StandardCharsets.UTF_8));
        Stop.BY_USER.listen();
        int code = kept.checked(run(out, err, arguments), err);
        Stop.BY_USER.printed();
        System.exit(code);
    }

    /** Runs the program with given streams and gives its exit code. */
    static int run(PrintWriter out, PrintWriter err, String... arguments) {
        ProgramOptions program = new ProgramOptions();
        SolveCount before = SolveCount.now();
        CommandLine line = line(program, arguments)
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setUsageHelpWidth(Wrap.WIDTH)
                .setParameterExceptionHandler((wrong, given) -> {
                    err.println(WrongOption.text(wrong));
                    return WRONG_INPUT;
                })
                .setExecutionExceptionHandler((fault, commandLine, result) -> explain(err, fault));
        int code = execute(line, err, arguments);
        if (program.verbose()) {
            SolveCount count = SolveCount.now().since(before);
            err.println(count.states() + " states solved, " + count.steps() + " steps");
        }
        out.flush();
        err.flush();
        return code;
    }

    /** With the one command that is asked for: to load all, with their options, takes longer than most commands do. */
    private static CommandLine line(ProgramOptions program, String... arguments) {
        return Stream.of(arguments)
                .limit(1)
                .flatMap(asked -> command(asked).stream())
                .map(command -> new CommandLine(program).addSubcommand(command))
                .findFirst()
                .orElseGet(() -> new CommandLine(new HotIdle(program)));
    }

    /** The class of a command, which is called after it. */
    static Optional<Class<?>> command(String name) {
        if (!name.matches("[a-z]+")) {
            return Optional.empty();
        }
        String called = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1) + "Command";
        try {
            return Optional.of(Class.forName(HotIdle.class.getPackageName() + "." + called));
        } catch (ClassNotFoundException none) {
            return Optional.empty();
        }
    }

    private static int execute(CommandLine line, PrintWriter err, String... arguments) {
        try {
            return arguments.length == 0 ? line.execute("--help") : line.execute(arguments);
        } catch (StackOverflowError | OutOfMemoryError | LinkageError fault) {
            return explain(err, fault);
        }
    }

    private static int explain(PrintWriter err, Throwable fault) {
        if (fault instanceof WrongInputException) {
            err.println(fault.getMessage());
            return WRONG_INPUT;
        }
        if (fault instanceof Stop.StoppedException) {
            err.println("hotidle: stopped; nothing was finished");
            return STOPPED;
        }
        if (fault instanceof InvalidPathException path) {
            err.println(FileReason.noName(path.getInput()));
            return WRONG_INPUT;
        }
        if (fault instanceof NotCommandedException) {
            err.println("hotidle: " + fault.getMessage());
            err.println(
                    "mend: add command: to the circuit; circuits/README.md, step 4, shows how, 'hotidle margins' what to write");
            return WRONG_INPUT;
        }
        err.println("hotidle: sorry, this is a fault of the program, not of your input: " + fault);
        err.println("Please send the command you gave, the circuit file and these lines:");
        for (int i = 0; i < Math.min(5, fault.getStackTrace().length); i++) {
            err.println("  " + fault.getStackTrace()[i]);
        }
        return OUR_FAULT;
    }
}

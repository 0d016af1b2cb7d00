package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.transmission.Adjustable;
import java.util.List;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What every command that solves a circuit is asked: which circuit, with which sheet, shown how. */
final class CircuitOptions {

    @Parameters(paramLabel = "CIRCUIT", description = "a ready circuit (see 'hotidle list') or a circuit file")
    private String circuit;

    @Mixin
    private FilledSheet sheet;

    @Mixin
    OutputOptions shared;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /** The circuit with the sheet's build; its warnings go to standard error. */
    DescribedCircuit load() {
        return load(new ReadInputs());
    }

    /** The same; {@code inputs} gets every file that was read. */
    DescribedCircuit load(ReadInputs inputs) {
        DescribedCircuit described =
                Circuits.load(circuit, sheet.file(), spec.commandLine().getErr(), inputs);
        shared.unitsOfFile(described.unitSystem());
        return described;
    }

    /** Builds of a circuit after some work, which is said on standard error. */
    WorkedBuilds after(BuildWork work, DescribedCircuit described, List<Adjustable> builds) {
        return told(work, work.on(described, builds, shared.units()), false);
    }

    /** The same for an answer that says above its tables what was done: nobody is to read it twice. */
    WorkedBuilds afterAsHeaded(BuildWork work, DescribedCircuit described, List<Adjustable> builds) {
        return afterAsHeaded(
                work,
                described,
                builds,
                builds.stream().map(one -> one.unit().build()).toList());
    }

    /** The same with the names of what each is to be compared with. */
    WorkedBuilds afterAsHeaded(
            BuildWork work, DescribedCircuit described, List<Adjustable> builds, List<String> under) {
        return told(work, work.on(described, builds, under, shared.units()), true);
    }

    /** Keeps what is done for JSON, and says it where the answer does not: rows of numbers have no heading. */
    private WorkedBuilds told(BuildWork work, WorkedBuilds worked, boolean headed) {
        if (work.given()) {
            shared.workDone(work.record());
            if (!headed || shared.format != OutputOptions.Format.TABLE) {
                spec.commandLine().getErr().println(work.said(shared.units()));
            }
        }
        return worked;
    }

    /** Circuit and sheet as they were given, for a command that is told. */
    String again() {
        return circuit + sheet.file().map(file -> " --sheet " + file).orElse("");
    }
}

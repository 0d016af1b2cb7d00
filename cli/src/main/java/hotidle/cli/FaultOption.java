package hotidle.cli;

import hotidle.circuits.DescribedCircuit;
import hotidle.circuits.WrittenFault;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Faults laid over the builds that are asked for. */
final class FaultOption {

    @Option(
            names = "--fault",
            paramLabel = "KIND[@PART][:SIZE]",
            description = "a fault laid over each build, for example plate-warped@plate-direct:300%% or"
                    + " spring-weak@regulator:20%%; give it again for more. 'hotidle list faults' names the kinds")
    private List<String> written = List.of();

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    /**
     * The same where jobs or another set pressure may be asked for too, which are done to a build as the file has it.
     *
     * @throws WrongInputException where a build or a fault is none, or work is asked for beside a fault
     */
    List<Transmission> units(DescribedCircuit described, List<String> builds, AfterWork work) {
        if (!written.isEmpty() && work.given()) {
            throw wrong(
                    String.join(" --fault ", written),
                    "a fault is laid over a build as it is, not over one after --job or --set",
                    "ask for one of them at a time");
        }
        return units(described, builds);
    }

    /**
     * The units of the builds asked for with the faults in them; the circuit's first build where none was.
     *
     * @throws WrongInputException where a build or a fault is none
     */
    List<Transmission> units(DescribedCircuit described, List<String> builds) {
        List<Transmission> units = Circuits.units(described, builds).stream()
                .map(unit -> written.isEmpty() ? unit : in(described.adjustable(unit.build())))
                .toList();
        if (!written.isEmpty()) {
            spec.commandLine().getErr().println("faults laid over each build: " + String.join(", ", written));
        }
        return units;
    }

    /** Whether any is asked for. */
    boolean given() {
        return !written.isEmpty();
    }

    /** Faults as they were written. */
    List<String> written() {
        return List.copyOf(written);
    }

    /**
     * A build with one of the faults at a time.
     *
     * @throws WrongInputException where a fault is none
     */
    List<Transmission> each(Adjustable build) {
        List<UnitFault> possible = UnitFaults.of(build);
        return written.stream()
                .map(text -> in(build, List.of(sized(possible, text))))
                .toList();
    }

    private Transmission in(Adjustable build) {
        List<UnitFault> possible = UnitFaults.of(build);
        return in(build, written.stream().map(text -> sized(possible, text)).toList());
    }

    private Transmission in(Adjustable build, List<UnitFault.Sized> faults) {
        return UnitFault.in(build, faults)
                .orElseThrow(() -> new WrongInputException("hotidle: --fault " + String.join(" --fault ", written)
                        + ": " + build.unit().build() + " cannot be made so\nmend: give smaller sizes"));
    }

    private static UnitFault.Sized sized(List<UnitFault> possible, String text) {
        try {
            return WrittenFault.read(possible, text);
        } catch (WrittenFault.NoFaultException none) {
            throw wrong(text, none.getMessage(), none.mend());
        }
    }

    private static WrongInputException wrong(String text, String what, String mend) {
        return new WrongInputException("hotidle: --fault " + text + ": " + what + "\nmend: " + mend);
    }
}

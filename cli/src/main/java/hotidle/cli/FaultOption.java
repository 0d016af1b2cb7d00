package hotidle.cli;

import hotidle.circuits.WrittenFault;
import hotidle.fault.LaidFaults;
import hotidle.fault.UnitFault;
import hotidle.fault.UnitFaults;
import hotidle.transmission.Adjustable;
import hotidle.transmission.Transmission;
import java.util.List;
import picocli.CommandLine.Option;

/** Faults laid over the builds that are asked for. */
final class FaultOption {

    @Option(
            names = "--fault",
            paramLabel = "KIND[@PART][:SIZE]",
            description = "a fault laid over each build, for example plate-warped@plate-direct:300%% or"
                    + " spring-weak@regulator:20%%; give it again for more. 'hotidle list faults' names the kinds")
    private List<String> written = List.of();

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
                .map(text -> over(build, List.of(sized(possible, text))).unit())
                .toList();
    }

    /**
     * The faults of a build with their sizes.
     *
     * @throws WrongInputException where a fault is none
     */
    List<UnitFault.Sized> laid(Adjustable build) {
        List<UnitFault> possible = UnitFaults.of(build);
        return written.stream().map(text -> sized(possible, text)).toList();
    }

    /**
     * A build with all of the faults in it.
     *
     * @throws WrongInputException where a fault is none
     */
    Adjustable over(Adjustable build) {
        List<UnitFault> possible = UnitFaults.of(build);
        return over(build, written.stream().map(text -> sized(possible, text)).toList());
    }

    private Adjustable over(Adjustable build, List<UnitFault.Sized> faults) {
        try {
            return new LaidFaults(faults).over(build);
        } catch (IllegalArgumentException impossible) {
            throw new WrongInputException("hotidle: --fault " + String.join(" --fault ", written) + ": "
                    + build.unit().build() + " cannot be made so\nmend: give smaller sizes");
        }
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

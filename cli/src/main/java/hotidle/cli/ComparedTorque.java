package hotidle.cli;

import hotidle.answer.compare.TorqueAsked;
import hotidle.study.TorqueConditions;
import hotidle.study.TorqueHeld;
import hotidle.transmission.Transmission;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The engine torque that builds side by side are to hold, as each is set. */
final class ComparedTorque {

    @Option(
            names = "--for",
            paramLabel = "TORQUE",
            description =
                    "an engine torque, as 700lbf.ft: says of each build whether it holds it in every range, hot, and what"
                            + " gives before. Default: only the engine torques of the driving conditions are judged")
    private String wanted;

    /**
     * What each build holds; empty where no torque is asked for.
     *
     * @throws WrongInputException where it is no torque of an engine, or torque cannot be asked of the circuit
     */
    Optional<TorqueAsked> held(List<Transmission> units) {
        if (wanted == null) {
            return Optional.empty();
        }
        double torque = WantedTorque.torque(wanted);
        TorqueRun.check(units.get(0));
        Map<String, List<TorqueHeld>> ranges = new LinkedHashMap<>();
        units.forEach(unit -> ranges.put(unit.build(), TorqueHeld.atOneSpeed(unit, TorqueConditions.USUAL_SPEED)));
        return Optional.of(new TorqueAsked(torque, TorqueConditions.USUAL_SPEED, ranges));
    }
}

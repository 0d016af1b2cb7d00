package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.ProblemCode;

/** A build changes the control at a duty point that the circuit has. */
final class DutyPointIsTheCircuits implements Rule.OfDuty {

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        if (!file.groups("duty").containsKey(duty.name())) {
            duty.error(
                    ProblemCode.NO_DUTY_POINT,
                    "",
                    "is no driving condition of the circuit",
                    "a build changes what engine and control do at one that is there",
                    Nearest.mend(duty.name(), file.groups("duty").keySet()));
        }
    }
}

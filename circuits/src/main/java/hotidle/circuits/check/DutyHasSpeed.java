package hotidle.circuits.check;

import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;

/** A duty point says the engine speed where a part turns with it. */
final class DutyHasSpeed implements Rule.OfDuty {

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        boolean turns = parts.all().values().stream()
                .anyMatch(part -> part.kind().facts().turns());
        if (!duty.has("speed") && turns) {
            duty.missing("speed", "a part of the circuit turns with the engine", "add 'speed: 650 rpm', for example");
        }
    }
}

package hotidle.circuits.check;

import hotidle.circuits.kind.DutyKey;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import java.util.List;

/** A duty point says throttle, vacuum and output speed where a mechanical valve feels them. */
final class DutySaysWhatValvesFeel implements Rule.OfDuty {

    private static final List<DutyKey> FELT = List.of(DutyKey.THROTTLE, DutyKey.VACUUM, DutyKey.OUTPUT_SPEED);

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        for (DutyKey felt : FELT) {
            String key = felt.key().name();
            parts.all().values().stream()
                    .filter(part -> part.kind().asks(felt) && !duty.has(key))
                    .findFirst()
                    .ifPresent(part -> duty.missing(
                            key,
                            part.given().label() + " takes its pressure from it",
                            "add '" + key + ": " + example(felt) + "', for example"));
        }
    }

    private static String example(DutyKey felt) {
        return felt == DutyKey.THROTTLE ? "20 %" : felt == DutyKey.VACUUM ? "15 inHg" : "1500 rpm";
    }
}

package hotidle.circuits.check;

import hotidle.circuits.kind.DutyKey;
import hotidle.circuits.kind.Parts;
import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.List;

/** A duty point with lockup slipping or on has a converter with a lockup; where there is no converter it says nothing. */
final class LockupHasAConverter implements Rule.OfDuty {

    @Override
    public void check(Attributes file, Attributes duty, Parts parts) {
        List<Attributes> converters = parts.all().values().stream()
                .filter(part -> part.kind().asks(DutyKey.LOCKUP))
                .map(Parts.DeclaredPart::given)
                .toList();
        boolean none = converters.stream().noneMatch(converter -> converter.has("lockup-area"));
        if (!converters.isEmpty() && none && !duty.text("lockup").equals("off") && duty.has("lockup")) {
            duty.error(
                    ProblemCode.NO_LOCKUP,
                    "lockup",
                    "has lockup " + duty.text("lockup") + ", but "
                            + converters.get(0).label() + " has no lockup",
                    "it has no lockup-area",
                    "write lockup: off, or give the converter lockup-area, lockup-radius and its losses slipping and on");
        }
    }
}

package hotidle.answer.gauge;

import hotidle.answer.format.Quantity;
import hotidle.answer.phrase.UnitFaultPhrase;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import hotidle.study.gauge.Cause;
import hotidle.transmission.WearSize;

/** Faults and their sizes in words. */
public record CauseWords(Quantity.UnitSystem units) {

    static String named(Cause cause) {
        return UnitFaultPhrase.named(cause.fault().kind(), cause.fault().part());
    }

    static String brief(Cause cause) {
        return UnitFaultPhrase.brief(cause.fault().kind(), cause.fault().part());
    }

    /** A size of a cause. */
    public String size(UnitFault fault, double size) {
        if (fault.kind().sizeOf() != FaultKind.SizeOf.WEAR) {
            return new UnitFaultPhrase(units).other(fault.kind(), size, Math.sqrt(fault.least() * fault.most()));
        }
        double worn = fault.wears().stream()
                .mapToDouble(wear -> worn(wear, size))
                .max()
                .orElse(size);
        if (fault.wears().size() > 1) {
            return UnitFaultPhrase.worn(worn);
        }
        WearSize wear = fault.wears().get(0);
        return new UnitFaultPhrase(units).worn(wear.key(), fault.worn(wear, size), wear.limit(), worn);
    }

    private static double worn(WearSize wear, double size) {
        return (wear.value() - wear.fresh()) / wear.allowance() + size;
    }
}

package hotidle.circuits;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Units;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A fault as it is written: {@code KIND@PART:SIZE}; the part may be left out where only one fits. */
public final class WrittenFault {

    private static final Pattern WRITTEN = Pattern.compile("(?<kind>[^@:]+)(@(?<part>[^:]+))?(:(?<size>.+))?");

    private WrittenFault() {}

    /** A text that is no fault of a unit. */
    public static final class NoFaultException extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        private final String mend;

        private NoFaultException(String what, String mend) {
            super(what);
            this.mend = mend;
        }

        /** What to write. */
        public String mend() {
            return mend;
        }
    }

    /**
     * Reads it.
     *
     * @param possible faults that the unit can have
     * @throws NoFaultException saying what is wrong and what to write
     */
    public static UnitFault.Sized read(List<UnitFault> possible, String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            throw new NoFaultException("is no fault", "write KIND@PART:SIZE, for example spring-weak@regulator:20%");
        }
        FaultKind kind = FaultKind.of(matcher.group("kind"))
                .orElseThrow(() -> new NoFaultException(
                        "there is no fault " + matcher.group("kind"),
                        Nearest.mend(
                                matcher.group("kind"),
                                Arrays.stream(FaultKind.values())
                                        .map(FaultKind::word)
                                        .toList())));
        List<UnitFault> ofKind =
                possible.stream().filter(fault -> fault.kind() == kind).toList();
        String part = matcher.group("part");
        UnitFault fault = ofKind.stream()
                .filter(one -> part == null ? ofKind.size() == 1 : one.part().equals(part))
                .findFirst()
                .orElseThrow(() -> new NoFaultException(
                        part == null ? "names no part" : "no part " + part + " can have it",
                        Nearest.mend(
                                part == null ? "" : part,
                                ofKind.stream().map(UnitFault::part).toList())));
        return fault.of(size(fault, matcher.group("size")));
    }

    /** As it is written behind {@code --fault}; the size to seven digits. */
    public static String of(UnitFault.Sized one) {
        UnitFault fault = one.fault();
        if (fault.kind().sizeOf() == FaultKind.SizeOf.NOTHING) {
            return fault.name();
        }
        boolean share = share(fault);
        return fault.name() + ":" + digits(one.size() * (share ? 100 : 1000), 7) + (share ? "%" : "mm");
    }

    private static double size(UnitFault fault, String written) {
        FaultKind.SizeOf sizeOf = fault.kind().sizeOf();
        if (sizeOf == FaultKind.SizeOf.NOTHING) {
            if (written != null) {
                throw new NoFaultException("it takes no size", "write --fault " + fault.name());
            }
            return fault.most();
        }
        boolean share = share(fault);
        String example = "write --fault " + fault.name() + ":" + (share ? "20%" : "0.3mm");
        if (written == null) {
            throw new NoFaultException("give its size", example + "; allowed is " + allowed(fault));
        }
        Units.Amount amount = Units.read(written, share ? Dimension.RATIO : Dimension.LENGTH);
        if (!amount.good()) {
            throw new NoFaultException("its size " + written + ", " + amount.wrong(), example);
        }
        if (!(amount.si() >= fault.least() && amount.si() <= fault.most())) {
            throw new NoFaultException("its size lies outside what it can be", "allowed is " + allowed(fault));
        }
        return amount.si();
    }

    /** Whether its size is a share of something; otherwise a length, or nothing. */
    public static boolean share(UnitFault fault) {
        FaultKind.SizeOf sizeOf = fault.kind().sizeOf();
        return sizeOf == FaultKind.SizeOf.WEAR || sizeOf == FaultKind.SizeOf.SHARE;
    }

    private static String allowed(UnitFault fault) {
        boolean share = share(fault);
        double times = share ? 100 : 1000;
        String unit = share ? "%" : "mm";
        return digits(fault.least() * times, 4) + unit + " to " + digits(fault.most() * times, 4) + unit;
    }

    /** So many digits, without zeros behind. */
    private static String digits(double number, int digits) {
        return BigDecimal.valueOf(number)
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
    }
}

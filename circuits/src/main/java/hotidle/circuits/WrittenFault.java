package hotidle.circuits;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Nearest;
import hotidle.circuits.text.Units;
import hotidle.fault.FaultKind;
import hotidle.fault.UnitFault;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
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
        return fault.name() + ":" + digits(one.size() * (share ? 100 : 1000), DIGITS, RoundingMode.HALF_UP)
                + (share ? "%" : "mm");
    }

    /**
     * A fault with a size that it can have, as it is written: a graded one half way, which shows plainly; what stands where it should not
     * a quarter of the way, since half way is where a sound one may stand.
     */
    public static String example(UnitFault fault) {
        return of(rounded(fault, fault.kind().graded() ? 0.5 : 0.25));
    }

    /**
     * The size some share of the way from the smallest to the largest, with as few digits as leave it near there and within what is
     * allowed.
     *
     * @param way 0 to 1, as {@link UnitFault#sizeAt} takes it
     */
    public static UnitFault.Sized rounded(UnitFault fault, double way) {
        double exact = fault.sizeAt(way);
        // of a blocked part what is left open is what counts
        boolean left = fault.kind() == FaultKind.FILTER_BLOCKED || fault.kind() == FaultKind.COOLER_BLOCKED;
        for (int digits = 1; digits < DIGITS; digits++) {
            double size = left ? 1 - to(digits, 1 - exact) : to(digits, exact);
            if (size >= fault.least() && size <= fault.most() && Math.abs(fault.wayTo(size) - way) <= NEAR) {
                return fault.of(size);
            }
        }
        return fault.of(exact);
    }

    /** Of a size that is written out in full. */
    private static final int DIGITS = 7;

    /** What is off by less was rounded when it was written out. */
    private static final double ROUNDED = 1e-7;

    /** So far a rounded size may lie from the one that was meant, as a share of the way (chosen). */
    private static final double NEAR = 0.05;

    /** A number is known to so many digits behind what floating point rounds. */
    private static final int OWN_DIGITS = 12;

    private static double to(int digits, double size) {
        return BigDecimal.valueOf(size).round(new MathContext(digits)).doubleValue();
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
        String example = "write --fault " + example(fault);
        if (written == null) {
            throw new NoFaultException("give its size", example + "; allowed is " + allowed(fault));
        }
        Units.Amount amount = Units.read(written, share ? Dimension.RATIO : Dimension.LENGTH);
        if (!amount.good()) {
            throw new NoFaultException("its size " + written + ", " + amount.wrong(), example);
        }
        double within = Math.max(fault.least(), Math.min(fault.most(), amount.si()));
        if (!(Math.abs(amount.si() - within) <= ROUNDED * fault.most())) {
            throw new NoFaultException("its size lies outside what it can be", "allowed is " + allowed(fault));
        }
        return within;
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
        return digits(fault.least() * times, 4, RoundingMode.CEILING) + unit + " to "
                + digits(fault.most() * times, 4, RoundingMode.FLOOR) + unit;
    }

    /**
     * So many digits, without zeros behind; bounds are rounded inwards, so that what is said to be allowed is. What is off by the last of
     * a number's own digits is none of it.
     */
    private static String digits(double number, int digits, RoundingMode mode) {
        return BigDecimal.valueOf(number)
                .round(new MathContext(OWN_DIGITS))
                .round(new MathContext(digits, mode))
                .stripTrailingZeros()
                .toPlainString();
    }
}

package hotidle.validation;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A published value beside ours.
 *
 * @param part      what it checks, a heading of the sheet
 * @param quantity  what is published
 * @param inputs    what it follows from, in the source's units
 * @param published as printed
 * @param unit      of published value, of ours and of the tolerance
 * @param ours      what the solver says
 * @param tolerance largest difference allowed
 * @param why       why the tolerance is not half a unit of the last printed digit; empty where it is
 * @param source    of the published value
 */
record Row(
        String part,
        String quantity,
        String inputs,
        BigDecimal published,
        String unit,
        double ours,
        double tolerance,
        String why,
        Source source) {

    /** Fewest digits of ours on the sheet: far more than any source prints, far fewer than differ from machine to machine. */
    private static final int DIGITS = 5;

    private static final String DISAGREES = "does not agree: ";

    /** A row that must meet every printed digit. */
    static Row of(
            String part, String quantity, String inputs, String published, String unit, double ours, Source source) {
        BigDecimal printed = new BigDecimal(published);
        return new Row(part, quantity, inputs, printed, unit, ours, half(printed), "", source);
    }

    /** The same with an absolute tolerance, and the reason for it. */
    Row within(double other, String reason) {
        return new Row(part, quantity, inputs, published, unit, ours, other, reason, source);
    }

    /** The same with a share of the published value allowed beside the half digit, and the reason for it. */
    Row withinShare(double share, String reason) {
        return within(share * Math.abs(published.doubleValue()) + half(published), reason);
    }

    /** A row that does not agree, kept to say how far we and a publication are apart: at most so much, and why. */
    Row disagreeing(double atMost, String reason) {
        return within(atMost, DISAGREES + reason);
    }

    /** Whether it is kept although it does not agree. */
    boolean disagrees() {
        return why.startsWith(DISAGREES);
    }

    private static double half(BigDecimal printed) {
        return printed.ulp().doubleValue() / 2;
    }

    /** Whether ours lies within the tolerance; a value that is no number does not. */
    boolean holds() {
        return Math.abs(ours - published.doubleValue()) <= tolerance * (1 + 1e-9);
    }

    /** Ours to one digit more than the source prints, and to five at least. */
    BigDecimal shown() {
        return rounded(ours, Math.max(DIGITS, published.precision() + 1));
    }

    /** Ours less published, as a share of it. */
    double share() {
        return difference().doubleValue() / published.doubleValue();
    }

    BigDecimal difference() {
        return shown().subtract(published);
    }

    static BigDecimal rounded(double value, int digits) {
        return new BigDecimal(value).round(new MathContext(digits));
    }
}

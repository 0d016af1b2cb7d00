package hotidle.circuits.sheet;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * Holds a measured size against the new one and its limit: who reads a micrometer slips by a decimal, a unit or a row. What is
 * plausible is chosen here; it judges no wear.
 *
 * @param size     as the file has it, known
 * @param diameter whether it is a bore or what runs in it, which is large against its wear, and not a clearance
 */
record Doubted(SizeAsNew size, boolean diameter) {

    /** Sizes this far on the wrong side of the new one are taken for an error of the gauge (assumed, as for a file) [m]. */
    private static final double GAUGE_ERROR = 5e-6;

    /** Nothing wears beyond so many times the way to its limit before it is noticed (chosen) [-]. */
    private static final double FAR = 3;

    /** The way to a limit where none is written: of a diameter, of a clearance (chosen) [share of the new size]. */
    private static final double ALLOWANCE_OF_DIAMETER = 0.005;

    private static final double ALLOWANCE_OF_CLEARANCE = 3;

    /** Diameters further off than this are those of another fit (chosen) [share of the new size]. */
    private static final double ANOTHER = 0.02;

    private static final List<String> SHIFTS = List.of("0.1", "10", "0.01", "100");

    private double allowance() {
        double usual = (diameter ? ALLOWANCE_OF_DIAMETER : ALLOWANCE_OF_CLEARANCE) * size.fresh();
        double way = size.limit().isPresent() ? size.wear(size.limit().getAsDouble()) : usual;
        return Math.max(Math.max(way, diameter ? usual / 2 : way), 2 * GAUGE_ERROR);
    }

    /** Whether a size could be that of this fit, worn or not. */
    boolean plausible(double measured) {
        double wear = size.wear(measured);
        return wear >= -Math.max(GAUGE_ERROR, allowance() / 5) && wear <= FAR * allowance();
    }

    /** Whether it is worn far beyond its limit, where it has one. */
    boolean farPastLimit(double measured) {
        return size.limit().isPresent() && size.wear(measured) > FAR * allowance();
    }

    /** Whether it lies on the side of new to which nothing wears. */
    boolean againstWear(double measured) {
        return size.wear(measured) < -GAUGE_ERROR;
    }

    /** Whether it is a diameter of another fit. */
    boolean another(double measured) {
        return diameter && Math.abs(measured - size.fresh()) > ANOTHER * size.fresh();
    }

    /** By what factor it is larger than a new one, or smaller [1 or more]. */
    double times(double measured) {
        return measured > size.fresh() ? measured / size.fresh() : size.fresh() / measured;
    }

    /** The same number in another unit that would be plausible; empty where none is. */
    Optional<String> otherUnit(String number, String unit) {
        return MeasuredCell.units().stream()
                .filter(other -> !other.equals(unit))
                .map(other -> number + " " + other)
                .filter(this::plausible)
                .findFirst();
    }

    /** The number with its decimal point elsewhere that would be plausible; empty where none is. */
    Optional<String> otherDecimal(String number, String unit) {
        return SHIFTS.stream()
                .map(times -> new BigDecimal(number).multiply(new BigDecimal(times)))
                .map(other -> other.stripTrailingZeros().toPlainString() + " " + unit)
                .filter(this::plausible)
                .findFirst();
    }

    private boolean plausible(String text) {
        Units.Amount amount = Units.read(text, Dimension.LENGTH);
        return amount.good() && plausible(amount.si());
    }

    /** The first of these sizes that a measured one fits better. */
    static Optional<String> fits(double measured, Stream<java.util.Map.Entry<String, SizeAsNew>> others) {
        return others.filter(other -> other.getValue().known())
                .filter(other -> new Doubted(other.getValue(), true).plausible(measured))
                .map(java.util.Map.Entry::getKey)
                .findFirst();
    }

    /** The limit that it is held against [m]. */
    OptionalDouble limit() {
        return size.limit();
    }
}

package hotidle.answer.live;

import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import hotidle.transmission.WearSize;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How far something can be slid, in SI units.
 *
 * @param low  zero or more
 * @param high above it
 */
public record SliderEnds(double low, double high) {

    /** Of a set pressure, and of one that is typed (chosen) [Pa]. */
    private static final SliderEnds SET_PRESSURE = new SliderEnds(50 * SetPressure.PSI, 400 * SetPressure.PSI);

    /** Of the set pressure of a unit, no lower than it can be set. */
    public static SliderEnds setPressure(Transmission unit) {
        return unit.commanded().isEmpty()
                ? SET_PRESSURE
                : new SliderEnds(
                        Math.max(SET_PRESSURE.low, SetPressure.lowest(unit, SetPressure.By.COMMAND_AND_SPRING)),
                        SET_PRESSURE.high);
    }

    /** A digit that is lost when an end is typed as it is shown (ours) [-]. */
    private static final double ROUNDING = 2e-3;

    /** Whether a value lies between them, or is one of them as it is shown. */
    public boolean hold(double value) {
        return value >= low * (1 - ROUNDING) && value <= high * (1 + ROUNDING);
    }

    /** So many wear allowances past new, and this share of one before it (chosen) [-]. */
    private static final double PAST = 3;

    private static final double BEFORE = 0.25;

    /** Above it a size without a limit is a diameter, which wears by a small part of itself; below, a clearance (chosen) [m]. */
    private static final double DIAMETER = 1e-3;

    /** Of a diameter of a part on which nothing has a limit (chosen) [-]. */
    private static final double SHARE = 0.002;

    /**
     * Of a size.
     *
     * @param all     sizes of its build: a valve without a limit is slid as far as its bore may wear
     * @param shrinks whether wear makes it smaller
     */
    static SliderEnds of(WearSize size, List<WearSize> all, boolean shrinks) {
        double way = size.allowance();
        if (way == 0) {
            way = (shrinks ? -1 : 1) * unwritten(size, all);
        }
        DoubleSummaryStatistics ends = DoubleStream.of(
                        size.fresh() - BEFORE * way, size.fresh() + PAST * way, size.value())
                .summaryStatistics();
        return new SliderEnds(Math.max(ends.getMin(), 0), ends.getMax());
    }

    private static double unwritten(WearSize size, List<WearSize> all) {
        if (size.kind() == WearSize.SizeKind.AREA || size.fresh() < DIAMETER) {
            return size.fresh();
        }
        return all.stream()
                .filter(other -> other.part().equals(size.part()) && other.kind() == size.kind())
                .mapToDouble(other -> Math.abs(other.allowance()))
                .filter(allowance -> allowance > 0)
                .max()
                .orElse(SHARE * size.fresh());
    }
}

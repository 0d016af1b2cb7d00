package hotidle.study.gauge;

import hotidle.fault.UnitFault;

/**
 * A fault as the cause of some readings.
 *
 * @param fault     what
 * @param size      that explains the readings best, in what its kind counts
 * @param low       lower end of the sizes that hold 90 % of what is believed of it
 * @param high      upper end of the same
 * @param chiSquare misfit left at that size [-]
 * @param share     of what is believed to be the cause of the readings [-], 0 to 1, among all single causes and none of these
 * @param hidden    size up to which it moves the readings by less than {@link GaugeFindings#VISIBLE} deviations; that of the fault at
 *                  its largest where it never does; not a number for a fault that has no degree
 * @param visible   whether it can move them by more at all
 */
public record Cause(
        UnitFault fault,
        double size,
        double low,
        double high,
        double chiSquare,
        double share,
        double hidden,
        boolean visible) {}

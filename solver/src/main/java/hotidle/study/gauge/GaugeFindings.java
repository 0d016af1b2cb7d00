package hotidle.study.gauge;

import hotidle.fault.UnitFault;
import java.util.List;
import java.util.Optional;

/**
 * What gauge readings say of a unit.
 *
 * @param readings  as taken
 * @param expected  of a sound unit at each of them
 * @param agreement of all of them together
 * @param regulated how many of them were taken where the regulator of a sound unit is off its seat
 * @param groups    the causes that hold {@link #LEADING} of what is believed of single faults, those together that these readings
 *                  cannot tell apart, the most likely group first; empty where the readings agree
 * @param none      share of none of these [-]
 * @param pairs     two faults at once, the most likely pair first
 * @param causes    every fault, the most likely first
 * @param notSolved faults of which no size could be solved
 */
public record GaugeFindings(
        List<GaugeReading> readings,
        List<ExpectedReading> expected,
        Agreement agreement,
        int regulated,
        List<Group> groups,
        double none,
        List<Pair> pairs,
        List<Cause> causes,
        List<String> notSolved) {

    /** A fault that moves all readings together by more standard deviations than this shows (chosen) [-]. */
    public static final double VISIBLE = 4;

    /** A reading off by more deviations than this stands out (chosen) [-]. */
    public static final double STANDS_OUT = 2.5;

    /** Below this probability readings do not agree with the build (chosen) [-]. */
    public static final double DISAGREE = 0.02;

    /** The groups hold this share together, of what is believed of single faults (chosen) [-]. */
    public static final double LEADING = 0.95;

    /**
     * What a sound unit should read.
     *
     * @param mean      [Pa] or [m³/s]
     * @param deviation of a reading about it, gauge included
     * @param off       the reading less the mean, in deviations [-]
     */
    public record ExpectedReading(double mean, double deviation, double off) {

        /** Whether a reading that showed a value is further off than a sound unit's. */
        boolean standsOut(GaugeReading.Sense sense) {
            return switch (sense) {
                case EXACT -> Math.abs(off) > STANDS_OUT;
                case BELOW -> off < -STANDS_OUT;
                case ABOVE -> off > STANDS_OUT;
            };
        }
    }

    /**
     * Whether readings agree with a build.
     *
     * @param chiSquare   of the readings that showed a value [-]
     * @param degrees     how many these are
     * @param probability of a misfit as large by chance, on a sound unit [-]
     * @param agrees      whether they do
     */
    public record Agreement(double chiSquare, int degrees, double probability, boolean agrees) {}

    /**
     * Causes that the readings cannot tell apart.
     *
     * @param share  of all of them [-]
     * @param causes the most likely first
     */
    public record Group(double share, List<Cause> causes) {
        public Group {
            causes = List.copyOf(causes);
        }

        /** The most likely of them. */
        public Cause leader() {
            return causes.get(0);
        }
    }

    /**
     * Two faults at once, which stand for all pairs of their two galleries.
     *
     * @param one       the one fault, with its size
     * @param other     the other
     * @param share     over single causes, none of these and other pairs together [-]
     * @param chiSquare misfit left, solved
     */
    public record Pair(UnitFault.Sized one, UnitFault.Sized other, double share, double chiSquare) {}

    public GaugeFindings {
        readings = List.copyOf(readings);
        expected = List.copyOf(expected);
        groups = List.copyOf(groups);
        pairs = List.copyOf(pairs);
        causes = List.copyOf(causes);
        notSolved = List.copyOf(notSolved);
    }

    /** Whether a reading stands out. */
    public boolean standsOut(int reading) {
        return expected.get(reading).standsOut(readings.get(reading).sense());
    }

    /**
     * Whether the line was read lower than a sound unit has it, near idle.
     *
     * @param line node of the line
     */
    public boolean lineLow(String line) {
        for (int i = 0; i < readings.size(); i++) {
            GaugeReading reading = readings.get(i);
            if (reading.meter().node().equals(line)
                    && reading.at().speed() <= IDLE
                    && standsOut(i)
                    && expected.get(i).off() < 0) {
                return true;
            }
        }
        return false;
    }

    /** No engine idles faster than this: 1000 rpm (assumed) [rev/s]. */
    private static final double IDLE = 1000 / 60.0;

    /**
     * Whether a cause fits the readings poorly: they would not agree with a unit that has it, by the test of {@link #DISAGREE} that the
     * sound unit is put to. A size fitted counts as none, so that rather too few are called poor.
     *
     * @param chiSquare misfit that the cause leaves
     */
    public boolean fitsPoorly(double chiSquare) {
        return Misfit.chance(chiSquare, agreement.degrees()) < DISAGREE;
    }

    /** Whether there are causes and every one, alone or paired, fits poorly; {@link #none} does not count. */
    public boolean nothingFits() {
        return !groups.isEmpty()
                && groups.stream().allMatch(group -> fitsPoorly(group.leader().chiSquare()))
                && pairs.stream().allMatch(pair -> fitsPoorly(pair.chiSquare()));
    }

    /** The most likely group. */
    public Optional<Group> first() {
        return groups.stream().findFirst();
    }

    /** Faults that cannot show in these readings whatever their size. */
    public List<Cause> invisible() {
        return causes.stream().filter(cause -> !cause.visible()).toList();
    }
}

package hotidle.study.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What was found of twins with one fault each: of all of them, and of those that show, by the kind of their fault. */
final class TwinTally {

    int all;
    int unsolved;
    int invisible;
    int invisibleAgree;
    int split;
    final Found visible = new Found();
    final Map<String, Found> byKind = new TreeMap<>();

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(String.format(
                Locale.ROOT,
                "%d twins, %d not solved; %d invisible, %.3f of them called sound%n%-20s%s%n",
                all,
                unsolved,
                invisible,
                (double) invisibleAgree / Math.max(invisible, 1),
                "all",
                visible));
        byKind.forEach((kind, found) -> text.append(String.format(Locale.ROOT, "%-20s%s%n", kind, found)));
        return text.toString();
    }

    /** What was found of twins with a fault that shows. */
    static final class Found {
        int all;
        int sick;
        int contained;
        int graded;
        int covered;
        int above;
        final List<Integer> groups = new ArrayList<>();

        void add(Verdict verdict) {
            all++;
            sick += verdict.agrees() ? 0 : 1;
            contained += verdict.contained() ? 1 : 0;
            groups.add(verdict.causes());
            if (verdict.interval() != Interval.NONE) {
                graded++;
                covered += verdict.interval() == Interval.COVERS ? 1 : 0;
                above += verdict.interval() == Interval.TOO_LOW ? 1 : 0;
            }
        }

        double containedShare() {
            return (double) contained / all;
        }

        double coverage() {
            return (double) covered / graded;
        }

        double meanGroup() {
            return groups.stream().mapToInt(Integer::intValue).average().orElse(0);
        }

        int medianGroup() {
            return groups.stream().sorted().skip(groups.size() / 2).findFirst().orElse(0);
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "%4d visible, %.3f called sick, true cause told %.3f, %.3f of %d intervals cover (%d lie too low, %d too high),"
                            + " causes told: mean %.2f, median %d",
                    all,
                    (double) sick / all,
                    containedShare(),
                    coverage(),
                    graded,
                    above,
                    graded - covered - above,
                    meanGroup(),
                    medianGroup());
        }
    }

    /** Where an interval lies. */
    enum Interval {
        COVERS,
        TOO_LOW,
        TOO_HIGH,
        /** The fault has no size. */
        NONE
    }

    /**
     * What was said of a twin.
     *
     * @param causes that are told, those of one gallery as one
     */
    record Verdict(boolean agrees, boolean contained, Interval interval, int causes) {}
}

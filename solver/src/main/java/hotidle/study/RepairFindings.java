package hotidle.study;

import hotidle.transmission.SetPressure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the repairs that were tried come to, at the duty at which they were.
 *
 * @param best     the one that wins most on its own; empty where none wins anything
 * @param starving those on their own that take oil from the lubrication while the line is not held, best first
 * @param reach    how far the repairs in order bring the line; empty where it is held already, or none is in order
 * @param marks    what each repair in order does to the line
 */
public record RepairFindings(
        Optional<Best> best, List<Repairs.Repair> starving, Optional<Reach> reach, List<Mark> marks) {

    /** What a repair wins, the more important first. */
    public enum Gain {
        /** Line pressure up to the set pressure, where that is not held. */
        LINE,
        /** Oil for what is served least of converter, cooler and lubrication, where the line is held and one of them is short. */
        SERVED,
        /** Less oil lost, where they have what they need too. */
        OIL
    }

    /**
     * The best repair on its own.
     *
     * @param gain what it wins
     * @param step the repair
     * @param near others that win nearly as much of the same
     */
    public record Best(Gain gain, Repairs.Step step, List<Repairs.Step> near) {
        public Best {
            near = List.copyOf(near);
        }
    }

    /**
     * How far the repairs in order bring the line.
     *
     * @param held    after how many of them the line is held; empty where after none
     * @param starved what then still gets less oil than it needs
     * @param served  after how many all have enough; empty where after none
     * @param last    what the unit does after all of them
     */
    public record Reach(OptionalInt held, List<String> starved, OptionalInt served, Repairs.Effect last) {
        public Reach {
            starved = List.copyOf(starved);
        }
    }

    /** What a repair in order does to the line. */
    public enum Mark {
        /** With it the line is held first. */
        HOLDS,
        /** It adds less line pressure than a gauge can show. */
        UNSEEN,
        /** It adds line pressure, or the line was held before. */
        NONE
    }

    /** A change below this share is none; chosen, below it a table hardly shows it [-]. */
    private static final double SAME = 0.02;

    /** A repair that wins this share of what the best one wins is as good as it; chosen [-]. */
    private static final double NEARLY = 0.8;

    /** What a gauge cannot show: 1 psi (assumed) [Pa]. */
    private static final double UNSEEN = SetPressure.PSI;

    public RepairFindings {
        starving = List.copyOf(starving);
        marks = List.copyOf(marks);
    }

    /**
     * The findings of a study.
     *
     * @param commanded whether line pressure is commanded
     * @param looked    how many of the best repairs on their own are looked at for what they take from the lubrication
     */
    public static RepairFindings of(Repairs repairs, boolean commanded, int looked) {
        return new RepairFindings(best(repairs), starving(repairs, commanded, looked), reach(repairs), marks(repairs));
    }

    private static Optional<Best> best(Repairs repairs) {
        if (repairs.alone().isEmpty()) {
            return Optional.empty();
        }
        Repairs.Effect before = repairs.before();
        Repairs.Step first = repairs.alone().get(0);
        Gain gain = gain(before, first.after());
        double most = won(gain, before, first.after());
        List<Repairs.Step> near = repairs.alone().stream()
                .skip(1)
                .filter(step -> gain(before, step.after()) == gain)
                .filter(step -> most > 0 && won(gain, before, step.after()) >= NEARLY * most)
                .toList();
        return Optional.of(new Best(gain, first, near));
    }

    private static Gain gain(Repairs.Effect before, Repairs.Effect after) {
        if (!before.regulated()) {
            return Gain.LINE;
        }
        return after.served() - before.served() > SAME * before.served() ? Gain.SERVED : Gain.OIL;
    }

    private static double won(Gain gain, Repairs.Effect before, Repairs.Effect after) {
        return switch (gain) {
            case LINE -> after.held() - before.held();
            case SERVED -> after.served() - before.served();
            case OIL -> before.lost() - after.lost();
        };
    }

    /** Whether work takes oil from the lubrication while the line is not held; asked only where something commands a line. */
    static boolean starves(Repairs.Effect before, Repairs.Effect after) {
        return !before.regulated() && after.lube() < before.lube() * (1 - SAME);
    }

    /** While the line is not held, converter and lubrication live on what worn valves let by. */
    private static List<Repairs.Repair> starving(Repairs repairs, boolean commanded, int looked) {
        if (repairs.before().regulated() || !commanded) {
            return List.of();
        }
        return repairs.alone().stream()
                .limit(looked)
                .filter(step -> starves(repairs.before(), step.after()))
                .map(Repairs.Step::repair)
                .toList();
    }

    private static Optional<Reach> reach(Repairs repairs) {
        if (repairs.before().regulated() || repairs.order().isEmpty()) {
            return Optional.empty();
        }
        List<Repairs.Effect> after =
                repairs.order().stream().map(Repairs.Step::after).toList();
        Repairs.Effect last = after.get(after.size() - 1);
        OptionalInt held = first(after, 0, true);
        return Optional.of(
                held.isEmpty()
                        ? new Reach(held, List.of(), OptionalInt.empty(), last)
                        : new Reach(
                                held,
                                after.get(held.getAsInt() - 1).starved(),
                                first(after, held.getAsInt() - 1, false),
                                last));
    }

    /** After how many the line is held, or else all are served, looked for from one on. */
    private static OptionalInt first(List<Repairs.Effect> after, int from, boolean held) {
        for (int i = from; i < after.size(); i++) {
            if (held ? after.get(i).regulated() : after.get(i).starved().isEmpty()) {
                return OptionalInt.of(i + 1);
            }
        }
        return OptionalInt.empty();
    }

    private static List<Mark> marks(Repairs repairs) {
        List<Mark> marks = new ArrayList<>();
        Repairs.Effect before = repairs.before();
        for (Repairs.Step step : repairs.order()) {
            marks.add(mark(before, step.after()));
            before = step.after();
        }
        return marks;
    }

    private static Mark mark(Repairs.Effect before, Repairs.Effect after) {
        if (before.regulated()) {
            return Mark.NONE;
        }
        return after.regulated() ? Mark.HOLDS : after.held() - before.held() < UNSEEN ? Mark.UNSEEN : Mark.NONE;
    }
}

package hotidle.circuits.create;

import hotidle.study.IdleMargins;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Locale;
import java.util.function.DoubleConsumer;

/**
 * What a gauge reads on the line at the slowest driving condition, all fits new: a shop knows this pressure best. It stands above the
 * line pressure that is commanded without engine torque by what the engine asks for there and by the regulator's rise over set, so that
 * it is found by solving.
 *
 * <pre>
 * Step   the pressure x without engine torque that reads g(x): from x and from x + (asked - g), then by the secant of the last two
 * </pre>
 */
final class IdleGauge {

    /** A gauge shows no less [Pa] (chosen). */
    private static final double NEAR = 0.05 * SetPressure.PSI;

    /** The line is all but straight in what is commanded, so that three or four are enough (chosen). */
    private static final int ROUNDS = 12;

    /** At either end spring or boost would be nothing: so much of the way is left (chosen) [-]. */
    private static final double END = 0.01;

    private static final String QUESTION = "idle-pressure";

    private final Draft draft;

    IdleGauge(Draft draft) {
        this.draft = draft;
    }

    /**
     * Makes it read what is asked for.
     *
     * @param asked     [Pa]
     * @param least     line pressure without engine torque below which {@code noTorque} gives none [Pa]
     * @param whatLeast what sets that
     * @param noTorque  makes the line pressure without engine torque so [Pa]
     * @throws UnitAnswers.WrongAnswerException where it cannot
     */
    void make(double asked, double least, String whatLeast, DoubleConsumer noTorque) {
        double set = QuotedSet.now(unit());
        double low = least + END * (set - least);
        double high = set - END * (set - least);
        double x = QuotedSet.noTorque(unit());
        double g = now();
        double before = Double.NaN;
        double gBefore = Double.NaN;
        for (int i = 0; i < ROUNDS && Math.abs(g - asked) > NEAR; i++) {
            double slope = Double.isNaN(before) || x == before ? 1 : (g - gBefore) / (x - before);
            double next = x + (asked - g) / (slope > 0 ? slope : 1);
            if ((next < low && x <= low) || (next > high && x >= high)) {
                throw between(low, whatLeast, high, noTorque);
            }
            before = x;
            gBefore = g;
            x = Math.min(Math.max(next, low), high);
            noTorque.accept(x);
            g = now();
        }
        if (Math.abs(g - asked) > NEAR) {
            throw new UnitAnswers.WrongAnswerException(
                    QUESTION, "no spring and command are found that make a gauge read it");
        }
    }

    private UnitAnswers.WrongAnswerException between(
            double low, String whatLeast, double high, DoubleConsumer noTorque) {
        noTorque.accept(low);
        double least = now();
        noTorque.accept(high);
        double most = now();
        return new UnitAnswers.WrongAnswerException(
                QUESTION,
                String.format(
                        Locale.ROOT,
                        "a gauge at %s can read from %s, %s, to %s, with the set pressure at any torque",
                        IdleMargins.idle(unit()).orElseThrow().name(),
                        SetPressure.told(least),
                        whatLeast,
                        SetPressure.told(most)));
    }

    private Transmission unit() {
        return draft.unit().orElseThrow();
    }

    private double now() {
        return IdleMargins.gauge(unit())
                .orElseThrow(() ->
                        new UnitAnswers.WrongAnswerException(QUESTION, "no state of such a unit is found at idle"));
    }
}

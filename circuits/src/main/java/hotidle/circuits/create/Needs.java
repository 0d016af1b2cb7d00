package hotidle.circuits.create;

import hotidle.circuits.text.Dimension;
import hotidle.circuits.text.Units;
import hotidle.part.PumpChamber;
import hotidle.study.IdleMargins;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.QuotedSet;
import hotidle.transmission.SetPressure;
import hotidle.transmission.Transmission;
import java.util.Locale;

/** Refuses needs that a unit could never meet: more pressure than it is fed from, more oil than its pump moves. */
final class Needs {

    private static final double LITRE_A_MINUTE = Units.parse("1L/min", Dimension.FLOW);

    private static final double GALLON_A_MINUTE = Units.parse("1gpm", Dimension.FLOW);

    private Needs() {}

    /**
     * Looks at a draft and what was asked of it.
     *
     * @throws UnitAnswers.WrongAnswerException where a need cannot be met
     */
    static void check(Draft draft, UnitAnswers answers) {
        Transmission unit = draft.unit().orElseThrow();
        answers.number("converter-feed").ifPresent(needed -> feed(needed, QuotedSet.noTorque(unit)));
        answers.number("lubrication")
                .ifPresent(needed -> IdleMargins.idle(unit).ifPresent(idle -> flow(needed, pumped(unit, idle))));
    }

    private static void feed(double needed, double line) {
        if (needed >= line) {
            throw new UnitAnswers.WrongAnswerException(
                    "converter-feed",
                    "the line feeds the converter, and without engine torque the line is set to "
                            + SetPressure.told(line) + ": what the converter needs must be less");
        }
    }

    private static void flow(double needed, double pumped) {
        if (needed >= pumped) {
            throw new UnitAnswers.WrongAnswerException(
                    "lubrication",
                    String.format(
                            Locale.ROOT,
                            "at idle speed the pump moves %.1f L/min (%.2f gpm) in all: what the lubrication needs must be less",
                            pumped / LITRE_A_MINUTE,
                            pumped / GALLON_A_MINUTE));
        }
    }

    /** What all chambers displace [m³/s]. */
    private static double pumped(Transmission unit, DutyPoint idle) {
        return idle.speed()
                * unit.network().parts().stream()
                        .filter(placed -> placed.part() instanceof PumpChamber)
                        .mapToDouble(placed -> ((PumpChamber) placed.part()).displacement())
                        .sum();
    }
}

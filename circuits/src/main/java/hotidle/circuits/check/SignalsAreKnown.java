package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import hotidle.transmission.Command;
import hotidle.transmission.Control;
import hotidle.transmission.DutyPoint;
import hotidle.transmission.Transmission;
import java.util.List;

/** What acts on the regulator is known before a state is, so that it counts in the set pressure; and the line can open it against that. */
final class SignalsAreKnown implements Rule.OfUnits {

    @Override
    public void check(Attributes command, List<Transmission> units) {
        for (Transmission unit : units) {
            for (DutyPoint duty : unit.duties()) {
                if (told(command, unit, duty)) {
                    return;
                }
            }
        }
    }

    private static boolean told(Attributes command, Transmission unit, DutyPoint duty) {
        Command asked = unit.command();
        Control control = Control.of(unit.conditions(duty));
        List<String> unknown = asked.unknown(unit.network(), control);
        String where = " at " + duty.name() + " in build " + unit.build();
        if (Double.isInfinite(asked.setPressure(unit.network(), control))) {
            command.error(
                    ProblemCode.LINE_SHUTS_REGULATOR,
                    "regulator",
                    "has a regulator that the line shuts: what opens it is less than what the line's oil shuts it with"
                            + where,
                    "then no line pressure balances its spring",
                    "correct its areas: those on which oil of the line acts open less those on which it acts close");
            return true;
        } else if (!unknown.isEmpty()) {
            command.warning(
                    ProblemCode.SIGNAL_NOT_KNOWN,
                    "regulator",
                    "has a regulator on which '" + String.join("', '", unknown)
                            + "' acts, which its set pressure leaves out" + where,
                    "before a state is solved only oil of the line, what valves are asked for and what is held are known",
                    "feed it from the line, a solenoid or a selector's passage alone; or read the set pressure as without it");
            return true;
        }
        return false;
    }
}

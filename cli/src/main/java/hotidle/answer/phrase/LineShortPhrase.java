package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;

/** Why a limit fails although the pump has oil for all, each with line pressure and set pressure there [Pa]. */
public record LineShortPhrase(Quantity.UnitSystem units) {

    /** A clutch needs more than the line has. */
    public String tooLittle(double line, double set) {
        return stands(line, set) + ", too little for this torque.";
    }

    /** The line would do for the clutch of this name. */
    public String lostOnTheWay(double line, String part) {
        return "Neither pump nor line is short, " + Quantity.PRESSURE.with(units, line)
                + ": pressure is lost on the way to " + part + ", past a ring, a seal or a valve.";
    }

    /** Oil does not get to where it is needed. */
    public String passesTooLittle(double line, double set) {
        return stands(line, set) + ", and at that too little passes.";
    }

    /** The line stands below what is commanded. */
    public String letsGo(double line, double set) {
        return "The pump is not short of oil: the regulator lets it go at "
                + Quantity.PRESSURE.shortOf(units, line, set) + ", below the "
                + Quantity.PRESSURE.fallenShortOf(units, line, set) + " commanded there.";
    }

    private String stands(double line, double set) {
        return "The pump is not short of oil: the line stands there at " + Quantity.PRESSURE.with(units, line) + " ("
                + Quantity.PRESSURE.with(units, set) + " commanded)";
    }
}

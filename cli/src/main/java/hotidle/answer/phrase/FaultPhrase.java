package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.StateFault;

/** What fails in a build at a driving condition. */
public record FaultPhrase(Quantity.UnitSystem units) {

    /** In a cell where nothing fails. */
    public static final String OK = HeadroomPhrase.OK;

    /** In a narrow cell; pressures [Pa] in the units of the table. */
    public String cell(StateFault fault) {
        return switch (fault.kind()) {
            case NOT_KNOWN -> "not known";
            case LINE_LOW -> "LINE LOW " + Quantity.PRESSURE.number(units, fault.is());
            case LINE_HIGH -> "LINE HIGH " + Quantity.PRESSURE.number(units, fault.is());
            case RELIEF_OPEN -> "RELIEF OPEN";
            case INLET_STARVED -> "INLET STARVED";
            case CLUTCH_SLIPS -> "CLUTCH SLIPS";
            case CLUTCH_DRAGS -> "CLUTCH DRAGS";
            case OVER_TORQUE -> "OVER TORQUE";
            case OVER_PRESSURE -> "OVER PRESSURE";
            case SHORT_OF_OIL -> "SHORT OF OIL";
            case METAL_CONTACT -> "HUB CONTACT";
            case FILM_THIN -> "FILM THIN";
            case HUB_LOAD -> "HUB OVERLOAD";
        };
    }

    /** A whole sentence under the name of a build. */
    public String at(String duty, StateFault fault) {
        return "At " + duty + " " + said(fault) + ": over its rating.";
    }

    /** In a sentence, behind the name of a build. */
    public String said(StateFault fault) {
        return switch (fault.kind()) {
            case NOT_KNOWN -> "no steady state was found";
            case LINE_LOW ->
                "line " + LinePressurePhrase.number(units, fault.is().getAsDouble(), fault.needs()) + " of "
                        + Quantity.PRESSURE.with(units, fault.needs().getAsDouble());
            case LINE_HIGH ->
                "line " + Quantity.PRESSURE.with(units, fault.is().getAsDouble()) + ", far above its "
                        + Quantity.PRESSURE.with(units, fault.needs().getAsDouble());
            case RELIEF_OPEN ->
                "relief valve open, line "
                        + Quantity.PRESSURE.with(units, fault.is().getAsDouble());
            case INLET_STARVED -> "pump inlet starved";
            case CLUTCH_SLIPS ->
                fault.part() + " slips, " + Quantity.PRESSURE.number(units, fault.is()) + " of "
                        + Quantity.PRESSURE.with(units, fault.needs().getAsDouble());
            case CLUTCH_DRAGS -> fault.part() + " drags, though the range does not apply it";
            case OVER_TORQUE ->
                fault.part() + " carries " + Quantity.TORQUE.number(units, fault.is()) + ", bears "
                        + Quantity.TORQUE.with(units, fault.needs().getAsDouble());
            case OVER_PRESSURE ->
                fault.part() + " at " + Quantity.PRESSURE.number(units, fault.is()) + ", bears "
                        + Quantity.PRESSURE.with(units, fault.needs().getAsDouble());
            case SHORT_OF_OIL -> fault.part() + " short of oil";
            case METAL_CONTACT -> fault.part() + " in metal contact";
            case FILM_THIN ->
                fault.part() + " film " + Quantity.FILM.number(units, fault.is()) + ", least allowed "
                        + Quantity.FILM.with(units, fault.needs().getAsDouble());
            case HUB_LOAD ->
                fault.part() + " unit load " + Quantity.PRESSURE.number(units, fault.is()) + ", bears "
                        + Quantity.PRESSURE.with(units, fault.needs().getAsDouble());
        };
    }
}

package hotidle.answer.phrase;

import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;
import hotidle.study.LineShort;

/** Why a limit fails although the pump has oil for all: what is commanded, what is lost on the way, or the regulator. */
public record LineShortPhrase(Quantity.UnitSystem units) {

    /** In one sentence, behind what is there and what is needed. */
    public String of(LineShort line, Margin margin) {
        return switch (line.why()) {
            case COMMANDED_TOO_LITTLE -> stands(line) + ", too little for this torque.";
            case LOST_ON_THE_WAY ->
                "Neither pump nor line is short, " + Quantity.PRESSURE.with(units, line.line())
                        + ": pressure is lost on the way to " + margin.part() + ", past a ring, a seal or a valve.";
            case PASSES_TOO_LITTLE -> stands(line) + ", and at that too little passes.";
            case REGULATOR_LETS_GO ->
                "The pump is not short of oil: the regulator lets it go at "
                        + Quantity.PRESSURE.shortOf(units, line.line(), line.set()) + ", below the "
                        + Quantity.PRESSURE.fallenShortOf(units, line.line(), line.set()) + " commanded there.";
        };
    }

    private String stands(LineShort line) {
        return "The pump is not short of oil: the line stands there at " + Quantity.PRESSURE.with(units, line.line())
                + " (" + Quantity.PRESSURE.with(units, line.set()) + " commanded)";
    }
}

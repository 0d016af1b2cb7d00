package hotidle.answer.phrase;

import hotidle.answer.format.Digits;
import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;

/** Why a margin is what it is, a kind of limit a sentence. */
public record MarginCausePhrase(Quantity.UnitSystem units) {

    private MarginPhrase margins() {
        return new MarginPhrase(units);
    }

    /** In front of the cause: the verdict, what the limit is called and on which part it lies. */
    public static String headed(Margin margin, String label, String cause) {
        return HeadroomPhrase.verdict(margin.verdict()) + " " + label + " (" + margin.part() + "). " + cause;
    }

    /** A cause with what a reader should know besides. */
    public static String noted(String cause, Margin margin) {
        return margin.notes().isEmpty() ? cause : cause + " Note: " + MarginNotePhrase.of(margin.notes()) + ".";
    }

    /** What the pump delivers against what is taken, with the line at its set pressure [Pa]. */
    public String regulation(Margin margin, double set) {
        return "With the line at " + Quantity.PRESSURE.with(units, set) + " " + delivers(margin)
                + "; leaks, solenoids, clutches and the least that converter, cooler and lubrication need take "
                + margins().needed(margin) + ".";
    }

    /** Behind it where the pump delivers too little; the line pressure [Pa], and whether it is held all the same. */
    public String settles(double line, boolean regulated) {
        String pressure = Quantity.PRESSURE.with(units, line);
        return regulated
                ? " The regulator holds the line, at " + pressure + ", by keeping oil from them."
                : " The line settles at " + pressure + ".";
    }

    /** What the pump delivers with the line held. */
    String delivers(Margin margin) {
        return margin.value().orElseThrow() > 0
                ? "the pump delivers " + margins().value(margin)
                : "the pump delivers nothing (more would slip back than it displaces)";
    }

    /**
     * An applied clutch or band.
     *
     * @param torque that it carries [N·m]
     * @param factor by which it is taken larger [-]
     */
    public String clutch(Margin margin, double torque, double factor) {
        boolean slipping = margin.kind() == Margin.Kind.APPLY_SLIDING;
        return "It has " + margins().value(margin) + " at the piston; to "
                + (slipping ? "pull through while slipping, " : "hold ") + Quantity.TORQUE.with(units, torque)
                + " times " + Digits.four(factor) + (slipping ? " takes " : " it needs ")
                + margins().needed(margin) + ", return spring included.";
    }

    /** The lockup; arguments as of {@link #clutch}. */
    public String lockup(Margin margin, double torque, double factor) {
        return "Apply less release pressure is " + margins().value(margin) + "; to carry "
                + Quantity.TORQUE.with(units, torque) + " times " + Digits.four(factor) + " the lockup needs "
                + margins().needed(margin) + ".";
    }

    /** A branch of the lubrication. */
    public String lubrication(Margin margin) {
        return "This branch" + oil(margin);
    }

    public String cooler(Margin margin) {
        return "The cooler" + oil(margin);
    }

    private String oil(Margin margin) {
        return " gets " + margins().value(margin) + "; it needs " + margins().needed(margin) + ".";
    }

    public String charge(Margin margin) {
        return "The converter is charged with " + margins().value(margin) + "; it needs "
                + margins().needed(margin) + " against cavitation.";
    }

    /** The hub's film; where metal touches it is not known. */
    public String film(Margin margin) {
        if (margin.value().isEmpty()) {
            return "Hub and bore touch" + margins().speed(margin, " from ") + " on; a film is not known there.";
        }
        return "The thinnest film over the speeds searched is " + margins().value(margin)
                + margins().speed(margin, ", at ") + "; " + margins().needed(margin)
                + " is the least allowed (assumed from roughness).";
    }

    /** What passes along the bushing against what a full film takes. */
    public String filmOil(Margin margin) {
        return "Along the bushing come " + margins().value(margin) + "; a full film turns out "
                + margins().needed(margin) + " at its open end.";
    }

    public String unitLoad(Margin margin) {
        return "Side load and weight over the bushing's length and width come to "
                + margins().value(margin) + margins().speed(margin, ", at ") + "; its material bears "
                + margins().needed(margin) + ".";
    }

    /** A pump that fills in part is judged by its filling, one that fills by the pressure at its inlet. */
    public String inlet(Margin margin) {
        return margin.scale() == Margin.Scale.SHARE
                ? "The pump fills to " + margins().value(margin) + " only."
                : "The pump's inlet has " + margins().value(margin) + ", absolute; below "
                        + margins().needed(margin) + " air comes out of the oil.";
    }

    /** The sump, by the unit's own heat. */
    public String oilTemperature(Margin margin) {
        return "By its own heat the sump comes to " + limit(margin) + " is the oil's limit.";
    }

    /** What leaves the converter, by the unit's own heat. */
    public String converterTemperature(Margin margin) {
        return "By its own heat the oil leaves the converter at " + limit(margin) + " is the limit there.";
    }

    private String limit(Margin margin) {
        return margins().value(margin) + " in air of " + Quantity.TEMPERATURE.with(units, margin.zero()) + "; "
                + margins().needed(margin);
    }

    /** A shaft, a one-way clutch or what else has a rating. */
    public String ratedTorque(Margin margin) {
        return "It carries " + margins().value(margin) + " there and is rated at "
                + margins().needed(margin) + ", by the file's figures. The rating of its maker comes first.";
    }

    /** A housing or a piston, at the place whose oil it holds. */
    public String ratedPressure(Margin margin) {
        return "What holds the oil there is rated at " + margins().needed(margin) + " by the file; there is "
                + margins().value(margin) + ". The rating of its maker comes first.";
    }

    public String relief(Margin margin) {
        return "The line stands at " + margins().value(margin) + "; the valve lifts from "
                + margins().needed(margin) + " on, and then holds the line in place of the regulator.";
    }
}

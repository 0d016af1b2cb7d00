package hotidle.answer.phrase;

import hotidle.answer.format.MarginQuantity;
import hotidle.answer.format.Quantity;
import hotidle.assess.Margin;
import hotidle.assess.MarginNote;

/** A margin in a few words: what is there, and what is needed or allowed. */
public record MarginPhrase(Quantity.UnitSystem units) {

    /** In place of a value that is not known. */
    private static final String NOT_KNOWN = "not known";

    /** In place of a film where there is none. */
    private static final String TOUCHES = "metal touches";

    /** What is there, with its unit. */
    public String value(Margin margin) {
        if (margin.value().isPresent()) {
            return with(margin, margin.value().getAsDouble());
        }
        boolean touches = margin.notes().stream().anyMatch(note -> note.why() == MarginNote.Remark.METAL_CONTACT);
        return touches ? TOUCHES : NOT_KNOWN;
    }

    /** What is needed or allowed, with its unit. */
    public String needed(Margin margin) {
        return with(margin, margin.needed());
    }

    /** What is needed or allowed in words, for a value that is none. */
    String asked(Margin margin) {
        return (margin.kind().upper() ? "allowed " : "needs ") + needed(margin);
    }

    /** The same in a cell, where an upper limit says so. */
    public String bound(Margin margin) {
        return (margin.kind().upper() ? "at most " : "") + needed(margin);
    }

    private String with(Margin margin, double value) {
        return MarginQuantity.of(margin).with(units, value) + absolute(margin);
    }

    /** The unit alone. */
    public String unit(Margin margin) {
        return MarginQuantity.of(margin).in(units).unit() + absolute(margin);
    }

    /** The pressure at the pump's inlet is not counted from ambient. */
    private static String absolute(Margin margin) {
        boolean inlet = margin.kind() == Margin.Kind.PUMP_INLET && margin.scale() == Margin.Scale.PRESSURE;
        return inlet ? " abs" : "";
    }

    /** For example lubrication (lube-rear) at hot-idle: 0.01 gpm, needs 0.11 gpm (-91 %). */
    public String brief(Margin margin, String duty) {
        return LimitPhrase.at(margin.kind(), margin.part(), duty) + ": " + value(margin)
                + ", " + asked(margin) + " ("
                + HeadroomPhrase.of(margin.headroom()) + ")" + speed(margin, ", at ");
    }

    /** In the row of a table; with the speed where it is judged over the range of speeds. */
    public String label(Margin margin) {
        return LimitPhrase.label(margin.kind()) + speed(margin, " at ");
    }

    /** The speed at which it is least behind some words; empty where only the duty's own speed was asked. */
    String speed(Margin margin, String at) {
        return margin.speed().isPresent()
                ? at + Quantity.SPEED.with(units, margin.speed().getAsDouble())
                : "";
    }
}

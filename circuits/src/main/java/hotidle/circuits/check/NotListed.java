package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.Optional;

/** A clutch or band that gets pressure in a range that does not list it. */
final class NotListed {

    private NotListed() {}

    /** Notes it at the range. */
    static void warn(Attributes clutch, Attributes range, Optional<Attributes> passage) {
        String drags = "; a clutch or band held on where it should be off drags, or ties up the gear train";
        String list = ", or list it here with its torque-share, 0 where it is to hold nothing";
        range.warning(
                ProblemCode.FED_BUT_NOT_APPLIED,
                "",
                "does not list " + clutch.name() + ", which is fed there"
                        + (passage.isPresent() ? "" : " as everywhere"),
                passage.map(one -> one.label() + " (" + one.at("ranges") + ") is open in " + range.name())
                                .orElse("an always open way leads from a pump to '" + clutch.word("from") + "'")
                        + drags,
                passage.map(one -> "take " + range.name() + " out of the ranges of " + one.name() + " and vent "
                                        + clutch.name() + " there")
                                .orElse("feed it through a selector")
                        + list);
    }

    /** Two passages that meet feed it and empty it at the same time: the pump's oil runs straight to the sump. */
    static void fedAndVented(Attributes clutch, Attributes range, Attributes feed, Attributes vent) {
        range.warning(
                ProblemCode.FED_AND_VENTED,
                "",
                "has " + clutch.name() + " fed and vented at the same time",
                feed.label() + " (" + feed.at("ranges") + ") and " + vent.name() + " (" + vent.at("ranges")
                        + ") are both open in " + range.name()
                        + ", so that oil of the line runs through them to the sump",
                "take " + range.name() + " out of the ranges of one of them");
    }
}

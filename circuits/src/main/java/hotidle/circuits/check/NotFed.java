package hotidle.circuits.check;

import hotidle.circuits.shape.Attributes;
import hotidle.circuits.text.ProblemCode;
import java.util.Optional;

/** A clutch or band that a range lists as applied, and that gets no pressure in it. */
final class NotFed {

    private NotFed() {}

    /** The selector empties it; it may feed it at the same time. */
    static void vented(Attributes listed, Attributes range, Attributes vent, Optional<Attributes> feed) {
        String open = vent.label() + " (" + vent.at("ranges") + ") opens it to the sump in " + range.name();
        listed.warning(
                ProblemCode.APPLIED_BUT_VENTED,
                "",
                "is vented there" + (feed.isPresent() ? ", and fed at the same time" : ", and so cannot be applied"),
                feed.map(passage -> open + "; " + passage.name() + " feeds it").orElse(open + "; nothing feeds it"),
                "take " + range.name() + " out of the ranges of " + vent.name()
                        + (feed.isPresent() ? "" : " and add it to those of the passage that feeds it")
                        + ", or do not list it here");
    }

    /** No open way leads to it. */
    static void closed(Attributes listed, Attributes range, String node, Optional<Attributes> feeder) {
        listed.warning(
                ProblemCode.APPLIED_BUT_NOT_FED,
                "",
                "is fed by nothing there, and so cannot be applied",
                "no open way leads from a pump to '" + node + "' in " + range.name() + "; leaks alone apply no clutch",
                feeder.map(passage -> "add " + range.name() + " to the ranges of " + passage.name() + " ("
                                + passage.at("ranges") + "), or do not list it here")
                        .orElse("add the passage that feeds it, or do not list it here"));
    }
}

package hotidle.study;

import hotidle.assess.Margin;
import java.util.Optional;

/**
 * A margin or a size that has no slope.
 *
 * @param cause why
 * @param kind  of the margin; empty for a size
 * @param name  of the margin's part, empty where it is that of no one part, or of the size
 * @param duty  at which the margin is judged; empty for a size
 */
public record LeftOut(LeftOutCause cause, Optional<Margin.Kind> kind, String name, String duty) {

    /** Why there is no slope. */
    public enum LeftOutCause {
        /** No steady state was found with the line held. */
        HELD_LINE_UNSOLVED,
        /** The margin's value is not known, as in metal contact. */
        VALUE_NOT_KNOWN,
        /** Nothing is needed, so that the headroom has no size. */
        NOTHING_NEEDED,
        /** The size is nil in the build. */
        SIZE_IS_NIL,
        /** The size cannot be made a little larger and smaller. */
        SIZE_IS_FIXED
    }

    static LeftOut heldLine(String duty) {
        return new LeftOut(LeftOutCause.HELD_LINE_UNSOLVED, Optional.of(Margin.Kind.REGULATION), "", duty);
    }

    static LeftOut margin(LeftOutCause cause, Judgement.Key key) {
        return new LeftOut(cause, Optional.of(key.kind()), key.part(), key.duty());
    }

    static LeftOut size(LeftOutCause cause, String name) {
        return new LeftOut(cause, Optional.empty(), name, "");
    }
}

package hotidle.assess;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a reader should know about a margin beside its numbers.
 *
 * @param why   what it is
 * @param part  the part that it is about, where it is another than the margin's own
 * @param share the number that it comes with [-], where it has one
 */
public record MarginNote(Remark why, Optional<String> part, OptionalDouble share) {

    /** What is to be said. */
    public enum Remark {
        /** The part gets too little even with the regulator's feed wide open, so that it is not counted in the demand. */
        SHORT_AT_FULL_FEED,
        /** The pump's inlet lets in no more: the share to which the pump fills with the line held. */
        INLET_LIMITS_SUPPLY,
        /** The slide of a variable pump is pushed back: the share of its displacement that is left. */
        SLIDE_PUSHED_BACK,
        /** The relief valve lifts below the set pressure. */
        RELIEF_LIFTS_BELOW_SET,
        /** The turbine's speed is not given: the oil's rotation is counted for the worse of standing and engine speed. */
        TURBINE_SPEED_NOT_GIVEN,
        /** Metal touches: the film is not known. */
        METAL_CONTACT,
        /** The hub leans so much that it touches at its edge. */
        EDGE_TOUCHES,
        /** The film is told as if it were full, and less oil than that takes is fed to it: the share that is. */
        FILM_SHORT_OF_OIL,
        /** The inlet is starved: the pump fills in part. */
        INLET_STARVED,
        /** The driving condition says that the lockup slips, and its pressure would hold the torque. */
        SLIPPING_WOULD_HOLD
    }

    /** A note that says all by itself. */
    public static MarginNote of(Remark why) {
        return new MarginNote(why, Optional.empty(), OptionalDouble.empty());
    }

    /** A note about a part. */
    public static MarginNote of(Remark why, String part) {
        return new MarginNote(why, Optional.of(part), OptionalDouble.empty());
    }

    /** A note with a share [-]. */
    public static MarginNote of(Remark why, double share) {
        return new MarginNote(why, Optional.empty(), OptionalDouble.of(share));
    }
}

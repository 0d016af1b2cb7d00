package hotidle.heat;

import hotidle.network.Group;
import java.util.Optional;

/**
 * Heat given to the oil by one source, or taken by one sink.
 *
 * @param kind  which
 * @param group what its oil is booked under, of heat that oil makes on its way; empty of all other
 * @param part  the part that makes or takes it; empty of what belongs to no part
 * @param watts [W], above zero where it warms the unit
 */
public record HeatItem(Kind kind, Optional<Group> group, String part, double watts) {

    /** Source or sink. */
    public enum Kind {
        /** What a chamber and the faces beside it take from the shaft beyond what they give the oil as pressure: friction, drag, slip. */
        PUMP,
        /** What oil loses in pressure on its way turns into heat there. */
        THROTTLING,
        /** Shearing the hub bushing's film. */
        FILM,
        /** Shaft power into the converter less shaft power out of it. */
        CONVERTER,
        /** The same while the lockup clutch slips. */
        LOCKUP_SLIP,
        /** Open packs that turn in oil. */
        OPEN_PACKS,
        /** Meshes and bearings under load. */
        MESHES,
        /** Turning parts in oil and bearings without load. */
        CHURNING,
        /** Given to the cooler's medium. */
        COOLER,
        /** Given to the air by case and pan. */
        CASE,
        /** Given to the air by the converter's housing. */
        HOUSING
    }

    /** One that belongs to no group. */
    public static HeatItem of(Kind kind, String part, double watts) {
        return new HeatItem(kind, Optional.empty(), part, watts);
    }

    /** Whether it is a sink. */
    public boolean sink() {
        return kind == Kind.COOLER || kind == Kind.CASE || kind == Kind.HOUSING;
    }
}

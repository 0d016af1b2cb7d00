package hotidle.plots.scheme;

/**
 * Where a line meets a box.
 *
 * @param net  that it lies on
 * @param role of the line
 * @param flow through it as shown, for the width of its line, any sign [share of the largest, 0 to 1]; NaN where not known
 */
public record Pin(String net, Role role, double flow) {

    /** What a line is to a box. */
    public enum Role {
        /** Oil comes in; drawn below. */
        IN,
        /** Oil goes out; drawn above. */
        OUT,
        /** Pressure that moves a spool against its spring: dashed, into its free end. */
        PILOT,
        /** Pressure that helps the spring: dashed, into the spring's end. */
        PILOT_AT_SPRING;

        /** Whether no oil flows in it to speak of. */
        public boolean pilot() {
            return this == PILOT || this == PILOT_AT_SPRING;
        }
    }
}

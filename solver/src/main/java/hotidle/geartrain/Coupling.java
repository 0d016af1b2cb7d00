package hotidle.geartrain;

/**
 * What joins two members, or a member and the case.
 *
 * <pre>
 * Torque    that it puts on the first member; the second one feels the opposite
 * Slip      speed of the first member less that of the second
 * </pre>
 *
 * @param name   for example low-clutch
 * @param kind   how it joins
 * @param first  a member
 * @param second a member, or {@link #CASE}
 */
public record Coupling(String name, Kind kind, String first, String second) {

    /** The member that never turns. */
    public static final String CASE = "case";

    /** How it joins. */
    public enum Kind {
        /** Always. */
        SHAFT,
        /** Where it is applied: a clutch, a brake or a band. */
        CLUTCH,
        /** Where its first member would turn slower than its second, seen in the turbine's sense. */
        ONE_WAY
    }

    public Coupling {
        if (first.equals(second)) {
            throw new IllegalArgumentException(name + " joins " + first + " with itself");
        }
    }

    /** Written out, as the hash: what Java makes of a record at its first use takes its time at each start. */
    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Coupling coupling
                        && name.equals(coupling.name)
                        && kind == coupling.kind
                        && first.equals(coupling.first)
                        && second.equals(coupling.second));
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** Whether it holds against the case. */
    public boolean isBrake() {
        return first.equals(CASE) || second.equals(CASE);
    }
}

package hotidle.part;

/**
 * A state that a kind of part has of its own and that is solved with the pressures. Each stands once, as a constant of the part that
 * has it, so that none is looked up by a misspelt name.
 *
 * @param name what files call it, for example {@code filling}
 */
public record OwnState(String name) {

    /** Where what slides stands, a spool or the slide of a pump [m]. */
    public static final OwnState POSITION = new OwnState("position");

    /** Written out, as the hash: what Java makes of a record at its first use takes its time at each start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof OwnState state && name.equals(state.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}

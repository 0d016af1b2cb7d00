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

    @Override
    public String toString() {
        return name;
    }
}

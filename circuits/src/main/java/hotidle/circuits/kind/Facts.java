package hotidle.circuits.kind;

import hotidle.circuits.shape.Names;
import java.util.Optional;

/**
 * What checks and commands need to know of a kind of part besides its keys and its law.
 *
 * @param turns   whether engine speed has an effect on it, or on what is asked of it
 * @param passing how it passes oil
 * @param role    as what keys elsewhere in the file name it, if they do
 * @param alone   how it is asked for on its own
 */
public record Facts(boolean turns, Passing passing, Optional<Names> role, Alone alone) {

    /** Of a kind that states nothing: it stands still, and whether it passes oil is not known before a state is solved. */
    static final Facts NONE = new Facts(false, Passing.BY_STATE, Optional.empty(), Alone.AS_IN_A_CIRCUIT);
}

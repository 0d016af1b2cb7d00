package hotidle.circuits.kind;

import hotidle.circuits.shape.Names;
import java.util.Optional;

/**
 * What checks and commands need to know of a kind of part besides its keys and its law.
 *
 * @param turns   whether engine speed has an effect on it, or on what is asked of it
 * @param stated  how it passes oil; empty where nothing is stated
 * @param role    as what keys elsewhere in the file name it, if they do
 * @param alone   how it is asked for on its own
 * @param drawn   how it is drawn
 * @param example what may stand behind its word in the command {@code hotidle part}
 */
public record Facts(
        boolean turns,
        Optional<Passing> stated,
        Optional<Names> role,
        Alone alone,
        PartFigure.Drawn drawn,
        String example) {

    /** Of a kind that states nothing: it stands still. */
    static final Facts NONE = new Facts(
            false,
            Optional.empty(),
            Optional.empty(),
            Alone.AS_IN_A_CIRCUIT,
            PartFigure.Drawn.by(GraphicSymbol.RESTRICTION),
            "");

    /** How it passes oil: not known before a state is solved where nothing is stated, so that no check says too much. */
    public Passing passing() {
        return stated.orElse(Passing.BY_STATE);
    }
}

package hotidle.circuits.kind;

import java.util.Optional;

/**
 * What can be said of a kind of part on its own.
 *
 * @param law    its law in a line, as its solver's part has it
 * @param source where the law comes from
 * @param rows   section of solver/VALIDATION.md in which the law stands beside published values; empty where none was found
 */
public record LawText(String law, String source, Optional<String> rows) {

    /** Source of the loss at the ends of a gap. */
    static final String SLOT_ENTRY = "T. Lundgren, E. Sparrow, J. Starr, J. Basic Eng. 86 (1964) 620 (from memory)";

    /** Source of the law of a gap. */
    static final String SLOT =
            "H. E. Merritt, Hydraulic Control Systems, 1967, §2-5 (from memory); entry and exit: " + SLOT_ENTRY;

    /** Source of the law of a restriction known by one point. */
    static final String RATED = "laminar and turbulent loss through the measured point (our own form)";

    /** A law and its source. */
    static LawText of(String law, String source) {
        return new LawText(law, source, Optional.empty());
    }

    /** The same, with the section of solver/VALIDATION.md in which the law stands beside published values. */
    LawText checkedIn(String section) {
        return new LawText(law, source, Optional.of(section));
    }
}

package hotidle.circuits.text;

/** What sort of thing is wrong, for those who decide by it; the sentence is for reading only. */
public enum ProblemCode {
    /** A key that is needed is not there. */
    MISSING_KEY,
    /** A key that there is none of. */
    UNKNOWN_KEY,
    /** A key stands there without a value. */
    NO_VALUE,
    /** A name of nothing that is declared, or a word that is none of those allowed. */
    UNKNOWN_NAME,
    /** A list or a group where one value belongs, or the other way round. */
    WRONG_SHAPE,
    /** A text that is no quantity of its dimension. */
    NO_QUANTITY,
    /** A quantity outside what is allowed. */
    OUT_OF_BOUNDS,
    /** A quantity outside what is usual. */
    UNUSUAL,
    /** A key that stands or is written twice. */
    TWICE,
    /** Values that do not rise as they must. */
    NOT_RISING,
    /** A measured size or a limit on the wrong side of the new one. */
    AGAINST_WEAR,
    /** What a kind, a section or the circuit as a whole does not allow; the sentence says which rule. */
    BROKEN_RULE
}

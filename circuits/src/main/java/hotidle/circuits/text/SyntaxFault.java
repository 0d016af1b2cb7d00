package hotidle.circuits.text;

import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/**
 * How a text is no YAML. The library says it with sentences alone: its scanner and its parser throw one class each for all that
 * can be wrong, with no code in it. This is the one place that reads them; a sentence that a later version words otherwise is
 * told as {@link #OTHER}, which shows it, and {@code BadFilesTest} turns red.
 */
enum SyntaxFault {
    TAB("TAB"),
    OPEN_QUOTE("(?!)"),
    SECOND_COLON("mapping values are not allowed"),
    NO_COLON("could not find expected ':'"),
    IN_BRACKETS("expected ',' or"),
    NEVER_OPENED("but found '[}\\]]'"),
    ITEM_AMONG_KEYS("expected <block end>, but found '-'"),
    KEY_AMONG_ITEMS("expected <block end>, but found '\\?'"),
    NO_SUCH_COLUMN("expected <block end>"),
    SECOND_DOCUMENT("document start"),
    RESERVED_CHARACTER("found character '"),
    ALIAS("unexpected character"),
    OTHER("");

    /** Within the sentence; one that never fits where the sentence alone does not tell. */
    private final Pattern sentence;

    SyntaxFault(String sentence) {
        this.sentence = Pattern.compile(sentence);
    }

    /** The first whose sentence it is; a quote that is not closed is known by what the scanner was about to read. */
    static SyntaxFault of(MarkedYamlEngineException fault) {
        boolean quote = fault.getContext() != null && fault.getContext().contains("quoted scalar");
        for (SyntaxFault one : values()) {
            if (one == OPEN_QUOTE
                    ? quote
                    : one.sentence.matcher(fault.getProblem()).find()) {
                return one;
            }
        }
        return OTHER;
    }
}

package hotidle.circuits.text;

import java.util.Locale;

/**
 * Something wrong in a file: where, what, why, and how to mend it.
 *
 * @param position where
 * @param width    how many characters it concerns
 * @param severity whether the file can be used all the same
 * @param message  what is wrong, in one line
 * @param why      the rule that is broken; empty where the message says it
 * @param mend     what to write instead; empty where that is plain
 * @param line     the line of the file
 */
public record Problem(
        Position position, int width, Severity severity, String message, String why, String mend, String line) {

    /** An error makes the file unusable; a warning does not. */
    public enum Severity {
        ERROR,
        WARNING
    }

    /** The longest part of a source line that is shown. */
    private static final int LONGEST = 110;

    /** The first line of {@link #text}. */
    public String headline() {
        return position + ": " + severity.name().toLowerCase(Locale.ROOT) + ": " + message;
    }

    /** The problem as it is printed, several lines without a final line break. */
    public String text() {
        StringBuilder text = new StringBuilder(headline());
        if (!line.isBlank()) {
            int start = Math.max(position.column() - 1 - LONGEST * 2 / 3, 0);
            String shown = line.substring(Math.min(start, line.length()), Math.min(start + LONGEST, line.length()))
                    .replace('\t', ' ');
            int before = Math.min(position.column() - 1 - start, shown.length());
            int carets = Math.max(Math.min(width, shown.length() - before), 1);
            text.append("\n  ").append(shown.stripTrailing());
            text.append("\n  ").append(" ".repeat(before)).append("^".repeat(carets));
        }
        if (!why.isEmpty()) {
            text.append("\n  why:  ").append(why);
        }
        if (!mend.isEmpty()) {
            text.append("\n  mend: ").append(mend);
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return text();
    }
}

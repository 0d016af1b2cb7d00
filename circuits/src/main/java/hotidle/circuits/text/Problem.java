package hotidle.circuits.text;

import java.util.Locale;

/**
 * Something wrong in a file: where, what, why, and how to mend it.
 *
 * @param position where
 * @param width    how many characters it concerns
 * @param severity whether the file can be used all the same
 * @param fault    what is wrong
 * @param line     the line of the file
 * @param writing  in which form the user wrote it, and is told what to write
 */
public record Problem(Position position, int width, Severity severity, Fault fault, String line, Writing writing) {

    /** How what is wrong was written. */
    public enum Writing {
        /** As {@code key: value} in a file. */
        FILE,
        /** As {@code key=value} behind a command. */
        COMMAND
    }

    /** An error makes the file unusable; a warning does not. */
    public enum Severity {
        ERROR,
        WARNING
    }

    /** The longest part of a source line that is shown. */
    private static final int LONGEST = 110;

    /** What is wrong, as a value. */
    public ProblemCode code() {
        return fault.code();
    }

    /** What is wrong, in one line. */
    public String message() {
        return fault.message();
    }

    /** The rule that is broken; empty where the message says it. */
    public String why() {
        return fault.why();
    }

    /** What to write instead, as the user writes; empty where that is plain. */
    public String mend() {
        return writing == Writing.FILE
                ? fault.remedy().inFile()
                : fault.remedy().inCommand();
    }

    /** The same with another remedy. */
    public Problem with(Remedy other) {
        return new Problem(position, width, severity, fault.with(other), line, writing);
    }

    /** The first line of {@link #text}. */
    public String headline() {
        return position + ": " + severity.name().toLowerCase(Locale.ROOT) + ": " + message();
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
        if (!why().isEmpty()) {
            text.append("\n  why:  ").append(why());
        }
        if (!mend().isEmpty()) {
            text.append("\n  mend: ").append(mend());
        }
        return text.toString();
    }

    @Override
    public String toString() {
        return text();
    }
}

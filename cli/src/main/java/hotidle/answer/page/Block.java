package hotidle.answer.page;

import hotidle.answer.format.TextTable;
import java.util.List;

/**
 * A piece of a page; what it says stands first, then its tables, then its pictures.
 *
 * @param lines   sentences, a paragraph each
 * @param tables  under them
 * @param figures under these
 */
public record Block(List<Line> lines, List<PageTable> tables, List<Figure> figures) {

    public Block {
        lines = List.copyOf(lines);
        tables = List.copyOf(tables);
        figures = List.copyOf(figures);
    }

    /**
     * A paragraph.
     *
     * @param text  as it is to be read
     * @param looks how much it matters, as a word of the style sheet; empty where it is like any other
     */
    public record Line(String text, String looks) {

        /** Of a sentence that belongs to the one before it. */
        public static final String BELOW = "below";

        /** Of a warning. */
        public static final String CAUTION = "caution";

        /** What a screen indents belongs to the line before it. */
        static Line of(String text) {
            return new Line(text.strip(), text.startsWith(" ") ? BELOW : "");
        }
    }

    /** Sentences, those below others indented by a blank. */
    public static Block said(List<String> sentences) {
        return new Block(
                sentences.stream().filter(text -> !text.isBlank()).map(Line::of).toList(), List.of(), List.of());
    }

    /** One sentence. */
    public static Block said(String sentence) {
        return said(List.of(sentence));
    }

    /** A table under its caption. */
    public static Block table(String caption, TextTable table) {
        return new Block(List.of(), List.of(PageTable.of(caption, table)), List.of());
    }

    /** A picture. */
    public static Block figure(Figure figure) {
        return new Block(List.of(), List.of(), List.of(figure));
    }
}
